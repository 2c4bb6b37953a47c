using System.Globalization;
using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Ledgers;
using Stockroom.Chemistry.Properties;
using Stockroom.Verbs;
using Stockroom.Views;

namespace Stockroom.Desk;

/// <summary>Writes the card of one container: what, how much, where, loss, hazards, neighbours, history.</summary>
internal static class CardWriter
{
    public static Card Write(Holding holding, StockAssessment stock, Ledger ledger)
    {
        var sections = new List<CardSection>();
        Add(sections, "Wrong and due", Wrong(holding, stock));
        Add(sections, "What", What(holding));
        Add(sections, "Where", Where(holding));
        Add(sections, "How fast it leaves", Loss(holding));
        Add(sections, "Vessel", Vessel(holding));
        Add(sections, "Hazards", Hazards(holding));
        Add(sections, "Neighbours", Neighbours(holding));
        Add(sections, "Attachments", holding.Container.Attachments.Select((a, i) =>
            new CardLine($"{i + 1}", $"{a.Name} ({a.MediaType}, {a.Bytes} bytes), {a.On.Iso()}{(a.Note is { } note ? $", {note}" : "")}")));
        Add(sections, "History", holding.Container.History.Select(n => ledger.Entries[(int)n - 1])
            .Select(e => new CardLine(e.HappenedOn.Iso(), $"{EntryWords.Of(e)} (entry {e.Number})")));
        return new Card($"{holding.Id}  {(holding.Content.IsUnknown ? $"Contents unknown: {holding.Content.Name}" : holding.Content.Name)}", sections);
    }

    private static void Add(List<CardSection> sections, string heading, IEnumerable<CardLine> lines)
    {
        var list = lines.ToList();
        if (list.Count > 0)
            sections.Add(new CardSection(heading, list));
    }

    private static IEnumerable<CardLine> Wrong(Holding holding, StockAssessment stock)
    {
        foreach (var wrong in stock.Wrong.Where(w => w.Containers.Contains(holding.Id)))
        {
            var weight = wrong.Severity == Severity.Danger ? Attention.Danger : Attention.Warning;
            yield return new CardLine(wrong.Severity == Severity.Danger ? "danger" : "warning", wrong.What, weight);
            yield return new CardLine("because", wrong.Because);
            yield return new CardLine("source", wrong.Source);
        }

        foreach (var due in stock.Due.Where(d => d.Container == holding.Id))
        {
            yield return new CardLine("due", $"{due.What}, since {due.Since.Iso()}", Attention.Notice);
            yield return new CardLine("because", due.Because);
            yield return new CardLine("source", due.Source);
        }
    }

    private static IEnumerable<CardLine> What(Holding holding)
    {
        var container = holding.Container;
        yield return new CardLine("content", holding.Content.Name);
        if (holding.Content.Pure is { Formula: { } formula } pure)
            yield return new CardLine("formula", $"{formula}{(pure.Cas is { } cas ? $", CAS {cas}" : "")}");
        else if (holding.Content.Parts.Count > 1)
            yield return new CardLine("made of", string.Join(", ", holding.Content.Parts.Select(p => $"{p.Substance} {p.Percent.ToString("0.####", CultureInfo.InvariantCulture)} %")));
        foreach (var note in holding.Content.Notes)
            yield return new CardLine("note", note);
        yield return new CardLine("net", $"{Words.Grams(container.NetGrams)} booked{(container.Quantity is { } typed ? $" (typed as {typed})" : "")}");
        if (container.Density is { } density)
            yield return new CardLine("density", $"{density.GramsPerMillilitre.ToString("0.####", CultureInfo.InvariantCulture)} g/mL, {density.Source}");
        if (container.Cover is { } cover)
            yield return new CardLine("cover", $"{cover.Name}{(cover.DepthMillimetres is { } mm ? $", {mm:0.#} mm on {cover.DepthOn.Iso()}" : "")}");
        yield return new CardLine("lot", $"{Book.Containers.Lot.WordOf(container.Lot.How)}{(container.Lot.Origin is { } origin ? $", {origin}" : "")}, received {container.ReceivedOn.Iso()}");
        if (container.OpenedOn is { } opened)
            yield return new CardLine("opened", opened.Iso());
        if (container.SealedOn is { } closed)
            yield return new CardLine("sealed", $"{closed.Iso()}{(container.SealedAtCelsius is { } at ? $", at {at:0.##} degrees C" : "")}{(container.SealedAtBar is { } bar ? $", under {bar:0.###} bar" : "")}");
        if (container.HandsOff is { } reason)
            yield return new CardLine("hands off", reason, Attention.Danger);
        if (container.Pinned is { } pinned)
            yield return new CardLine("pinned to its place", pinned);
        if (container.LeastPercent is { } least)
            yield return new CardLine("least strength", $"{least:0.####} %, set by the keeper");
    }

    private static IEnumerable<CardLine> Where(Holding holding)
    {
        yield return new CardLine("place", holding.PlaceWords);
        if (holding.Container.Packing is { } packing)
            yield return new CardLine("packing", packing);
    }

    private static IEnumerable<CardLine> Loss(Holding holding)
    {
        if (holding.Forecast is not { } forecast)
        {
            yield return new CardLine("forecast", $"none: {holding.SituationProblem}");
            yield break;
        }

        yield return new CardLine("a year", Words.Loss(holding));
        if (forecast.Remaining is { } left)
            yield return new CardLine("left today", $"{Words.Grams(left.Expected)} ({Words.Grams(left.Low)} to {Words.Grams(left.High)})");
        foreach (var reach in forecast.Reaches.Where(r => r.Low is not null))
            yield return new CardLine(reach.Limit, $"{Words.Day(reach.Expected)} ({Words.Day(reach.Low)} to {Words.Day(reach.High)})");
        if (forecast.Strength is { } strength)
            yield return new CardLine("strength", $"{strength.Left.Expected.Percent:0} % of it left ({strength.Left.Low.Percent:0} to {strength.Left.High.Percent:0} %); {strength.Because}");
        if (forecast.Strength?.BelowUse is { Low: not null } below)
            yield return new CardLine(below.Limit, $"{Words.Day(below.Expected)} ({Words.Day(below.Low)} to {Words.Day(below.High)})");
        foreach (var path in forecast.Paths.Where(p => p.Share.Value > 0.001))
            yield return new CardLine(path.Path, $"{path.Share.Percent:0} %; {path.Because}{(path.Source is { } source ? $" [{source}]" : "")}");
        if (holding.Seal is { } seal)
            yield return new CardLine("weigh-ins", seal.Because);
        foreach (var warning in forecast.Warnings)
            yield return new CardLine("note", warning);
    }

    private static IEnumerable<CardLine> Vessel(Holding holding)
    {
        if (holding.Container.Vessel is { } vessel)
            yield return new CardLine("vessel", vessel);
        if (holding.Container.Closure is { } closure)
            yield return new CardLine("closure", closure);
        foreach (var wetted in holding.Wetted.Where(w => w.Finding.Rating is not ResistanceRating.Good))
            yield return new CardLine(wetted.Part, $"{Rating(wetted.Finding.Rating)}: {wetted.Finding.Because}", wetted.Finding.Rating == ResistanceRating.Poor ? Attention.Warning : Attention.None);
        if (holding.Ampoule is { } ampoule)
            yield return new CardLine("ampoule", $"{Verdict(ampoule.Verdict)}: {string.Join("; ", ampoule.Because)}");
    }

    private static IEnumerable<CardLine> Hazards(Holding holding)
    {
        var label = holding.Label;
        if (label.SignalWord is { } signal)
            yield return new CardLine("signal word", signal, Attention.Notice);
        if (label.Pictograms.Count > 0)
            yield return new CardLine("pictograms", string.Join(", ", label.Pictograms));
        foreach (var statement in label.HazardStatements.Concat(label.Supplemental))
            yield return new CardLine(statement.Code, statement.Text);
        foreach (var word in label.WordsBeside)
            yield return new CardLine("beside", word);
        foreach (var note in holding.Classification.Notes)
            yield return new CardLine("note", note);
    }

    private static IEnumerable<CardLine> Neighbours(Holding holding)
    {
        if (holding.Profile.Families.Count > 0)
            yield return new CardLine("counts as", string.Join(", ", holding.Profile.Families.Select(f => f.Family.PlainName)));
        foreach (var note in holding.Profile.Notes)
            yield return new CardLine("note", note);
    }

    private static string Rating(ResistanceRating? rating) => rating switch
    {
        ResistanceRating.Poor => "poor",
        ResistanceRating.Limited => "limited",
        ResistanceRating.Good => "good",
        _ => "unknown",
    };

    private static string Verdict(Assessment.Vessels.FillVerdict? verdict) => verdict switch
    {
        null => "not known",
        Assessment.Vessels.FillVerdict.Sound => "sound",
        Assessment.Vessels.FillVerdict.Marginal => "marginal",
        Assessment.Vessels.FillVerdict.NeverSeal => "never seal",
        _ => "unsafe",
    };
}
