using Stockroom.Book.Encoding;

namespace Stockroom.Book.Containers;

/// <summary>One part of a home-made mixture as it was when booked: a substance's preferred name, per cent by mass.</summary>
public sealed record PartShare(string Substance, decimal Percent)
{
    internal static PartShare Read(EntryReader r) => new(r.Text("substance"), r.Number("percent"));

    internal void Write(EntryWriter w)
    {
        w.Text("substance", Substance);
        w.Number("percent", Percent);
    }
}

/// <summary>Density with which a volume was booked as a mass, in g/mL, and whose figure it was.</summary>
public sealed record BookedDensity(decimal GramsPerMillilitre, string Source)
{
    internal static BookedDensity Read(EntryReader r) => new(r.Number("g_ml"), r.Text("source"));

    internal void Write(EntryWriter w)
    {
        w.Number("g_ml", GramsPerMillilitre);
        w.Text("source", Source);
    }
}
