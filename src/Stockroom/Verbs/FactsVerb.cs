using System.CommandLine;

namespace Stockroom.Verbs;

internal sealed class FactsVerb : IVerb
{
    public string Name => "facts";

    public string Summary => "What is known of a substance, with its sources";

    public Command Build(Surroundings around)
    {
        var name = new Argument<string>("NAME") { Description = "Name, synonym, formula or CAS number" };
        var command = new Command(Name, Summary) { name };
        command.SetAction(p =>
        {
            around.Out.WriteLine(p.GetRequiredValue(name));
            return ExitCodes.Done;
        });
        return command;
    }
}
