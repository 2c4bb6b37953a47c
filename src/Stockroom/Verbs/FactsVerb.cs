using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Desk;

namespace Stockroom.Verbs;

internal sealed class FactsVerb : IVerb
{
    private readonly Argument<string?> _name = new("NAME") { Arity = ArgumentArity.ZeroOrOne, Description = "Name, synonym, formula or CAS number, with a strength where it is a solution" };
    private readonly Option<string?> _at = new("--at") { Description = "At this temperature; else 20", HelpName = "CELSIUS" };

    public string Name => "facts";

    public string Summary => "What is known of a substance, and who says so";

    public Command Build(Surroundings around)
    {
        var each = EachLine.Option();
        var book = BookAccess.BookOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { _name, _at, each, book, json };
        command.SetAction(p =>
        {
            var known = ContentWords.KnownTo(p.GetValue(book), around);
            if (p.GetValue(each) is { } file)
                return EachLine.Run(command, file, around, parsed => Answer(Ask(parsed, known)));
            var asked = Ask(p, known);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, Answer(asked));
            else
                Print(around.Out, asked);
            return ExitCodes.Done;
        });
        return command;
    }

    private (SubstanceFacts Facts, Content Content, Classification Classification) Ask(ParseResult p, (SubstanceCatalogue Catalogue, HazardFacts Hazards) known)
    {
        var content = ContentWords.Find(p.GetValue(_name) ?? throw RefusedException.Words("a name is needed: facts NAME"), known.Catalogue);
        var celsius = (double)(Numbers.Plain(p.GetValue(_at), "a temperature in degrees Celsius") ?? 20m);
        if (celsius is < -273.15 or > 5000)
            throw RefusedException.Words($"{celsius} degrees Celsius is no temperature that a stock meets; it lies between -273.15 and 5000");
        var facts = SubstanceFacts.Of(content, Temperature.FromCelsius(celsius), PropertyFacts.Default);
        return (facts, content, Classifier.Classify(content, known.Hazards, RuleSet.Eu));
    }

    private static Action<Utf8JsonWriter> Answer((SubstanceFacts Facts, Content Content, Classification Classification) asked) => json =>
    {
        var (facts, content, classification) = asked;
        json.WriteString("name", facts.Name);
        json.TextOrNull("formula", facts.Formula);
        json.TextOrNull("cas", facts.Cas);
        json.NumberOrNull("molar_mass_g_mol", facts.MolarMass?.GramsPerMole);
        json.TextOrNull("state", facts.State == MatterState.Unknown ? null : facts.State.ToString().ToLowerInvariant());
        json.NumberOrNull("at_c", facts.At.Celsius);
        json.NumberOrNull("melting_c", facts.Melting?.Celsius);
        json.NumberOrNull("boiling_c", facts.Boiling?.Celsius);
        json.NumberOrNull("sublimation_c", facts.Sublimation?.Celsius);
        json.NumberOrNull("flash_point_c", facts.Flash?.Celsius);
        json.NumberOrNull("density_g_ml", facts.Density?.GramsPerMillilitre);
        json.NumberOrNull("gas_density_g_ml", facts.GasDensity?.GramsPerMillilitre);
        json.NumberOrNull("liquefied_density_g_ml", facts.LiquefiedDensity?.GramsPerMillilitre);
        json.NumberOrNull("vapour_pressure_kpa", facts.VapourPressure?.Kilopascals);
        json.NumberOrNull("vapour_density_air", facts.VapourDensity?.Value);
        json.NumberOrNull("diffusivity_in_air_cm2_s", facts.DiffusivityInAir?.SquareCentimetresPerSecond);
        json.NumberOrNull("lower_flammable_limit_percent", facts.LowerFlammableLimit?.Percent);
        if (facts.ExposureLimit is { } limit)
        {
            json.WriteStartObject("exposure_limit");
            json.NumberOrNull("value_ppm", limit.Share?.PartsPerMillion);
            json.NumberOrNull("value_mg_m3", limit.Concentration?.MilligramsPerCubicMetre);
            json.WriteString("kind", limit.Kind);
            json.WriteString("source", $"{limit.Name}, {limit.Provenance}");
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("exposure_limit");
        }

        json.Texts("hazards", classification.Categories.Select(c => c.Category));
        json.Texts("hazard_statements", classification.StatementCodes);
        json.WriteStartObject("sources");
        foreach (var (field, source) in facts.Sources)
            json.WriteString(field, source);
        if (classification.Reasons.Count > 0)
            json.WriteString("hazards", classification.Reasons[0].Source.ToString());
        json.WriteEndObject();
        json.WriteStartObject("unknown");
        foreach (var (field, reason) in facts.Reasons)
            json.WriteString(field, reason);
        json.WriteEndObject();
        FactsBeside.Write(json, content);
        json.Texts("notes", content.Notes.Concat(classification.Notes));
    };

    private static void Print(TextWriter to, (SubstanceFacts Facts, Content Content, Classification Classification) asked)
    {
        var (facts, content, classification) = asked;
        void Line(string label, string? value, string field)
        {
            if (value is not null)
                to.WriteLine($"{label}: {value}{(facts.Sources.TryGetValue(field, out var source) ? $"  [{source}]" : "")}");
            else if (facts.Reasons.TryGetValue(field, out var reason))
                to.WriteLine($"{label}: unknown; {reason}");
        }

        to.WriteLine(facts.Name);
        Line("formula", facts.Formula, "formula");
        Line("CAS number", facts.Cas, "cas");
        Line("molar mass", facts.MolarMass is { } m ? $"{m.GramsPerMole.ToString("0.###", CultureInfo.InvariantCulture)} g/mol" : null, "molar_mass_g_mol");
        if (content.Parts.Count > 1)
            to.WriteLine($"made of: {string.Join(", ", content.Parts.Select(p => $"{p.Substance} {p.Percent.ToString("0.####", CultureInfo.InvariantCulture)} %"))}");
        Line($"state at {facts.At.Celsius:0.#} C", facts.State.ToString().ToLowerInvariant(), "state");
        Line("melting point", Celsius(facts.Melting), "melting_c");
        if (facts.Sublimation is null)
            Line("boiling point", Celsius(facts.Boiling), "boiling_c");
        Line("sublimation point", Celsius(facts.Sublimation), "sublimation_c");
        Line("flash point", Celsius(facts.Flash), "flash_c");
        Line(facts.IsDensityOfLiquefied ? "density, liquefied" : "density", facts.Density is { } d ? $"{Words.Number(d.GramsPerMillilitre)} g/mL" : null, "density_g_ml");
        if (facts.IsDensityOfLiquefied)
            Line("density as a gas", $"{Words.Number(facts.GasDensity!.Value.GramsPerMillilitre)} g/mL at 1 atm", "gas_density_g_ml");
        else if (facts.LiquefiedDensity is not null)
            Line("density, liquefied", $"{Words.Number(facts.LiquefiedDensity.Value.GramsPerMillilitre)} g/mL", "liquefied_density_g_ml");
        Line("vapour pressure", facts.VapourPressure is { } v ? $"{Words.Number(v.Kilopascals)} kPa" : null, "vapour_pressure_kpa");
        Line("vapour density", facts.VapourDensity is { } x ? $"{Words.Number(x.Value)} times air" : null, "vapour_density_air");
        Line("diffusivity in air", facts.DiffusivityInAir is { } f ? $"{Words.Number(f.SquareCentimetresPerSecond)} cm2/s" : null, "diffusivity_in_air_cm2_s");
        Line("exposure limit", facts.ExposureLimit is { } l ? $"{(l.Share is { } s ? $"{Words.Number(s.PartsPerMillion)} ppm" : $"{Words.Number(l.Concentration!.Value.MilligramsPerCubicMetre)} mg/m3")}, {l.Kind}" : null, "exposure_limit");
        to.WriteLine(classification.Categories.Count > 0
            ? $"hazards: {string.Join(", ", classification.Categories.Select(c => c.Statement.Length > 0 ? $"{c.Category} {c.Statement}" : c.Category))}"
            : "hazards: none stated");
        FactsBeside.Print(to, content);
        foreach (var note in content.Notes.Concat(classification.Notes))
            to.WriteLine($"note: {note}");
    }

    private static string? Celsius(Temperature? t) => t is { } value ? $"{value.Celsius.ToString("0.#", CultureInfo.InvariantCulture)} C" : null;
}
