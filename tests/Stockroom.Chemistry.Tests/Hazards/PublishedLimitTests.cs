using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>
/// Solutions change category exactly at the limits of CLP Annex VI Table 3 (ATP21), entry by entry. Names stand for the
/// health classes of skin, eye and airways and for oxidising liquids; statements of other classes are left out.
/// </summary>
public sealed class PublishedLimitTests
{
    // Index no. 017-002-01-X.
    [Theory]
    [InlineData(1, "")]
    [InlineData(5, "")]
    [InlineData(9.99, "")]
    [InlineData(10, "Skin Irrit. 2, Eye Irrit. 2, STOT SE 3")]
    [InlineData(12, "Skin Irrit. 2, Eye Irrit. 2, STOT SE 3")]
    [InlineData(24.99, "Skin Irrit. 2, Eye Irrit. 2, STOT SE 3")]
    [InlineData(25, "Skin Corr. 1B, STOT SE 3")]
    [InlineData(30, "Skin Corr. 1B, STOT SE 3")]
    [InlineData(37, "Skin Corr. 1B, STOT SE 3")]
    public void HydrochloricAcid_AtEachLimit_ChangesCategory(double percent, string expected) => Check("hydrochloric acid", percent, expected);

    // Index no. 011-002-00-6.
    [Theory]
    [InlineData(0.49, "")]
    [InlineData(0.5, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData(1.99, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData(2, "Skin Corr. 1B")]
    [InlineData(3, "Skin Corr. 1B")]
    [InlineData(4.99, "Skin Corr. 1B")]
    [InlineData(5, "Skin Corr. 1A")]
    [InlineData(50, "Skin Corr. 1A")]
    public void SodiumHydroxide_AtEachLimit_ChangesCategory(double percent, string expected) => Check("sodium hydroxide", percent, expected);

    // Index no. 016-020-00-8.
    [Theory]
    [InlineData(1, "")]
    [InlineData(4.99, "")]
    [InlineData(5, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData(10, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData(14.99, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData(15, "Skin Corr. 1A")]
    [InlineData(96, "Skin Corr. 1A")]
    [InlineData(98, "Skin Corr. 1A")]
    public void SulfuricAcid_AtEachLimit_ChangesCategory(double percent, string expected) => Check("sulfuric acid", percent, expected);

    // Index no. 008-003-00-9.
    [Theory]
    [InlineData(3, "")]
    [InlineData(4.99, "")]
    [InlineData(5, "Eye Irrit. 2")]
    [InlineData(7.99, "Eye Irrit. 2")]
    [InlineData(8, "Eye Dam. 1")]
    [InlineData(34.99, "Eye Dam. 1")]
    [InlineData(35, "Skin Irrit. 2, Eye Dam. 1, STOT SE 3")]
    [InlineData(49.99, "Skin Irrit. 2, Eye Dam. 1, STOT SE 3")]
    [InlineData(50, "Ox. Liq. 2, Skin Corr. 1B, STOT SE 3")]
    [InlineData(69.99, "Ox. Liq. 2, Skin Corr. 1B, STOT SE 3")]
    [InlineData(70, "Ox. Liq. 1, Skin Corr. 1A, STOT SE 3")]
    public void HydrogenPeroxide_AtEachLimit_ChangesCategory(double percent, string expected) => Check("hydrogen peroxide", percent, expected);

    // Index no. 007-030-00-3 up to 70 %, 007-004-00-1 above. Where the entries have no limit for irritation the generic one holds.
    [Theory]
    [InlineData(0.99, "")]
    [InlineData(1, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData(2.99, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData(3, "Skin Irrit. 2, Eye Dam. 1")]
    [InlineData(4.99, "Skin Irrit. 2, Eye Dam. 1")]
    [InlineData(5, "Skin Corr. 1B")]
    [InlineData(19.99, "Skin Corr. 1B")]
    [InlineData(20, "Skin Corr. 1A")]
    [InlineData(64.99, "Skin Corr. 1A")]
    [InlineData(65, "Ox. Liq. 3, Skin Corr. 1A")]
    [InlineData(70, "Ox. Liq. 3, Skin Corr. 1A")]
    [InlineData(70.01, "Ox. Liq. 3, Skin Corr. 1A")]
    [InlineData(98.99, "Ox. Liq. 3, Skin Corr. 1A")]
    [InlineData(99, "Ox. Liq. 2, Skin Corr. 1A")]
    public void NitricAcid_AtEachLimit_ChangesCategory(double percent, string expected) => Check("nitric acid", percent, expected);

    // 2.65 mg/L / 0.265 = 10 mg/L, the upper bound of category 3, which belongs to it (Annex I Table 3.1.1).
    [Theory]
    [InlineData(13.24, "")]
    [InlineData(13.25, "Acute Tox. 4")]
    [InlineData(26.4, "Acute Tox. 4")]
    [InlineData(26.5, "Acute Tox. 3")]
    [InlineData(70, "Acute Tox. 3")]
    [InlineData(70.01, "Acute Tox. 1")]
    public void NitricAcid_Inhaled_ChangesCategoryInDecimals(double percent, string expected)
    {
        var found = Given.Solution("nitric acid", (decimal)percent);
        Assert.Equal(expected, string.Join(", ", Given.Names(found).Where(n => n.StartsWith("Acute", StringComparison.Ordinal))));
    }

    // Index nos. 607-002-00-6, 607-001-00-0, 007-001-01-2, 017-006-00-4, 009-003-00-1, 015-011-00-6, 019-002-00-8, 035-002-01-8.
    [Theory]
    [InlineData("acetic acid", 9.99, "")]
    [InlineData("acetic acid", 10, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData("acetic acid", 25, "Skin Corr. 1B")]
    [InlineData("acetic acid", 90, "Skin Corr. 1A")]
    [InlineData("formic acid", 1.99, "")]
    [InlineData("formic acid", 5, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData("formic acid", 10, "Skin Corr. 1B")]
    [InlineData("formic acid", 85, "Skin Corr. 1B")]
    [InlineData("formic acid", 90, "Skin Corr. 1A")]
    [InlineData("ammonia solution", 4.99, "Skin Irrit. 2, Eye Dam. 1")]
    [InlineData("ammonia solution", 5, "Skin Corr. 1B, STOT SE 3")]
    [InlineData("ammonia solution", 25, "Skin Corr. 1B, STOT SE 3")]
    [InlineData("perchloric acid", 50, "Ox. Liq. 2, Skin Corr. 1A")]
    [InlineData("perchloric acid", 50.01, "Ox. Liq. 1, Skin Corr. 1A")]
    [InlineData("hydrofluoric acid", 0.09, "")]
    [InlineData("hydrofluoric acid", 0.1, "Eye Irrit. 2")]
    [InlineData("hydrofluoric acid", 1, "Skin Corr. 1B")]
    [InlineData("hydrofluoric acid", 7, "Skin Corr. 1A")]
    [InlineData("phosphoric acid", 24.99, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData("phosphoric acid", 25, "Skin Corr. 1B")]
    [InlineData("potassium hydroxide", 0.5, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData("potassium hydroxide", 2, "Skin Corr. 1B")]
    [InlineData("hydrobromic acid", 39.99, "Skin Irrit. 2, Eye Irrit. 2, STOT SE 3")]
    [InlineData("hydrobromic acid", 40, "Skin Corr. 1B, STOT SE 3")]
    public void Solution_AtItsLimit_ChangesCategory(string substance, double percent, string expected) => Check(substance, percent, expected);

    // Index no. 603-001-00-X: STOT SE 2 from 3 %, 1 from 10 %; ATE(oral) 100/(5/100) = 2000 is still category 4.
    [Theory]
    [InlineData(2.99, "")]
    [InlineData(3, "STOT SE 2")]
    [InlineData(5, "Acute Tox. 4, STOT SE 2")]
    [InlineData(9.99, "Acute Tox. 4, STOT SE 2")]
    [InlineData(10, "STOT SE 1")]
    public void Methanol_AtEachLimit_ChangesCategory(double percent, string expected)
    {
        var names = Given.Names(Given.Solution("methanol", (decimal)percent)).Where(n => n.StartsWith("STOT", StringComparison.Ordinal) || (n.StartsWith("Acute", StringComparison.Ordinal) && percent < 10));
        Assert.Equal(expected, string.Join(", ", names));
    }

    // Index no. 605-001-00-5: skin sensitisation from 0.2 %; below, from a tenth of that, EUH208 (Annex I Table 3.4.6).
    [Theory]
    [InlineData(0.019, false, false)]
    [InlineData(0.02, false, true)]
    [InlineData(0.199, false, true)]
    [InlineData(0.2, true, false)]
    public void FormaldehydeSolution_Sensitiser_IsNamedBelowItsLimit(double percent, bool classified, bool named)
    {
        var found = Given.Solution("formaldehyde solution", (decimal)percent);
        Assert.Equal(classified, found.Has("Skin Sens. 1"));
        Assert.Equal(named, found.StatementCodes.Contains("EUH208"));
        Assert.Equal(named, found.Sensitisers.Contains("formaldehyde solution"));
    }

    // Index no. 082-001-00-6 with Note 1: limits are of lead. Lead nitrate holds 207.2/331.2 = 0.6256 of it; 0.3 % Pb is 0.4795 % of the salt.
    [Theory]
    [InlineData(0.47, false)]
    [InlineData(0.48, true)]
    public void LeadNitrate_ReproductiveToxicity_CountsTheLead(double percent, bool expected) =>
        Assert.Equal(expected, Given.Solution("lead(II) nitrate", (decimal)percent).Has("Repr. 1A"));

    // Index no. 017-011-00-1.
    [Theory]
    [InlineData(4.99, false)]
    [InlineData(5, true)]
    public void SodiumHypochlorite_WithAcids_StatesTheGasFromItsLimit(double percent, bool expected) =>
        Assert.Equal(expected, Given.Solution("sodium hypochlorite", (decimal)percent).StatementCodes.Contains("EUH031"));

    private static void Check(string substance, double percent, string expected)
    {
        string[] classes = ["Ox. Liq.", "Skin ", "Eye ", "STOT SE"];
        var names = Given.Names(Given.Solution(substance, (decimal)percent)).Where(n => Array.Exists(classes, c => n.StartsWith(c, StringComparison.Ordinal)));
        Assert.Equal(expected, string.Join(", ", names));
    }
}
