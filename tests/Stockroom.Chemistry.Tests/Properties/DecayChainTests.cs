using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>Chains of decay against the closed solutions and the known equilibria.</summary>
public sealed class DecayChainTests
{
    private static readonly PropertyFacts Facts = PropertyFacts.Default;

    private static DecayChain Chain(string nuclide) => Facts.DecayChain(Facts.Nuclide(nuclide)!);

    private static double Becquerels(DecayChain chain, string member, Span elapsed) =>
        chain.After(elapsed).Single(m => m.Nuclide.Name == member).ActivityFrom(new AmountOfSubstance(1)).Becquerels;

    // Bateman 1910, two members: N2 = N1(0) l1/(l2 - l1) (e^-l1 t - e^-l2 t).
    [Theory]
    [InlineData("Ra-226", "Rn-222", 1)]
    [InlineData("Ra-226", "Rn-222", 3.8)]
    [InlineData("Ra-226", "Rn-222", 30)]
    [InlineData("Sr-90", "Y-90", 2)]
    [InlineData("Sr-90", "Y-90", 10000)]
    [InlineData("Po-218", "Pb-214", 0.01)]
    public void Chain_FirstDaughter_FollowsTheClosedSolution(string parent, string daughter, double days)
    {
        var (a, b) = (Facts.Nuclide(parent)!.DecayConstant.PerSecond, Facts.Nuclide(daughter)!.DecayConstant.PerSecond);
        var t = days * 86400;
        var share = parent == "Po-218" ? 0.9998 : 1;
        var closed = share * a / (b - a) * (Math.Exp(-a * t) - Math.Exp(-b * t));
        var actual = Chain(parent).After(Span.FromDays(days)).Single(m => m.Nuclide.Name == daughter).Atoms.Value;
        Assert.Equal(1, actual / closed, 1e-6);
    }

    // Bateman 1910, three members with thorium: radium-228 and thorium-228 grow into thorium-232.
    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(60)]
    public void Chain_ThirdMember_FollowsTheClosedSolution(double years)
    {
        // The 6 hours of actinium-228 between are left out of the closed form: they shift it by less than a part in a thousand after a year.
        double[] l = [Facts.Nuclide("Th-232")!.DecayConstant.PerSecond, Facts.Nuclide("Ra-228")!.DecayConstant.PerSecond, Facts.Nuclide("Th-228")!.DecayConstant.PerSecond];
        var t = Span.FromYears(years);
        var sum = l.Select((li, i) => Math.Exp(-li * t.Seconds) / l.Where((_, j) => j != i).Aggregate(1.0, (p, lj) => p * (lj - li))).Sum();
        var actual = Chain("Th-232").After(t).Single(m => m.Nuclide.Name == "Th-228").Atoms.Value;
        Assert.Equal(1, actual / (l[0] * l[1] * sum), 2e-3);
    }

    // Common knowledge of the trade: radon stands in equilibrium with radium after a month, its short daughters with it.
    [Theory]
    [InlineData("Rn-222")]
    [InlineData("Po-218")]
    [InlineData("Po-214")]
    public void Chain_RadiumAfterTwoMonths_HoldsItsDaughtersInEquilibrium(string daughter)
    {
        var chain = Chain("Ra-226");
        Assert.Equal(1, Becquerels(chain, daughter, Span.FromDays(60)) / Becquerels(chain, "Ra-226", Span.FromDays(60)), 1e-3);
    }

    // Lead-210 grows in with 22.2 years: 1 - 2^(-t/22.2) of equilibrium.
    [Fact]
    public void Chain_RadiumAfterFiftyYears_HoldsThreeQuartersOfItsLead()
    {
        var chain = Chain("Ra-226");
        Assert.Equal(1 - Math.Pow(2, -50 / 22.2), Becquerels(chain, "Pb-210", Span.FromYears(50)) / Becquerels(chain, "Ra-226", Span.FromYears(50)), 0.01);
    }

    // Thorium-232 to lead-208: six alphas in equilibrium; after a thousand years the chain stands in it.
    [Fact]
    public void Alphas_OldThorium_AreSixForEachDecay()
    {
        var chain = Chain("Th-232");
        var (from, to) = (Span.FromYears(1000), Span.FromYears(1001));
        var decays = Facts.Nuclide("Th-232")!.DecayConstant.PerSecond * Span.SecondsPerYear;
        Assert.Equal(6, (chain.AlphasUntil(to).Value - chain.AlphasUntil(from).Value) / decays, 0.01);
    }

    [Fact]
    public void Chain_AtTheStart_IsTheParentAlone()
    {
        var members = Chain("U-238").After(default);
        Assert.Equal(1, members[0].Atoms.Value);
        Assert.All(members.Skip(1), m => Assert.Equal(0, m.Atoms.Value));
        Assert.Equal(0, Chain("U-238").AlphasUntil(default).Value);
    }

    [Theory]
    [InlineData("U-238", 1)]
    [InlineData("U-235", 300)]
    [InlineData("Np-237", 50)]
    [InlineData("Bk-249", 5)]
    public void Chain_HalvedInTime_GivesTheSame(string nuclide, double years)
    {
        // Atoms are never made: all members together are never more than the parent was.
        var sum = Chain(nuclide).After(Span.FromYears(years)).Sum(m => m.Atoms.Value);
        Assert.InRange(sum, 0, 1 + 1e-9);
        Assert.Equal(Math.Exp(-Facts.Nuclide(nuclide)!.DecayConstant.PerSecond * years * Span.SecondsPerYear), Chain(nuclide).After(Span.FromYears(years))[0].Atoms.Value, 1e-9);
    }
}
