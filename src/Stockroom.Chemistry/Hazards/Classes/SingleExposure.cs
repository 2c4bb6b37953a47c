using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>
/// Specific target organ toxicity by single exposure, CLP Annex I 3.8: categories 1 and 2 by cut-off (Table 3.8.3);
/// category 3 adds up, irritation of the airways and drowsiness each by itself (3.8.3.4.5).
/// </summary>
public sealed class SingleExposure : CutOffClass
{
    private readonly NarcoticOrIrritant[] _third;

    /// <summary>Each effect of category 3 is summed by itself.</summary>
    public SingleExposure() => _third = [new NarcoticOrIrritant(this, "H335"), new NarcoticOrIrritant(this, "H336")];

    public override string Name => "STOT, single exposure";

    public override IReadOnlyList<string> Categories { get; } = ["STOT SE 1", "STOT SE 2", NarcoticOrIrritant.Category];

    public override void Judge(Mixture mixture, Findings findings)
    {
        base.Judge(mixture, findings);
        foreach (var effect in _third)
            effect.Judge(mixture, findings);
    }

    public override void JudgePure(Ingredient substance, Mixture mixture, Findings findings)
    {
        base.JudgePure(substance, mixture, findings);
        foreach (var effect in _third)
            effect.Judge(mixture, findings);
    }

    protected override IEnumerable<Result> ResultsOf(Ingredient ingredient, Mixture mixture, Findings findings) =>
        base.ResultsOf(ingredient, mixture, findings).Where(r => r.Category != NarcoticOrIrritant.Category);

    private sealed class NarcoticOrIrritant(HazardClass owner, string statement) : AdditiveClass
    {
        public const string Category = "STOT SE 3";

        private const decimal RelevantShare = 1m;

        public override string Name => Category;

        public override IReadOnlyList<string> Categories { get; } = [Category];

        public override void Judge(Mixture mixture, Findings findings)
        {
            var shares = SharesTowards(Category, mixture, findings).Where(StillHolds).ToList();
            if (Reached(shares))
                findings.Add(Category, statement, null, () => Because(shares), shares.MaxBy(s => s.Quotient)!.Source);
        }

        protected override bool Concerns(Ingredient ingredient) =>
            ingredient.Profile.Index.CategoriesOf(owner).Count + ingredient.Profile.Index.LimitsOf(owner).Count > 0;

        protected override IEnumerable<string> Counting(Ingredient ingredient) =>
            ingredient.CategoriesOf(owner).Where(c => c.Category == Category && c.Statement == statement).Select(c => c.Category);

        protected override IEnumerable<ConcentrationLimit> Specific(Ingredient ingredient) =>
            ingredient.Profile.Index.LimitsOf(owner).Where(l => l.Category == Category && l.Statement == statement);

        // A limit that only says "below" begins where an ingredient begins to count.
        protected override (decimal From, Provenance Source)? LimitTowards(string target, Ingredient ingredient, Findings findings) =>
            Specific(ingredient).FirstOrDefault() is { } limit
                ? (limit.FromPercent > 0 ? limit.FromPercent : RelevantShare, limit.Provenance)
                : GenericTowards(target, Counting(ingredient), findings);

        // Two entries end the band above: there the substance corrodes instead.
        private bool StillHolds(Share share) =>
            share.Ingredient.Profile.Limits.FirstOrDefault(l => l.Category == Category && l.Statement == statement) is not { ToPercent: not null } band
            || share.Ingredient.Counted < band.FromPercent
            || band.Contains(share.Ingredient.Counted);
    }
}
