using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>A category that the content has.</summary>
/// <param name="Category">Abbreviation, such as "Skin Corr. 1B".</param>
/// <param name="Statement">Code of its hazard statement with any suffix, such as H314 or H360FD; empty where it has none.</param>
/// <param name="Organs">Organs affected, where known.</param>
public sealed record ClassifiedCategory(string Category, string Statement, string? Organs = null);

/// <summary>Why a category or statement stands; the sentence is made when it is first read.</summary>
/// <param name="category">Category or statement that it is for.</param>
/// <param name="because">Makes the sentence.</param>
/// <param name="source">Clause or entry.</param>
public sealed class Reason(string category, Func<string> because, Provenance source)
{
    private readonly Lazy<string> _because = new(because, LazyThreadSafetyMode.PublicationOnly);

    public string Category => category;

    public string Because => _because.Value;

    public Provenance Source => source;
}

/// <summary>The hazards of a content, each with its reason, and everything that is not known about them.</summary>
public sealed record Classification
{
    public required RuleSet Rules { get; init; }

    /// <summary>Physical hazards first, then health, then environment; within a class the most severe.</summary>
    public required IReadOnlyList<ClassifiedCategory> Categories { get; init; }

    /// <summary>Supplemental statements, such as EUH014.</summary>
    public required IReadOnlyList<string> Supplemental { get; init; }

    /// <summary>Ingredients named by EUH208.</summary>
    public IReadOnlyList<string> Sensitisers { get; init; } = [];

    public required IReadOnlyList<Reason> Reasons { get; init; }

    /// <summary>What was assumed, what was not judged, what the reader must know; each a sentence.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Acute toxicity of the whole by route, in the route's unit; a route without toxic ingredients is missing.</summary>
    public IReadOnlyDictionary<ExposureRoute, decimal> AcuteEstimates { get; init; } = new Dictionary<ExposureRoute, decimal>();

    /// <summary>Per cent of ingredients whose acute toxicity is not known, by route.</summary>
    public IReadOnlyDictionary<ExposureRoute, decimal> UnknownShares { get; init; } = new Dictionary<ExposureRoute, decimal>();

    /// <summary>Ingredients about whose hazards nothing is known.</summary>
    public IReadOnlyList<string> Unclassified { get; init; } = [];

    /// <summary>True for an orphan: what it is, is not known.</summary>
    public bool IsUnknown { get; init; }

    /// <summary>For an orphan, what its description suggests; it adds to the unknown and never takes away from it.</summary>
    public IReadOnlyList<ClassifiedCategory> Suspected { get; init; } = [];

    /// <summary>Words that stand beside the label elements, such as "Radioactive".</summary>
    public IReadOnlyList<string> WordsBeside { get; init; } = [];

    /// <summary>All codes, of hazard and supplemental statements.</summary>
    public IReadOnlyList<string> StatementCodes => [.. Categories.Select(c => c.Statement).Where(s => s.Length > 0).Concat(Supplemental).Distinct()];

    public bool Has(string category) => Categories.Any(c => c.Category == category);
}
