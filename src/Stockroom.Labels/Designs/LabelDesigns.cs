using Stockroom.Labels.Files;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Designs;

/// <summary>The designs that labels are set by: those of the program, and on top those of the keeper's own folder.</summary>
public sealed class LabelDesigns
{
    private static readonly Lazy<LabelDesigns> Embedded = new(() => Load());

    private readonly SortedDictionary<string, Design> _designs = new(StringComparer.Ordinal);

    private LabelDesigns()
    {
    }

    /// <summary>Those that come with the program.</summary>
    public static LabelDesigns Default => Embedded.Value;

    public IReadOnlyCollection<Design> All => _designs.Values;

    /// <summary>Reads all designs; one bad file refuses the lot, so that none goes missing unnoticed.</summary>
    /// <param name="folder">The keeper's own design files, or null; a design of the same name replaces the program's.</param>
    /// <exception cref="LabelException">A file is not a design, names a smaller one that does not exist, or cannot be read.</exception>
    public static LabelDesigns Load(string? folder = null)
    {
        var designs = new LabelDesigns();
        var files = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (text, file) in LabelFiles.Of("Designs", folder))
        {
            var design = DesignReader.Read(text, file);
            designs._designs[design.Name] = design;
            files[design.Name] = file;
        }

        foreach (var design in designs.All)
        {
            if (design.Smaller is { } smaller && (!designs._designs.TryGetValue(smaller, out var next) || next.Layout != DesignLayout.Mark || design.Layout == DesignLayout.Mark))
            {
                throw new LabelException($"{files[design.Name]}: member 'smaller': '{smaller}' is not a design of the layout mark behind one of the layout full; or null");
            }
        }

        return designs;
    }

    /// <summary>The design of that name.</summary>
    /// <exception cref="LabelException">No such design; the message names those there are.</exception>
    public Design Named(string name) => _designs.TryGetValue(name, out var design)
        ? design
        : throw new LabelException($"there is no label design '{name}'; the designs are {string.Join(", ", _designs.Keys)}");

    /// <summary>The design for a stock where none is asked for: of the usual ones for its shape and size that for the largest labels.</summary>
    /// <exception cref="LabelException">None is for it.</exception>
    public Design For(LabelStock stock) => All
        .Where(d => d.IsUsual && d.IsFor(stock))
        .OrderByDescending(d => d.LeastWidthMm * d.LeastHeightMm)
        .ThenBy(d => d.Layout)
        .FirstOrDefault()
        ?? throw new LabelException($"no usual design is for stock '{stock.Name}', of shape {stock.Shape.ToString().ToLowerInvariant()} and {stock.PrintWidthMm:0.#} x {stock.PrintHeightMm:0.#} mm; add one to labels/designs");

    internal Design? SmallerThan(Design design) => design.Smaller is { } name ? _designs[name] : null;
}
