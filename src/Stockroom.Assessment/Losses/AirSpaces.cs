using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses;

/// <summary>The air of a kind of place, as usually met.</summary>
/// <remarks>Closed: vapour stays in, so that a breakage matters.</remarks>
public sealed record UsualAir(string Kind, AirSpace Space, bool Closed, Provenance Provenance);

/// <summary>Reads air-spaces.tsv: what the air of a place is taken for where nobody has measured it.</summary>
public static class AirSpaces
{
    private static readonly Lazy<IReadOnlyDictionary<string, UsualAir>> Rows = new(() => EmbeddedTables.Facts("air-spaces.tsv", "kind", "volume_m3", "changes_per_hour", "mixing", "closed").Rows
        .Select(r => new UsualAir(
            r.Text("kind"),
            new AirSpace(new Volume(r.Positive("volume_m3")), new RateConstant(r.Positive("changes_per_hour") / 3600)) { Mixing = new Fraction(r.Positive("mixing")) },
            r.YesNo("closed"),
            r.Provenance))
        .ToDictionary(a => a.Kind, StringComparer.Ordinal));

    public static UsualAir Room => Rows.Value["room"];

    /// <summary>Of a kind of place by its word; null for one that shares the air of its room.</summary>
    public static UsualAir? Of(string kind) => kind == "room" ? null : Rows.Value.GetValueOrDefault(kind);
}
