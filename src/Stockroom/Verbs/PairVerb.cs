using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Verbs;

internal sealed class PairVerb : IVerb
{
    private readonly Argument<string?> _a = new("NAME") { Arity = ArgumentArity.ZeroOrOne, Description = "One content" };
    private readonly Argument<string?> _b = new("OTHER") { Arity = ArgumentArity.ZeroOrOne, Description = "The other" };
    private readonly Option<string?> _table = ClassTableOption.Make();

    public string Name => "pair";

    public string Summary => "How far apart two contents must stand, and why";

    public Command Build(Surroundings around)
    {
        var each = EachLine.Option();
        var book = BookAccess.BookOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { _a, _b, _table, each, book, json };
        command.SetAction(p =>
        {
            var known = ContentWords.KnownTo(p.GetValue(book), around);
            var chosen = ClassTableOption.OfBook(p.GetValue(book), around);
            if (p.GetValue(each) is { } file)
                return EachLine.Run(command, file, around, parsed => Answer(Ask(parsed, known, chosen)));
            var judgement = Ask(p, known, chosen);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, Answer(judgement));
            else
                Print(around.Out, judgement);
            return ExitCodes.Done;
        });
        return command;
    }

    private PairJudgement Ask(ParseResult p, (SubstanceCatalogue Catalogue, HazardFacts Hazards) known, ClassTable chosen)
    {
        if (p.GetValue(_a) is not { } a || p.GetValue(_b) is not { } b)
            throw RefusedException.Words("two contents are needed: pair NAME OTHER");
        return new PairJudge(ClassTableOption.Read(p.GetValue(_table)) ?? chosen).Judge(Profile(a, known), Profile(b, known));
    }

    private static ContactProfile Profile(string words, (SubstanceCatalogue Catalogue, HazardFacts Hazards) known)
    {
        var content = ContentWords.Find(words, known.Catalogue);
        return ContactProfile.Of(content, Classifier.Classify(content, known.Hazards, RuleSet.Eu));
    }

    private static Action<Utf8JsonWriter> Answer(PairJudgement judgement) => json =>
    {
        json.WriteString("separation", SeparationWords.Of(judgement.Separation));
        json.Texts("never_above", judgement.NeverAbove);
        json.WriteBoolean("vapour", judgement.Vapour);
        json.WriteStartObject("contact");
        json.WriteString("separation", SeparationWords.Of(judgement.ContactSeparation));
        json.WriteStartArray("reasons");
        foreach (var reason in judgement.Reasons)
        {
            json.WriteStartObject();
            json.Texts("families", reason.Families);
            json.Texts("would", reason.Would);
            json.TextOrNull("product", reason.Product);
            json.WriteString("separation", SeparationWords.Of(reason.Separation));
            json.TextOrNull("only_if", reason.OnlyIf);
            json.WriteString("because", reason.Cause);
            json.WriteString("source", reason.Source.ToString());
            json.WriteBoolean("verified", reason.Verified);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        ClassTableOption.Write(json, judgement);
        json.WriteString("spoke", judgement.Spoke);
        json.Texts("notes", judgement.Notes);
    };

    private static void Print(TextWriter to, PairJudgement judgement)
    {
        to.WriteLine($"{judgement.A} and {judgement.B}: {SeparationWords.Of(judgement.Separation)}");
        foreach (var name in judgement.NeverAbove)
            to.WriteLine($"never above the other: {name}");
        if (judgement.Vapour)
            to.WriteLine("shared air alone is enough to harm");
        foreach (var reason in judgement.Reasons)
        {
            to.WriteLine($"{reason.FamilyA} and {reason.FamilyB}: {reason.Cause}; could bring {string.Join(", ", reason.Would)}{(reason.Product is { } product ? $" ({product})" : "")}{(reason.OnlyIf is { } only ? $", if {only}" : "")}; {SeparationWords.Of(reason.Separation)}");
            to.WriteLine($"  source: {reason.Source}{(reason.Verified ? "" : " (not read again for this rule)")}");
        }

        ClassTableOption.Print(to, judgement);
        foreach (var note in judgement.Notes)
            to.WriteLine($"note: {note}");
    }
}
