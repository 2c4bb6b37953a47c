using Stockroom.Assessment.Neighbours.ClassTables;

namespace Stockroom.Assessment.Neighbours;

/// <summary>
/// Judges pairs of contents by the contact rules and, where one was chosen, by a class table. Each distinct pair is judged once and kept, so that a store of many
/// containers costs what its different contents cost. Not for use by several threads at once.
/// </summary>
public sealed class PairJudge(ClassTable table = ClassTable.None)
{
    private readonly Dictionary<string, int> _interned = new(StringComparer.Ordinal);
    private readonly Dictionary<ContactProfile, int> _seen = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<(int, int), PairJudgement> _judged = [];

    /// <summary>The class table that is laid over the contact rules.</summary>
    public ClassTable Table => table;

    /// <summary>What two contents are to each other. Symmetric but for the order in which the two are named.</summary>
    public PairJudgement Judge(ContactProfile a, ContactProfile b) => Judge(a, Intern(a), b, Intern(b));

    /// <summary>A number for a profile: equal for two that every judgement treats alike.</summary>
    internal int Intern(ContactProfile profile)
    {
        if (_seen.TryGetValue(profile, out var index))
            return index;
        var identity = table == ClassTable.None ? profile.Identity : $"{profile.Identity}|{profile.RowsIn(table).Because}";
        if (!_interned.TryGetValue(identity, out index))
            _interned[identity] = index = _interned.Count;
        _seen[profile] = index;
        return index;
    }

    /// <summary>False where nothing can stand between the two; true where something may.</summary>
    internal bool MayConflict(ContactProfile a, ContactProfile b) =>
        a.MayConflictWith(b) || (table != ClassTable.None && a.RowsIn(table).MayConflictWith(b.RowsIn(table)));

    /// <summary>True where a rule or a cell asks for more than a cabinet of its own.</summary>
    internal bool MustStandFarApart(ContactProfile a, ContactProfile b) =>
        a.MustStandFarFrom(b) || (table != ClassTable.None && a.RowsIn(table).MustStandFarFrom(b.RowsIn(table)));

    internal PairJudgement Judge(ContactProfile a, int ia, ContactProfile b, int ib)
    {
        if (_judged.TryGetValue((ia, ib), out var judged))
            return judged;

        // Always from the same side, so that two rules of equal weight are told in the same way whoever asks first.
        judged = ia == ib || string.CompareOrdinal(a.Identity, b.Identity) < 0 ? JudgeNew(a, b) : Judge(b, ib, a, ia).Flipped();
        _judged[(ia, ib)] = judged;
        return judged;
    }

    private PairJudgement JudgeNew(ContactProfile a, ContactProfile b)
    {
        if (!ReferenceEquals(a.Facts, b.Facts))
            throw new ArgumentException("the two profiles rest on different facts", nameof(b));
        var reasons = Strictest(RulesBetween(a, b));
        var withoutAir = reasons.Where(r => !r.ByAir).Select(r => r.Separation).DefaultIfEmpty().Max();
        var byContact = reasons.Select(r => r.Separation).DefaultIfEmpty().Max();
        var same = a.IsSameKnownContentAs(b);
        var byClass = table == ClassTable.None || same ? null : ClassLayer.Judge(table, a, b, withoutAir >= Separation.OwnCabinet);
        if (byClass?.Separation > withoutAir)
            withoutAir = byClass.Separation.Value;
        var aNever = NeverAbove(a, b, withoutAir, same);
        var bNever = NeverAbove(b, a, withoutAir, same);
        return new PairJudgement
        {
            A = a.Name,
            B = b.Name,
            Separation = byContact > withoutAir ? byContact : withoutAir,
            ContactSeparation = byContact,
            ClassTable = byClass,
            ClassReason = ClassReasonOf(byClass),
            WithoutAir = withoutAir,
            Vapour = reasons.Any(r => r.ByAir),
            ANeverAbove = aNever,
            BNeverAbove = bNever,
            NeverAbove = [.. Names(a, aNever).Concat(Names(b, bNever)).Distinct(StringComparer.Ordinal)],
            Reasons = reasons,
            Notes = [.. a.Notes.Concat(b.Notes).Distinct(StringComparer.Ordinal)],
        };
    }

    private static PairReason? ClassReasonOf(ClassJudgement? judgement) => judgement is not { Separation: > Separation.SameTray }
        ? null
        : new PairReason(
            $"class {judgement.RowA ?? judgement.ClassA}", $"class {judgement.RowB ?? judgement.ClassB}", judgement.Separation.Value, ByAir: false, ABreathes: false,
            judgement.Would, null, null, $"classes {judgement.RowA ?? judgement.ClassA} and {judgement.RowB ?? judgement.ClassB} of the {ClassTableWords.Title(judgement.Table)}: {judgement.Meaning}",
            new Chemistry.Tables.Provenance(judgement.Source ?? judgement.Clause, $"{judgement.Clause}, by analogy to shelves", "2024"), judgement.Verified, int.MaxValue);

    private static IEnumerable<PairReason> RulesBetween(ContactProfile a, ContactProfile b)
    {
        var same = a.IsSameKnownContentAs(b);
        foreach (var termA in a.Terms)
        {
            foreach (var termB in b.Terms)
            {
                foreach (var rule in a.Facts.Between(termA, termB))
                {
                    var straight = rule.A.Index == termA;
                    if (!same || rule.A.Index == rule.B.Index)
                        yield return Reason(rule, straight);
                }
            }
        }
    }

    private static PairReason Reason(ContactRule rule, bool straight) => new(
        straight ? rule.A.PlainName : rule.B.PlainName,
        straight ? rule.B.PlainName : rule.A.PlainName,
        rule.Separation,
        rule.ByAir,
        rule.ByAir && straight,
        rule.Would,
        rule.Product,
        rule.OnlyIf,
        rule.Cause,
        rule.Provenance,
        rule.Verified,
        rule.Order);

    // Of several rules with one cause the strictest is kept: it says what the others say.
    private static List<PairReason> Strictest(IEnumerable<PairReason> reasons) =>
        [.. reasons
            .GroupBy(r => (r.Cause, r.ByAir))
            .Select(g => g.OrderByDescending(r => r.Separation).ThenBy(Worst).ThenByDescending(r => r.Verified).ThenBy(r => r.Order).First())
            .OrderByDescending(r => r.Separation)
            .ThenBy(r => r.Urgency)
            .ThenBy(r => r.OnlyIf is null ? 0 : 1)
            .ThenBy(Worst)
            .ThenBy(r => r.Order)];

    private static int Worst(PairReason reason) => reason.Would.Min(Consequences.Rank);

    // What runs may not stand over what it must not meet.
    private static bool NeverAbove(ContactProfile upper, ContactProfile lower, Separation byContact, bool same)
    {
        if (same || !upper.IsLiquid)
            return false;
        return byContact >= Separation.OwnTray
            || (upper.IsCorrosiveLiquid && lower.MustNotStandUnderCorrosives);
    }

    private static IEnumerable<string> Names(ContactProfile profile, bool never) => never ? [profile.Name] : [];
}
