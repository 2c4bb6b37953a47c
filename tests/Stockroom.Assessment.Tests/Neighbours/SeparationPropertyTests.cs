using CsCheck;
using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>What must hold of every pair, whatever the tables say.</summary>
public sealed class SeparationPropertyTests
{
    private static readonly ContactProfile[] Everything =
        [.. SubstanceCatalogue.Default.Substances.Select(s => ContactProfile.Of(Content.Of(s), []))
            .Concat(SubstanceCatalogue.Default.Preparations.Select(p => ContactProfile.Of(p, [])))];

    // One of each set of families in each state of matter, and every fifth of the rest: pairs of everything would take minutes.
    private static readonly ContactProfile[] Representatives =
        [.. Everything
            .GroupBy(p => (p.Content.State, string.Join(',', p.Families.Select(f => f.Family.Key).Order())))
            .SelectMany(g => g.Where((_, i) => i % 5 == 0))];

    private static readonly Gen<ContactProfile> AnyProfile = Gen.Int[0, Everything.Length - 1].Select(i => Everything[i]);

    [Fact]
    public void Judge_EitherWayRound_SaysTheSame()
    {
        var forward = new PairJudge();
        var backward = new PairJudge();
        Gen.Select(AnyProfile, AnyProfile).Sample((a, b) =>
        {
            var ab = forward.Judge(a, b);
            var ba = backward.Judge(b, a);
            Assert.Equal(ab.Separation, ba.Separation);
            Assert.Equal(ab.WithoutAir, ba.WithoutAir);
            Assert.Equal(ab.Vapour, ba.Vapour);
            Assert.Equal(ab.NeverAbove.Order(), ba.NeverAbove.Order());
            Assert.Equal(ab.Reasons.Select(r => (r.Cause, r.FamilyA, r.FamilyB)), ba.Reasons.Select(r => (r.Cause, r.FamilyB, r.FamilyA)));
            Assert.Equal(ab.Reasons.Where(r => r.ByAir).Select(r => r.ABreathes), ba.Reasons.Where(r => r.ByAir).Select(r => !r.ABreathes));
        }, iter: 20_000, threads: 1);
    }

    [Fact]
    public void Judge_FromTheMemoryOfTheJudge_SaysTheSameAsAFreshOne()
    {
        var judge = new PairJudge();
        Gen.Select(AnyProfile, AnyProfile).Sample((a, b) =>
        {
            _ = judge.Judge(b, a);
            Assert.Equal(new PairJudge().Judge(a, b).Reasons, judge.Judge(a, b).Reasons, ReasonsAlike);
        }, iter: 3_000, threads: 1);
    }

    [Fact]
    public void Judge_OneFamilyMore_NeverLoosens()
    {
        var families = ContactFacts.Default.Families.Select(f => f.Key).ToArray();
        Gen.Select(AnyProfile, AnyProfile, Gen.Int[0, families.Length - 1].Select(i => families[i])).Sample((a, b, family) =>
        {
            var judge = new PairJudge();
            Assert.True(judge.Judge(a.With(family, "supposed"), b).Separation >= judge.Judge(a, b).Separation, $"{a.Name} with {family} beside {b.Name}");
        }, iter: 20_000, threads: 1);
    }

    [Fact]
    public void Judge_SameKnownContentTwice_IsNoConflictUnlessARuleSaysSo()
    {
        var judge = new PairJudge();
        var atOdds = Everything.Where(p => judge.Judge(p, p).Separation != Separation.SameTray).ToList();
        Assert.NotEmpty(atOdds);
        Assert.All(atOdds, p => Assert.True(p.Carries("explosive"), p.Name));
    }

    // The metals are left out: strong nitric acid leaves some of them alone.
    [Theory]
    [InlineData("hydrochloric acid", 37)]
    [InlineData("sulfuric acid", 98)]
    [InlineData("nitric acid", 98)]
    [InlineData("phosphoric acid", 85)]
    [InlineData("perchloric acid", 72)]
    [InlineData("hydrofluoric acid", 48)]
    [InlineData("acetic acid", 99.8)]
    [InlineData("formic acid", 98)]
    [InlineData("sodium hydroxide", 60)]
    [InlineData("potassium hydroxide", 60)]
    [InlineData("ammonia solution", 35)]
    [InlineData("hydrogen peroxide", 90)]
    [InlineData("sodium hypochlorite", 15)]
    [InlineData("potassium permanganate", 60)]
    [InlineData("sodium chlorate", 60)]
    [InlineData("potassium dichromate", 60)]
    [InlineData("hydrobromic acid", 62)]
    [InlineData("trifluoroacetic acid", 99)]
    [InlineData("chromium trioxide", 60)]
    [InlineData("sodium nitrite", 50)]
    [InlineData("ammonium nitrate", 70)]
    [InlineData("calcium hypochlorite", 75)]
    [InlineData("sodium persulfate", 60)]
    [InlineData("sodium perchlorate", 80)]
    public void Judge_StrongerSolution_IsNeverMilderToOrganicsAlkaliOrCyanide(string solute, double strongest)
    {
        string[] families =
        [
            "flammable-liquid", "flammable-solid", "flammable-gas", "combustible", "alcohol", "carbonyl", "amine", "nitro", "monomer", "polar-aprotic",
            "halocarbon", "acid-anhydride", "isocyanate", "organic-acid", "organic-peroxide", "alkylating-agent", "strong-alkali", "ammonia", "cyanide",
            "complex-cyanide",
        ];
        var others = Representatives.Where(p => families.Any(p.Carries) && p.Content.PercentOf(solute) == 0).ToList();
        Assert.True(others.Count > 100);
        double[] strengths = [0.05, 0.1, 0.5, 1, 2, 3, 5, 7, 8, 10, 15, 20, 25, 30, 36, 40, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 98, 99.8];
        var judge = new PairJudge();
        var solutions = strengths.Where(s => s <= strongest).Select(s => (Strength: s, Profile: Profiles.Of(FormattableString.Invariant($"{solute} {s}%")))).ToList();
        foreach (var other in others)
        {
            var before = Separation.SameTray;
            foreach (var (strength, profile) in solutions)
            {
                var now = judge.Judge(profile, other).Separation;
                Assert.True(now >= before, $"{solute} {strength} % beside {other.Name}: {SeparationWords.Of(now)} after {SeparationWords.Of(before)}");
                before = now;
            }
        }
    }

    [Theory]
    [InlineData(MatterState.Solid)]
    [InlineData(MatterState.Liquid)]
    [InlineData(MatterState.Gas)]
    public void Judge_Orphan_IsNeverMilderThanAnythingItCouldBe(MatterState state)
    {
        // Left out: what eats an unlabelled bottle, what nobody mistakes, and explosives, which hands-off rules cover.
        string[] apart = ["halogen-fluoride", "explosive", "mercury", "white-phosphorus"];
        var judge = new PairJudge();
        var orphan = Profiles.Orphan(state);
        var anything = Profiles.Orphan(MatterState.Unknown);
        var could = Representatives.Where(p => p.Content.State == state && !apart.Any(p.Carries)).ToList();
        foreach (var other in Representatives)
        {
            var worst = could.MaxBy(c => c.Name == other.Name ? Separation.SameTray : judge.Judge(c, other).Separation)!;
            var found = judge.Judge(orphan, other).Separation;
            Assert.True(found >= judge.Judge(worst, other).Separation || worst.Name == other.Name, $"orphan beside {other.Name} is milder than {worst.Name}");
            Assert.True(judge.Judge(anything, other).Separation >= found);
        }
    }

    private static bool ReasonsAlike(IReadOnlyList<PairReason> a, IReadOnlyList<PairReason> b) =>
        a.Select(r => (r.Order, r.FamilyA, r.FamilyB, r.ABreathes)).SequenceEqual(b.Select(r => (r.Order, r.FamilyA, r.FamilyB, r.ABreathes)));
}
