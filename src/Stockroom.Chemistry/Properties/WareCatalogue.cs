using System.Globalization;
using System.Text.RegularExpressions;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>A kind of vessel; the inside is taken as a cylinder of the body's bore.</summary>
/// <remarks>Kind: bottle, jar, vial, ampoule, display tube, tube, can, cylinder. Wetted: Inner surface when full. OutsideVolume: For the buoyancy of air in weighing.</remarks>
public sealed record Vessel(
    string Name, string Kind, string Material, Volume Volume, Length Wall, Length Bore, Area Wetted, Length NeckBore, Length NeckLength, Volume OutsideVolume, Provenance Provenance)
{
    /// <summary>Free surface of a liquid in the body.</summary>
    public Area CrossSection => new(Math.PI / 4 * Bore.Metres * Bore.Metres);

    public Area NeckSection => new(Math.PI / 4 * NeckBore.Metres * NeckBore.Metres);

    public bool IsGlass => Material.EndsWith("glass", StringComparison.Ordinal) || Material == "fused silica";

    public bool IsMetal => Material is "carbon steel" or "stainless steel" or "aluminium";
}

/// <summary>How a closure shuts.</summary>
public enum ClosureMechanism
{
    /// <summary>A ring gap along a path, however fine.</summary>
    Gap = 0,

    /// <summary>Glass closed in the flame.</summary>
    Fused,

    /// <summary>A cylinder valve.</summary>
    Valve,

    /// <summary>Nothing.</summary>
    Open,
}

/// <summary>What shuts a vessel.</summary>
/// <remarks>Gap: Width of the even ring gap that would leak as much, as a band; null unless the mechanism is a gap. Path: Length of the gap. Liner: Material over the mouth, null where there is none that lets anything through. Wetted: Materials that meet the content or its vapour.</remarks>
public sealed record Closure(
    string Name, ClosureMechanism Mechanism, Band<Length>? Gap, Length? Path, string? Liner, Length? LinerThickness, IReadOnlyList<string> Wetted, string? Remark, Provenance Provenance);

/// <summary>What lies over a content.</summary>
public enum CoverKind
{
    None = 0,
    Liquid,
    Gas,
}

/// <summary>A cover: water, an acid, an oil, an inert gas.</summary>
/// <remarks>Content: Its name in the catalogue; null for none.</remarks>
public sealed record Cover(string Name, string? Content, CoverKind Kind, string Serves, string? Remark, Provenance Provenance)
{
    /// <summary>Where it freezes or no longer runs; null for a gas.</summary>
    public Temperature? Stiff { get; init; }
}

/// <summary>The vessels, closures and covers that can be named. Immutable.</summary>
public sealed partial class WareCatalogue
{
    private static readonly Lazy<WareCatalogue> Embedded = new(() => new WareCatalogue());

    private static readonly Dictionary<string, ClosureMechanism> Mechanisms = new(StringComparer.Ordinal)
    {
        ["gap"] = ClosureMechanism.Gap,
        ["fused"] = ClosureMechanism.Fused,
        ["valve"] = ClosureMechanism.Valve,
        ["open"] = ClosureMechanism.Open,
    };

    private static readonly Dictionary<string, CoverKind> CoverKinds = new(StringComparer.Ordinal)
    {
        ["none"] = CoverKind.None,
        ["liquid"] = CoverKind.Liquid,
        ["gas"] = CoverKind.Gas,
    };

    private WareCatalogue()
    {
        Vessels = [.. EmbeddedTables.Facts(
            "vessels.tsv", "name", "kind", "material", "volume_ml", "wall_mm", "bore_mm", "wetted_cm2", "neck_bore_mm", "neck_length_mm", "outside_ml").Rows.Select(ReadVessel)];
        Closures = [.. EmbeddedTables.Facts(
            "closures.tsv", "name", "mechanism", "gap_low_um", "gap_um", "gap_high_um", "path_mm", "liner_material", "liner_mm", "wetted", "remark").Rows.Select(ReadClosure)];
        Covers = [.. EmbeddedTables.Facts("covers.tsv", "name", "content", "kind", "serves", "remark", "stiff_below_c").Rows.Select(r =>
            new Cover(r.Text("name"), r.TextOrNull("content"), r.OneOf("kind", CoverKinds), r.Text("serves"), r.TextOrNull("remark"), r.Provenance)
            {
                Stiff = r.NumberOrNull("stiff_below_c") is { } celsius ? Temperature.FromCelsius(celsius) : null,
            })];
    }

    public static WareCatalogue Default => Embedded.Value;

    public IReadOnlyList<Vessel> Vessels { get; }

    public IReadOnlyList<Closure> Closures { get; }

    public IReadOnlyList<Cover> Covers { get; }

    /// <summary>By name, letter case aside; null where there is none.</summary>
    public Vessel? FindVessel(string name) => Vessels.FirstOrDefault(v => Same(v.Name, name)) ?? Vessels.FirstOrDefault(v => Same(v.Name, InMillilitres(name)));

    public Closure? FindClosure(string name) => Closures.FirstOrDefault(c => Same(c.Name, name));

    public Cover? FindCover(string name) => Covers.FirstOrDefault(c => Same(c.Name, name));

    [GeneratedRegex(@"^(?<kind>.*\S)\s+(?<number>\d+([.,]\d+)?)\s*(?<unit>m?l)$", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Size();

    // Vessels are named by millilitres; a keeper may say litres, or leave out the blank.
    private static string InMillilitres(string name)
    {
        var size = Size().Match(name.Trim());
        if (!size.Success || !decimal.TryParse(size.Groups["number"].Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
            return name;
        return string.Create(CultureInfo.InvariantCulture, $"{size.Groups["kind"].Value} {number * (size.Groups["unit"].Length == 1 ? 1000 : 1):0.###} mL");
    }

    private static bool Same(string a, string b) => string.Equals(a, b.Trim(), StringComparison.OrdinalIgnoreCase);

    private static Vessel ReadVessel(TableRow r)
    {
        var vessel = new Vessel(
            r.Text("name"), r.Text("kind"), r.Text("material"), Volume.FromMillilitres(r.Positive("volume_ml")), Length.FromMillimetres(r.Positive("wall_mm")),
            Length.FromMillimetres(r.Positive("bore_mm")), Area.FromSquareCentimetres(r.Positive("wetted_cm2")), Length.FromMillimetres(r.Positive("neck_bore_mm")),
            Length.FromMillimetres(r.Positive("neck_length_mm")), Volume.FromMillilitres(r.Positive("outside_ml")), r.Provenance);
        if (vessel.NeckBore > vessel.Bore)
            throw r.Wrong("neck_bore_mm", "is wider than the body");
        if (vessel.OutsideVolume < vessel.Volume)
            throw r.Wrong("outside_ml", "is less than the inside volume");

        // No body holds a volume in less surface than a sphere.
        var sphere = Math.Cbrt(36 * Math.PI) * Math.Pow(vessel.Volume.CubicMetres, 2.0 / 3);
        return vessel.Wetted.SquareMetres >= sphere ? vessel : throw r.Wrong("wetted_cm2", "is less than a sphere of that volume has");
    }

    private static Closure ReadClosure(TableRow r)
    {
        var mechanism = r.OneOf("mechanism", Mechanisms);
        Band<Length>? gap = null;
        if (mechanism == ClosureMechanism.Gap)
        {
            gap = new Band<double>(r.Positive("gap_low_um"), r.Positive("gap_um"), r.Positive("gap_high_um")).Select(Length.FromMicrometres);
            if (gap.Value.Low > gap.Value.Expected || gap.Value.Expected > gap.Value.High)
                throw r.Wrong("gap_um", "must lie between gap_low_um and gap_high_um");
        }

        return new Closure(
            r.Text("name"), mechanism, gap, mechanism == ClosureMechanism.Gap ? Length.FromMillimetres(r.Positive("path_mm")) : null,
            r.TextOrNull("liner_material"), r.TextOrNull("liner_material") is null ? null : Length.FromMillimetres(r.Positive("liner_mm")),
            r.List("wetted"), r.TextOrNull("remark"), r.Provenance);
    }
}
