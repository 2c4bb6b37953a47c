using System.Globalization;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Verbs;

/// <summary>A classification in plain lines, label before value.</summary>
internal static class ClassificationText
{
    private static readonly (ExposureRoute Route, string Words, string Unit)[] Estimates =
    [
        (ExposureRoute.Oral, "oral", "mg/kg"),
        (ExposureRoute.Dermal, "dermal", "mg/kg"),
        (ExposureRoute.Gas, "inhaled, gas", "ppm"),
        (ExposureRoute.Vapour, "inhaled, vapour", "mg/L"),
        (ExposureRoute.Dust, "inhaled, dust or mist", "mg/L"),
    ];

    private static readonly (ExposureRoute Route, string Words)[] Shares =
        [(ExposureRoute.Oral, "oral"), (ExposureRoute.Dermal, "dermal"), (ExposureRoute.Vapour, "inhaled")];

    public static void Write(TextWriter to, ClassifyAnswer answer)
    {
        var (found, label) = (answer.Found, answer.Label);
        to.WriteLine($"Content:      {answer.Name}");
        to.WriteLine($"Rules:        {RuleSets.Words.First(w => w.Value == found.Rules).Key}");
        to.WriteLine($"Signal word:  {label.SignalWord ?? (found.Unclassified.Count > 0 ? "none known" : "none")}");
        to.WriteLine($"Pictograms:   {OrNone(label.Pictograms)}{(label.OptionalPictograms.Count == 0 ? "" : $" (may also stand: {string.Join(", ", label.OptionalPictograms)})")}");
        to.WriteLine($"Categories:   {OrNone(found.Categories.Select(c => c.Category).Distinct())}");
        foreach (var words in label.WordsBeside)
            to.WriteLine($"Beside:       {words}");
        Statements(to, label.Suspected ? "Suspected hazards" : "Hazards", [.. label.HazardStatements, .. label.Supplemental]);
        Statements(to, "Precautions", label.Precautionary);
        Toxicity(to, found);
        if (found.Reasons.Count > 0)
        {
            to.WriteLine();
            to.WriteLine("Because:");
            foreach (var reason in found.Reasons.Distinct())
                to.WriteLine($"  {reason.Category}: {reason.Because} [{reason.Source}]");
        }

        if (found.Notes.Count == 0)
            return;
        to.WriteLine();
        to.WriteLine("Notes:");
        foreach (var note in found.Notes)
            to.WriteLine($"  {note}");
    }

    private static void Statements(TextWriter to, string head, IReadOnlyList<LabelStatement> statements)
    {
        if (statements.Count == 0)
            return;
        to.WriteLine();
        to.WriteLine($"{head}:");
        foreach (var statement in statements)
            to.WriteLine($"  {(statement.Code.Length == 0 ? "" : statement.Code + ": ")}{statement.Text}");
    }

    private static void Toxicity(TextWriter to, Classification found)
    {
        var lines = Estimates.Where(e => found.AcuteEstimates.ContainsKey(e.Route))
            .Select(e => $"ATE {e.Words}: {found.AcuteEstimates[e.Route].ToString("G4", CultureInfo.InvariantCulture)} {e.Unit}")
            .Concat(Shares.Where(s => found.UnknownShares.GetValueOrDefault(s.Route) > 0)
                .Select(s => $"of unknown toxicity, {s.Words}: {Math.Round(found.UnknownShares[s.Route], 2).ToString("0.##", CultureInfo.InvariantCulture)} %"))
            .ToList();
        if (lines.Count == 0)
            return;
        to.WriteLine();
        to.WriteLine("Acute toxicity of the whole:");
        foreach (var line in lines)
            to.WriteLine($"  {line}");
    }

    private static string OrNone(IEnumerable<string> words)
    {
        var list = words.ToList();
        return list.Count == 0 ? "none" : string.Join(", ", list);
    }
}
