using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Verbs;

internal sealed class ResistsVerb : IVerb
{
    private readonly Argument<string?> _material = new("MATERIAL") { Arity = ArgumentArity.ZeroOrOne, Description = "Such as HDPE, PTFE, \"borosilicate glass\", \"stainless steel\"" };
    private readonly Argument<string?> _name = new("NAME") { Arity = ArgumentArity.ZeroOrOne, Description = "A content" };

    public string Name => "resists";

    public string Summary => "Whether a material stands a content";

    public Command Build(Surroundings around)
    {
        var each = EachLine.Option();
        var book = BookAccess.BookOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { _material, _name, each, book, json };
        command.SetAction(p =>
        {
            var (catalogue, _) = ContentWords.KnownTo(p.GetValue(book), around);
            if (p.GetValue(each) is { } file)
                return EachLine.Run(command, file, around, parsed => Answer(Ask(parsed, catalogue)));
            var asked = Ask(p, catalogue);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, Answer(asked));
            else
                Print(around.Out, asked);
            return ExitCodes.Done;
        });
        return command;
    }

    private (ResistanceFinding Finding, IReadOnlyList<string> WouldDo) Ask(ParseResult p, SubstanceCatalogue catalogue)
    {
        if (p.GetValue(_material) is not { } material || p.GetValue(_name) is not { } name)
            throw RefusedException.Words("a material and a content are needed: resists MATERIAL NAME");
        var content = ContentWords.Find(name, catalogue);
        var finding = VesselFit.Resists(material, content, PropertyFacts.Default);
        return (finding, finding.Rating == ResistanceRating.Good ? [] : VesselFit.WouldDo(content, PropertyFacts.Default));
    }

    private static Action<Utf8JsonWriter> Answer((ResistanceFinding Finding, IReadOnlyList<string> WouldDo) asked) => json =>
    {
        var finding = asked.Finding;
        json.WriteString("material", finding.Material);
        json.WriteString("content", finding.Content);
        json.TextOrNull("rating", finding.Rating is { } rating ? VesselFit.Word(rating) : null);
        json.WriteString("because", finding.Because);
        json.TextOrNull("source", finding.Source?.ToString());
        json.Texts("would_do", asked.WouldDo);
    };

    private static void Print(TextWriter to, (ResistanceFinding Finding, IReadOnlyList<string> WouldDo) asked)
    {
        var finding = asked.Finding;
        to.WriteLine($"{finding.Material}, {finding.Content}: {(finding.Rating is { } rating ? VesselFit.Word(rating) : "not known")}");
        to.WriteLine($"because: {finding.Because}{(finding.Source is { } source ? $" [{source}]" : "")}");
        if (asked.WouldDo.Count > 0)
            to.WriteLine($"would do: {string.Join(", ", asked.WouldDo)}");
        to.WriteLine("A rating is guidance for long contact near 20 C; the maker of the ware has the better table.");
    }
}
