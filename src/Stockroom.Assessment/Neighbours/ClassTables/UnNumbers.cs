using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>The dangerous goods list as far as the catalogue needs it, from un-numbers.tsv.</summary>
public sealed class UnNumbers
{
    // A row without strengths is for the substance itself, a little water or dirt aside. A figure of our own.
    private const decimal ItselfFromPercent = 95m;

    private static readonly Lazy<UnNumbers> Embedded = new(() => new UnNumbers(EmbeddedTables.Facts(
        "un-numbers.tsv", "content", "from_percent", "up_to_percent", "un", "class", "subsidiary", "packing_group", "zone")));

    private readonly Dictionary<string, List<Row>> _rows = new(StringComparer.Ordinal);

    private UnNumbers(Table table)
    {
        foreach (var row in table.Rows)
        {
            var name = row.Text("content");
            var catalogue = SubstanceCatalogue.Default;
            if (catalogue.Find(name)?.Name != name && catalogue.Preparations.All(p => p.Name != name))
                throw row.Wrong("content", $"'{name}' is neither a substance nor a preparation of the catalogue");
            if (!_rows.TryGetValue(name, out var list))
                _rows[name] = list = [];
            list.Add(new Row(row.DecimalOrNull("from_percent"), row.DecimalOrNull("up_to_percent"), Read(row)));
        }
    }

    /// <summary>The list that comes with the program.</summary>
    public static UnNumbers Default => Embedded.Value;

    /// <summary>Every row: the content's name, the strengths it is for, what it says.</summary>
    public IEnumerable<(string Content, decimal? FromPercent, decimal? UpToPercent, GoodsClass Goods)> Rows =>
        _rows.SelectMany(r => r.Value.Select(v => (r.Key, v.FromPercent, v.UpToPercent, v.Goods)));

    /// <summary>What the list says of a content: by its own name, or by its one substance and how strong it is in water. Null where it is not named.</summary>
    public GoodsClass? Find(Content content)
    {
        if (content.IsUnknown)
            return null;
        if (_rows.TryGetValue(content.Name, out var own) && own.Find(r => r.IsItself) is { } named && content.Pure?.Name != content.Name)
            return named.Goods;
        var solutes = content.Parts.Where(p => p.Substance.Name != "water").ToList();
        if (solutes.Count != 1 || !_rows.TryGetValue(solutes[0].Substance.Name, out var rows))
            return null;
        var percent = solutes[0].Percent;
        return rows.Find(r => r.Holds(percent))?.Goods;
    }

    private static GoodsClass Read(TableRow row) => new()
    {
        Class = row.Text("class"),
        Subsidiary = row.List("subsidiary"),
        UnNumber = row.Text("un"),
        PackingGroup = row.TextOrNull("packing_group"),
        Zone = row.TextOrNull("zone"),
        Because = $"named in the dangerous goods list as UN {row.Text("un")}",
        Source = row.Provenance,
    };

    private sealed record Row(decimal? FromPercent, decimal? UpToPercent, GoodsClass Goods)
    {
        public bool IsItself => FromPercent is null && UpToPercent is null;

        public bool Holds(decimal percent) => IsItself
            ? percent >= ItselfFromPercent
            : (FromPercent is null || percent >= FromPercent) && (UpToPercent is null || percent <= UpToPercent);
    }
}
