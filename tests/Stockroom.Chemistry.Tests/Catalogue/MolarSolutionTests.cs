using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Tests.Catalogue;

/// <summary>
/// A molarity as per cent by mass. Figures: CRC Handbook of Chemistry and Physics, Concentrative properties of aqueous solutions
/// (NaOH 4.0 %: 1.043 mol/L; HCl 4.0 %: 1.117 mol/L; HCl 20.0 %: 6.023 mol/L; NaCl 5.8 %: 1.033 mol/L), from memory.
/// </summary>
public sealed class MolarSolutionTests
{
    [Theory]
    [InlineData("sodium hydroxide 1.043 M", "sodium hydroxide", 4.0)]
    [InlineData("hydrochloric acid 1.117 M", "hydrochloric acid", 4.0)]
    [InlineData("hydrochloric acid 6.02 M", "hydrochloric acid", 20.0)]
    [InlineData("sodium chloride 1.03 M", "sodium chloride", 5.8)]
    public void Resolve_AMolarSolution_IsPerCentByMass(string words, string solute, double percent)
    {
        var content = SubstanceCatalogue.Default.Resolve(words).Content;
        Assert.NotNull(content);
        var share = content.Parts.Single(p => p.Substance == SubstanceCatalogue.Default[solute]).Percent;
        Assert.InRange((double)share, percent * 0.95, percent * 1.05);
    }
}
