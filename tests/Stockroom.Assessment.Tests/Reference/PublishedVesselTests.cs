using System.Globalization;
using Stockroom.Assessment.Tests.Losses;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Reference;

/// <summary>Resistance ratings, filling ratios and tube strengths of a published set, every row.</summary>
public sealed class PublishedVesselTests
{
    private static readonly Dictionary<string, string[]> Contents = new(StringComparer.Ordinal)
    {
        ["bromine (liquid, dry)"] = ["bromine"],
        ["bromine water (saturated)"] = ["bromine water"],
        ["iodine (solid, dry)"] = ["iodine"],
        ["iodine, alcoholic or KI solution"] = ["iodine in potassium iodide"],
        ["chlorine gas, dry"] = ["chlorine"],
        ["chlorine gas, wet"] = ["chlorine water"],
        ["sodium hypochlorite 10-15%"] = ["sodium hypochlorite 12%"],
        ["hydrogen peroxide 30%"] = ["hydrogen peroxide 30%"],
        ["sulfuric acid 95-98%"] = ["sulfuric acid 96%", "sulfuric acid 98%"],
        ["sulfuric acid 30%"] = ["sulfuric acid 30%"],
        ["hydrochloric acid 37%"] = ["hydrochloric acid 37%"],
        ["nitric acid 65-70%"] = ["nitric acid 65%", "nitric acid 68%"],
        ["nitric acid, fuming (>90%)"] = ["nitric acid 95%", "nitric acid 90%"],
        ["hydrofluoric acid 48%"] = ["hydrofluoric acid 48%"],
        ["phosphoric acid 85%"] = ["phosphoric acid 85%"],
        ["perchloric acid 70%"] = ["perchloric acid 70%"],
        ["acetic acid, glacial"] = ["acetic acid"],
        ["ammonia solution 25-28%"] = ["ammonia solution 25%"],
        ["sodium hydroxide 30-50%"] = ["sodium hydroxide 30%", "sodium hydroxide 50%"],
        ["formaldehyde 37%"] = ["formaldehyde 37%"],
        ["titanium/tin/silicon tetrachloride, PCl3 (dry)"] = ["titanium tetrachloride", "tin tetrachloride", "silicon tetrachloride", "phosphorus trichloride"],
        ["toluene / xylene / benzene"] = ["toluene", "xylene", "benzene"],
        ["n-hexane / pentane"] = ["n-hexane", "n-pentane"],
        ["methanol / ethanol / 2-propanol"] = ["methanol", "ethanol", "propan-2-ol"],
        ["mercury (liquid)"] = ["mercury"],
        ["phosphorus (white) under water"] = ["phosphorus (white)"],
        ["potassium or sodium under mineral oil"] = ["potassium", "sodium"],
        ["cesium / rubidium metal"] = ["caesium", "rubidium"],
        ["chromic acid / CrO3 solution"] = ["chromium trioxide 10%"],
        ["potassium permanganate solution"] = ["potassium permanganate 5%"],
    };

    [Fact]
    public void Resists_EveryPublishedRating_ComesOut()
    {
        var wrong = new List<string>();
        var asked = 0;
        foreach (var row in ReferenceTable.Rows("material_compatibility.tsv"))
        {
            foreach (var content in Contents.GetValueOrDefault(row["chemical"]) ?? [row["chemical"]])
            {
                foreach (var (material, rating) in row.Where(c => c.Key is not ("chemical" or "note")))
                {
                    asked++;
                    var expected = rating switch { "A" or "B" => ResistanceRating.Good, "C" => ResistanceRating.Limited, _ => ResistanceRating.Poor };
                    var actual = VesselFit.Resists(material, Bench.Content(content), Bench.Facts).Rating;
                    if (actual != expected)
                        wrong.Add($"{material} on {content}: {actual?.ToString() ?? "unknown"} where {rating} is published");
                }
            }
        }

        Assert.True(asked >= 600, $"only {asked} ratings asked");
        Assert.Equal([], wrong);
    }

    [Fact]
    public void FillingRatios_EveryListedGas_ComesOut()
    {
        foreach (var row in ReferenceTable.Rows("un_p200_filling_ratios.tsv"))
        {
            var name = row["substance"].Split(',')[0];
            var listed = Bench.Facts.ListedFillingRatios(Bench.Facts.Catalogue.ResolveSubstance(name)!);
            Assert.Contains(listed, r => Math.Abs(r.Ratio.GramsPerMillilitre - Number(row, "filling_ratio_kg_per_L")) < 1e-9
                && Math.Abs(r.TestPressure.Bar - Number(row, "test_pressure_bar")) < 1e-9 && r.UnNumber == row["UN"]);
        }
    }

    [Fact]
    public void TubeStrength_EveryListedTube_ComesOut()
    {
        foreach (var row in ReferenceTable.Rows("glass_tube_pressure.tsv"))
        {
            var (outside, wall) = (Length.FromMillimetres(Number(row, "OD_mm")), Length.FromMillimetres(Number(row, "wall_mm")));
            var en = GlassTubeStrength.En1595(outside, wall, GlassTubeStrength.BorosilicateStress).Bar;
            var lame = GlassTubeStrength.LameAllowable((outside / 2) - wall, outside / 2, GlassTubeStrength.BorosilicateStress).Bar;
            Assert.Equal(Number(row, "p_allow_EN1595_bar"), en, 0.006);
            Assert.Equal(Number(row, "p_allow_Lame_70bar_hoop_bar"), lame, 0.006);
        }
    }

    private static double Number(IReadOnlyDictionary<string, string> row, string column) => double.Parse(row[column], CultureInfo.InvariantCulture);
}
