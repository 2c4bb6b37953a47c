using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>How a content counts in transport: its class by the dangerous goods list, or one derived from its GHS categories.</summary>
public sealed record GoodsClass
{
    /// <summary>What is written for a content to which no class applies.</summary>
    public const string NotRegulated = "not regulated";

    /// <summary>Main class or division, such as "3" or "6.1"; <see cref="NotRegulated"/>; null where it is not known.</summary>
    public string? Class { get; init; }

    public IReadOnlyList<string> Subsidiary { get; init; } = [];

    /// <summary>Four figures; null where the content is not named in the list.</summary>
    public string? UnNumber { get; init; }

    /// <summary>I, II or III; null where there is none or it is not known.</summary>
    public string? PackingGroup { get; init; }

    /// <summary>US hazard zone A to D of what is poisonous by inhalation; null where it has none or it is not known.</summary>
    public string? Zone { get; init; }

    /// <summary>True where the class follows from GHS categories and not from the list.</summary>
    public bool IsDerived { get; init; }

    /// <summary>Why, in a sentence.</summary>
    public required string Because { get; init; }

    public Provenance? Source { get; init; }

    public bool IsKnown => Class is not null;

    public bool IsDangerous => Class is not null && Class != NotRegulated;

    /// <summary>Main and subsidiary classes, main first; empty for what is not dangerous or not known.</summary>
    public IEnumerable<string> Hazards => IsDangerous ? Subsidiary.Prepend(Class!) : [];

    public override string ToString() => Class is null
        ? "class not known"
        : $"{(UnNumber is { } un ? $"UN {un}, " : "")}{(IsDangerous ? "class " : "")}{Class}{(Subsidiary.Count > 0 ? $" ({string.Join(", ", Subsidiary)})" : "")}{(PackingGroup is { } group ? $", packing group {group}" : "")}";
}

/// <summary>The one storage class of a content by TRGS 510; null where it is not known.</summary>
public sealed record StorageClass(string? Class, string Because, Provenance Source);
