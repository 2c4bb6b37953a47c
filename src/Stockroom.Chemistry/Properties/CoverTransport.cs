using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>A substance dissolving in the liquid that covers it: solubility and diffusion, near room temperature.</summary>
public sealed record CoverTransport(Substance Substance, string Cover, Band<MassConcentration> Solubility, Diffusivity Diffusivity, Spread Spread, Provenance Provenance)
{
    /// <summary>The temperature for which the values are stated.</summary>
    public static readonly Temperature At = PhysicalConstants.Reference;
}

/// <summary>Reads cover-transport.tsv.</summary>
internal sealed class CoverTransportTable
{
    private readonly Dictionary<(string, string), CoverTransport> _rows = [];

    private CoverTransportTable()
    {
    }

    public static CoverTransportTable Read(SubstanceCatalogue catalogue)
    {
        var table = new CoverTransportTable();
        foreach (var row in EmbeddedTables.Facts("cover-transport.tsv", "substance", "cover", "solubility_low", "solubility", "solubility_high", "m2_s", "spread").Rows)
        {
            var entry = new CoverTransport(
                row.SubstanceOf(catalogue, "substance"),
                row.Text("cover"),
                new Band<MassConcentration>(new(row.Positive("solubility_low")), new(row.Positive("solubility")), new(row.Positive("solubility_high"))),
                new Diffusivity(row.Positive("m2_s")),
                Spread.Of(row.Positive("spread")),
                row.Provenance);
            if (!table._rows.TryAdd((entry.Substance.Name, entry.Cover), entry))
                throw row.Wrong("cover", "stands twice for this substance");
        }

        return table;
    }

    public CoverTransport? Find(Substance substance, string cover) => _rows.GetValueOrDefault((substance.Name, cover));
}
