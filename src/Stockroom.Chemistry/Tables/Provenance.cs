namespace Stockroom.Chemistry.Tables;

/// <summary>Where a fact comes from: the work, the place in it, and the date or edition it was good for.</summary>
public sealed record Provenance(string Source, string Locator, string AsOf)
{
    /// <summary>True where the value was recalled and not read in the source.</summary>
    public bool FromMemory => Source.Contains("from memory", StringComparison.Ordinal);

    public override string ToString() =>
        string.Join(", ", new[] { Source, Locator, AsOf.Length == 0 ? "" : "as of " + AsOf }.Where(s => s.Length > 0 && s != "-"));
}
