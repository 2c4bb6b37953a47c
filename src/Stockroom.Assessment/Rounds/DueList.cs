using System.Globalization;
using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Labels;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Rounds;

/// <summary>What is due over the whole stock: looks and tests by rule, covers that run low, strength that is spent.</summary>
internal static class DueList
{
    private static readonly Fraction Half = new(0.5);

    public static IEnumerable<DueItem> Of(StockAssessment stock)
    {
        foreach (var holding in stock.Holdings)
        {
            var byRule = DueChecks.For(holding.Container, holding.Content, stock.Facts.Rounds, stock.Today).ToList();
            foreach (var item in byRule)
                yield return item;
            if (holding.Container.HandsOff is not null)
                continue;
            if (CoverRunsLow(holding, stock) is { } low && !byRule.Exists(d => d.What == low.What))
                yield return low;
            if (StrengthIsSpent(holding, stock.Today) is { } spent)
                yield return spent;
            if (LabelDue.Of(holding, stock.Facts) is { } label)
                yield return label;
        }

        foreach (var review in Reviews(stock))
            yield return review;
    }

    // The look that every container gets is one walk along a cabinet, not one task a bottle.
    private static IEnumerable<DueItem> Reviews(StockAssessment stock)
    {
        var rule = stock.Facts.Rounds.Review;
        var late = stock.Holdings
            .Where(h => h.Container.HandsOff is null)
            .Select(h => (Holding: h, DueChecks.DayOf(rule, h.Container)!.Value.Day))
            .Where(x => x.Day <= stock.Today);
        foreach (var cabinet in late.GroupBy(x => x.Holding.Stand.Cabinet ?? x.Holding.Stand.Room).OrderBy(g => g.Key?.Id, StringComparer.Ordinal))
        {
            var oldest = cabinet.MinBy(x => (x.Day, x.Holding.Id))!;
            var ids = string.Join(", ", cabinet.Select(x => x.Holding.Id.ToString()).Order(StringComparer.Ordinal));
            yield return new DueItem(
                oldest.Holding.Id,
                $"{rule.What} in {cabinet.Key?.Name ?? "no place"}",
                oldest.Day,
                $"{rule.Because}; not looked at for {rule.RepeatDays} days: {ids}. {char.ToUpperInvariant(rule.AtLimit[0])}{rule.AtLimit[1..]}",
                rule.Provenance.ToString());
        }
    }

    private static DueItem? CoverRunsLow(Holding holding, StockAssessment stock)
    {
        if (holding.Situation is not { HasLiquidCover: true } situation || situation.Cover is not { } cover)
            return null;
        var minimum = stock.Facts.Rounds.CoverMinimums.FirstOrDefault(m => m.Cover == cover.Name && m.Subject == holding.Content.Pure?.Name);
        if (minimum is null)
            return null;
        var least = Length.FromMillimetres((double)minimum.MinimumMillimetres);
        if (CoverForecast.Of(situation, stock.Facts.Properties, stock.Today, least) is not { Verdict: CoverVerdict.Low } forecast)
            return null;
        return new DueItem(
            holding.Id,
            $"top up the {cover.Name} cover",
            forecast.FailsExpected is { } day && day < stock.Today ? day : stock.Today,
            $"{forecast.Because}: {minimum.Because}",
            $"{minimum.Provenance}; {forecast.Source}");
    }

    // Below what the keeper set for it, where that was; else past half.
    private static DueItem? StrengthIsSpent(Holding holding, DateOnly today)
    {
        if (holding.Forecast?.Strength is not { } strength)
            return null;
        var own = holding.Situation?.LeastStrength is null ? null : strength.BelowUse;
        if (own is null ? strength.Left.Expected > Half : !(own.Expected <= today))
            return null;
        var (since, past) = own?.Expected is { } day ? (day, own.Limit) : (strength.HalfExpected ?? strength.Since, "past half of its strength");
        return new DueItem(
            holding.Id,
            "replace it, or assay it",
            since,
            string.Create(CultureInfo.InvariantCulture, $"{past}: about {strength.Left.Expected.Percent:0} % left ({strength.Left.Low.Percent:0} to {strength.Left.High.Percent:0} %); {strength.Because}"),
            strength.Source.ToString());
    }
}
