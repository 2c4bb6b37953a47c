using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Activities up to which a radioactive source is exempt from notification, from exemption-activities.tsv. A nuclide that is not
/// listed counts at the lowest level of the table.
/// </summary>
/// <remarks>Source: Council Directive 2013/59/Euratom, Annex VII Table B; several nuclides by the sum of their shares.</remarks>
public sealed class ExemptionActivities
{
    private static readonly Lazy<ExemptionActivities> Embedded = new(() => new ExemptionActivities());

    private readonly Dictionary<string, Activity> _levels;

    private ExemptionActivities()
    {
        var rows = EmbeddedTables.Facts("exemption-activities.tsv", "nuclide", "becquerel").Rows;
        _levels = rows.ToDictionary(r => r.Text("nuclide"), r => new Activity(r.Positive("becquerel")), StringComparer.Ordinal);
        Lowest = _levels.Values.Min();
        Source = rows[0].Provenance;
    }

    public static ExemptionActivities Default => Embedded.Value;

    /// <summary>What a nuclide that is not listed counts at.</summary>
    public Activity Lowest { get; }

    public Provenance Source { get; }

    /// <summary>In Bq.</summary>
    public Activity Of(string nuclide) => _levels.TryGetValue(nuclide, out var level) ? level : Lowest;

    public bool Lists(string nuclide) => _levels.ContainsKey(nuclide);
}
