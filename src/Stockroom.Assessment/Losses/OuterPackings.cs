using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses;

/// <summary>A second wall round a vessel: how its closure and its film let a vapour through, and what it holds of a leak.</summary>
/// <remarks>Film: null where the wall lets nothing through. Absorbent: liquid that is taken up in it; null where there is none.</remarks>
public sealed record OuterPacking(
    string Name, Band<Length> Gap, Length Path, Length Bore, string? Film, Area? FilmArea, Length? FilmThickness, Volume? Absorbent, bool HoldsLeaks, Provenance Provenance)
{
    /// <summary>
    /// Conductance for a gas at a temperature: its gap (D A/L) and its film beside each other. Null where what the film lets through is
    /// not in the tables.
    /// </summary>
    public Band<VolumeRate>? Conductance(Substance gas, Pressure saturated, Temperature t, PropertyFacts facts)
    {
        var d = facts.DiffusivityInAir(gas, t).Value?.SquareMetresPerSecond ?? 0;
        var gap = Gap.Select(g => d * Math.PI * Bore.Metres * g.Metres / Path.Metres);
        if (Film is not { } material)
            return gap.Select(g => new VolumeRate(g));
        if (facts.Permeability(material, gas) is not { Count: > 0 } rows)
            return null;
        var film = ThroughFilm(rows[0], gas, saturated, t, facts);
        return new Band<VolumeRate>(new(gap.Low + film.Low), new(gap.Expected + film.Expected), new(gap.High + film.High));
    }

    private Band<double> ThroughFilm(WallPermeability row, Substance gas, Pressure saturated, Temperature t, PropertyFacts facts)
    {
        var sheet = Permeation.TemperatureFactor(row.Activation, row.At, t).Value * FilmArea!.Value.SquareMetres / FilmThickness!.Value.Metres;
        if (row.Gas is { } p)
            return p.Select(x => x.MolePerMetreSecondPascal * sheet * PhysicalConstants.GasConstant * t.Kelvin);
        var c = facts.MolarMass(gas) is { } m ? GasLaw.Concentration(saturated, m, t).KilogramsPerCubicMetre : 0;
        return row.Contact!.Value.Select(k => c > 0 ? k.KilogramMetrePerSquareMetreSecond * sheet / c : 0);
    }
}

/// <summary>Reads outer-packings.tsv, and finds a row by the keeper's own words.</summary>
public static class OuterPackings
{
    private static readonly Lazy<IReadOnlyList<(IReadOnlyList<string> Words, OuterPacking Packing)>> Rows = new(() =>
        [.. EmbeddedTables.Facts("outer-packings.tsv", "name", "words", "gap_low_um", "gap_um", "gap_high_um", "path_mm", "bore_mm", "film", "film_cm2", "film_mm", "absorbent_ml", "holds_leaks").Rows
            .Select(r => (r.List("words"), Read(r)))]);

    public static IReadOnlyList<OuterPacking> All => [.. Rows.Value.Select(r => r.Packing)];

    /// <summary>The row whose longest word stands in the text; null for words that no row knows.</summary>
    public static OuterPacking? Find(string? words) => words is null
        ? null
        : Rows.Value.SelectMany(r => r.Words.Select(w => (Word: w, r.Packing)))
            .Where(x => words.Contains(x.Word, StringComparison.OrdinalIgnoreCase))
            .OrderByDescending(x => x.Word.Length)
            .FirstOrDefault().Packing;

    private static OuterPacking Read(TableRow r) => new(
        r.Text("name"),
        new Band<double>(r.Positive("gap_low_um"), r.Positive("gap_um"), r.Positive("gap_high_um")).Select(Length.FromMicrometres),
        Length.FromMillimetres(r.Positive("path_mm")),
        Length.FromMillimetres(r.Positive("bore_mm")),
        r.TextOrNull("film"),
        r.PositiveOrNull("film_cm2") is { } cm2 ? Area.FromSquareCentimetres(cm2) : null,
        r.PositiveOrNull("film_mm") is { } mm ? Length.FromMillimetres(mm) : null,
        r.PositiveOrNull("absorbent_ml") is { } ml ? Volume.FromMillilitres(ml) : null,
        r.YesNo("holds_leaks"),
        r.Provenance);
}
