using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards;

/// <summary>The EUH statements of a mixture: those of its ingredients, and EUH208 for what may set off an allergy.</summary>
internal static class SupplementalStatements
{
    private const string Supplemental = "EUH";
    private const string RespiratoryTract = "EUH071";

    // These say what the undiluted substance does with water or on its own; much water has already done it.
    private static readonly string[] GoneInWater = ["EUH014", "EUH018", "EUH019", "EUH029", "EUH066"];

    public static void Judge(Mixture mixture, Findings findings)
    {
        foreach (var ingredient in mixture.Ingredients)
            FromEntry(ingredient, mixture, findings);
        foreach (var ingredient in mixture.Ingredients.Where(_ => !mixture.IsPure))
            Sensitiser(ingredient, findings);
        if (findings.Any(c => Classes.SkinCorrosion.IsCorrosive(c.Category)) && findings.Any(c => c.Statement is "H330" or "H331" or "H332") && !findings.Supplemental.Contains(RespiratoryTract))
            findings.Note($"not judged: {RespiratoryTract}, for what is corrosive and toxic if inhaled; the mechanism would have to be known");
    }

    private static void FromEntry(Ingredient ingredient, Mixture mixture, Findings findings)
    {
        foreach (var own in ingredient.Categories.Where(c => c.Category == Supplemental))
        {
            var band = ingredient.Profile.Limits.FirstOrDefault(l => l.Statement == own.Statement);
            if (band is not null)
            {
                if (band.Contains(ingredient.Counted))
                    findings.AddSupplemental(own.Statement, () => Explain.Limit(ingredient, band), band.Provenance);
                continue;
            }

            if (mixture.IsPure)
            {
                findings.AddSupplemental(own.Statement, () => Explain.Entry(ingredient.Name, own), own.Provenance);
                continue;
            }

            var carry = findings.Facts.Limits.Carry(Supplemental, "carry", findings.Rules);
            if (ingredient.Percent < carry.FromPercent)
                continue;
            if (own.Statement == RespiratoryTract && !findings.Any(c => Classes.SkinCorrosion.IsCorrosive(c.Category)))
                continue;
            if (GoneInWater.Contains(own.Statement) && mixture.IsMostlyWater)
            {
                findings.Note($"not judged: {own.Statement} of {ingredient.Name}, which is here mostly diluted in water");
                continue;
            }

            findings.AddSupplemental(own.Statement, () => $"{Explain.Share(ingredient)}: carried over from its entry", own.Provenance);
        }
    }

    private static void Sensitiser(Ingredient ingredient, Findings findings)
    {
        foreach (var own in ingredient.Categories)
        {
            if (findings.Facts.Limits.Of(own.Category, "elicit", findings.Rules) is not [var limit, ..] || findings.Any(c => c.Category[..^1] == own.Category[..^1] || c.Statement == own.Statement))
                continue;
            var specific = ingredient.Profile.Limits.Where(l => l.Statement == own.Statement).Select(l => l.FromPercent / 10m);
            var from = specific.Append(limit.FromPercent).Min();
            if (ingredient.Counted < from)
                continue;
            findings.AddSupplemental(limit.Result!, () => $"{Explain.Share(ingredient)} ({own.Category}): named from {Explain.Percent(from)} on", limit.Provenance);
            findings.AddSensitiser(ingredient.Name);
        }
    }
}
