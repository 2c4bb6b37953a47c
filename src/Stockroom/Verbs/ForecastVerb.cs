using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment;
using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Intake;
using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.Ingress;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Desk;
using Stockroom.Plots;

namespace Stockroom.Verbs;

internal sealed class ForecastVerb : IVerb
{
    private readonly Argument<string?> _id = new("ID") { Arity = ArgumentArity.ZeroOrOne, Description = "Container id" };
    private readonly Option<DateOnly?> _on = new("--on") { Description = "What is left on that day; else today", HelpName = "DATE", CustomParser = Dates.Parse };
    private readonly Option<bool> _explain = new("--explain") { Description = "Every way out, also those that do not apply, with equation and source" };
    private readonly Option<string?> _content = new("--content") { Description = "With no book: the content", HelpName = "NAME" };
    private readonly Option<string?> _amount = new("--amount") { Description = "Such as \"20 mL\"", HelpName = "AMOUNT" };
    private readonly Option<string?> _vessel = new("--vessel") { Description = "See 'stockroom vessels'", HelpName = "VESSEL" };
    private readonly Option<string?> _closure = new("--closure") { Description = "See 'stockroom closures'", HelpName = "CLOSURE" };
    private readonly Option<string?> _cover = new("--cover") { Description = "Such as \"sulfuric acid 98%:10 mm\"", HelpName = "COVER[:DEPTH mm]" };
    private readonly Option<string?> _temperature = new("--temperature") { Description = "Mean temperature; else 20", HelpName = "C" };
    private readonly Option<string?> _swing = new("--swing") { Description = "Daily swing; else 0", HelpName = "K" };
    private readonly Option<string?> _seasons = new("--seasonal-swing") { Description = "From the coolest to the warmest month, each by its mean; else 0", HelpName = "K" };
    private readonly Option<string?> _days = new("--days") { Description = "What is left after so many days; else a year", HelpName = "N" };

    private readonly AirOptions _air = new();
    private readonly PlotOption _plot = new();

    public string Name => "forecast";

    public string Summary => "How fast a content leaves, by which ways, and what is left when";

    public Command Build(Surroundings around)
    {
        var book = BookAccess.BookOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary)
        {
            _id, _on, _explain, _content, _amount, _vessel, _closure, _cover, _temperature, _swing, _seasons, _days, book, json,
        };
        foreach (var option in _air.All.Concat(_plot.All))
            command.Add(option);
        command.SetAction(p =>
        {
            var asked = _plot.Asked(p, p.GetValue(json));
            var (name, situation, on, tare, damage) = p.GetValue(_content) is { } content
                ? WithoutBook(content, p, around)
                : OfContainer(p, book, around);
            var fit = FitText.Of(situation);
            var forecast = Forecast.Of(situation, PropertyFacts.Default, on);
            var decay = DecayForecast.Of(situation, PropertyFacts.Default, on);
            forecast = forecast with { Warnings = [.. fit.Warnings(situation), .. forecast.Warnings], Ingress = IngressForecasts.Of(situation, PropertyFacts.Default) };
            if (asked is not null)
                PlotOption.Draw(asked, around, ForecastCurve.Of($"{name}: what is left", situation, forecast, PropertyFacts.Default, around.Today, tare));
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w => Answer(w, situation, forecast, fit, decay, damage, p.GetValue(_explain)));
            else
                DamageWords.Mark(around.Out, damage);
            if (!p.GetValue(json) && asked != PlotOption.Terminal)
                Print(around.Out, name, forecast, decay, p.GetValue(_explain));
            if (p.GetValue(_explain) && !p.GetValue(json))
                ExplanationText.Print(around.Out, LossExplanation.Of(situation, PropertyFacts.Default));
            return ExitCodes.Done;
        });
        return command;
    }

    private static void Answer(Utf8JsonWriter json, Situation situation, Forecast forecast, FitText fit, DecayForecast? decay, IReadOnlyList<string> damage, bool explain)
    {
        json.Damage(damage);
        ForecastJson.WriteBody(json, forecast);
        fit.Write(json);
        WaysInText.Write(json, forecast.Ingress, decay);
        if (explain)
            ExplanationText.Write(json, LossExplanation.Of(situation, PropertyFacts.Default));
    }

    private sealed record Question(string Name, Situation Situation, DateOnly On, decimal? TareGrams, IReadOnlyList<string> Damage);

    private Question OfContainer(ParseResult p, Option<string?> book, Surroundings around)
    {
        if (p.GetValue(_id) is not { } typed)
            throw RefusedException.Words("a container is needed: forecast ID; or, with no book, forecast --content NAME --amount AMOUNT --vessel VESSEL --closure CLOSURE");
        using var open = OpenedStock.Open(p.GetValue(book), null, around);
        var holding = open.Stock.Of(BookAccess.Id(typed));
        if (holding.Situation is not { } situation)
            throw RefusedException.Input($"nothing can be forecast for {holding.Id} {holding.Content.Name}: {holding.SituationProblem}");
        return new Question(
            $"{holding.Id} {holding.Content.Name}", AirOf.With(situation, AirOf.Cabinet(holding)), p.GetValue(_on) ?? around.Today, holding.Container.TareGrams, [.. open.Book.Damage]);
    }

    private Question WithoutBook(string typed, ParseResult p, Surroundings around)
    {
        var content = ContentWords.Find(typed);
        if (content.IsUnknown)
            throw RefusedException.Words("nothing can be forecast for an unknown content");
        var today = around.Today;
        var days = (int)(Numbers.Plain(p.GetValue(_days), "a number of days") ?? 365m);
        if (days is < 0 or > 200_000)
            throw RefusedException.Words($"{days} days cannot be forecast; write 0 to 200000");
        var (coverName, depth) = CoverWords.Read(p.GetValue(_cover));
        var wares = WareCatalogue.Default;
        var situation = new Situation
        {
            Content = content,
            Amount = AmountOf(Needed(p, _amount, "--amount"), content),
            AmountOn = today,
            Vessel = wares.FindVessel(Needed(p, _vessel, "--vessel")) ?? throw Unknown("vessel", p.GetValue(_vessel)!, wares.Vessels.Select(v => v.Name)),
            Closure = wares.FindClosure(Needed(p, _closure, "--closure")) ?? throw Unknown("closure", p.GetValue(_closure)!, wares.Closures.Select(v => v.Name)),
            Cover = coverName is null ? null : CoverCalled(coverName, wares),
            CoverDepth = depth is { } mm ? Length.FromMillimetres((double)mm) : null,
            Temperature = Kelvin(p),
            DailySwing = new TemperatureChange((double)(Numbers.Swing(p.GetValue(_swing)) ?? 0m)),
            SeasonalSwing = new TemperatureChange((double)(Numbers.Swing(p.GetValue(_seasons)) ?? 0m)),
            Filled = today,
            InVesselSince = today,
        };
        if (content.State != MatterState.Gas && VolumeOf(situation) is { } volume && volume > situation.Vessel.Volume * 1.25)
            throw RefusedException.Words($"{p.GetValue(_amount)} of {content.Name} is about {volume.Millilitres:0} mL, more than one {situation.Vessel.Name} holds");
        if (situation.CoverVolume > situation.Vessel.Volume * 1.25)
            throw RefusedException.Words($"{situation.CoverDepth!.Value.Millimetres:0} mm of {situation.Cover!.Name} are about {situation.CoverVolume.Millilitres:0} mL, more than one {situation.Vessel.Name} holds");
        return new Question(typed, _air.Around(situation, p), p.GetValue(_on) ?? today.AddDays(days), null, []);
    }

    private static Cover CoverCalled(string words, WareCatalogue wares)
    {
        var name = SubstanceCatalogue.Default.Resolve(words).Content?.Name;
        return wares.FindCover(words) ?? (name is null ? null : wares.FindCover(name)) ?? throw Unknown("cover", words, wares.Covers.Select(c => c.Name));
    }

    private Temperature Kelvin(ParseResult p)
    {
        var celsius = (double)(Numbers.Plain(p.GetValue(_temperature), "a temperature in degrees Celsius") ?? 20m);
        return celsius is >= -80 and <= 200
            ? Temperature.FromCelsius(celsius)
            : throw RefusedException.Words($"a place at {celsius} C cannot be forecast; write -80 to 200");
    }

    private static Mass AmountOf(string words, Content content)
    {
        if (!TypedAmount.TryParse(words, out var amount, out var problem))
            throw RefusedException.Words(problem);
        var booked = AmountBooking.Of(amount, content, PropertyFacts.Default);
        return booked.Grams is { } grams ? Mass.FromGrams((double)grams) : throw RefusedException.Words(booked.Problem!);
    }

    private static Volume? VolumeOf(Situation s)
    {
        var density = s.Content.Pure is { } pure ? PropertyFacts.Default.Density(pure, Temperature.FromCelsius(20)).Value : s.Content.Density;
        return density is { } d ? new Volume(s.Amount.Kilograms / d.KilogramsPerCubicMetre) : null;
    }

    private static string Needed(ParseResult p, Option<string?> option, string name) =>
        p.GetValue(option) ?? throw RefusedException.Words($"a forecast with no book needs {name}");

    private static RefusedException Unknown(string sort, string words, IEnumerable<string> names)
    {
        var nearest = NearestNames.To(words, names);
        return RefusedException.Words($"'{words}' is not a {sort} that can be named; {(nearest.Count > 0 ? "nearest: " + string.Join("; ", nearest) : $"'stockroom {sort}s' lists them")}");
    }

    private static void Print(TextWriter to, string name, Forecast forecast, DecayForecast? decay, bool explain)
    {
        to.WriteLine($"{name}, on {forecast.On.Iso()}");
        to.WriteLine($"a year: {AYear(forecast)}");
        if (forecast.Weighed is { } weighed)
            to.WriteLine($"weigh-ins: {weighed.Because}");
        if (forecast.Remaining is { } left)
            to.WriteLine($"left: {Words.Grams(left.Expected)} ({Words.Grams(left.Low)} to {Words.Grams(left.High)})");
        foreach (var reach in forecast.Reaches)
            to.WriteLine($"{reach.Limit}: {Words.Day(reach.Expected)} ({Words.Day(reach.Low)} to {Words.Day(reach.High)})");
        if (forecast.Strength is { } strength)
            to.WriteLine($"strength: {strength.Left.Expected.Percent:0} % left ({strength.Left.Low.Percent:0} to {strength.Left.High.Percent:0} %), half {(strength.HalfExpected is null ? "" : "on ")}{Words.Day(strength.HalfExpected)}; {strength.Because}");
        if (forecast.Strength?.BelowUse is { } below)
            to.WriteLine($"{below.Limit}: {Words.Day(below.Expected)} ({Words.Day(below.Low)} to {Words.Day(below.High)})");
        if (forecast.Cover is { } cover)
            to.WriteLine($"cover: {cover.Because}");
        foreach (var path in forecast.Paths.Where(x => explain || x.Verdict == PathVerdict.Applies))
        {
            var rate = path.Verdict switch
            {
                PathVerdict.Applies when path.Role is PathRole.Leak or PathRole.Direct => $"{Words.Band(path.Rate.Select(r => r.GramsPerYear), "g")} a year, {path.Share.Percent:0} %; ",
                PathVerdict.Unknown => "not known; ",
                PathVerdict.Absent => "does not apply; ",
                _ => "",
            };
            to.WriteLine($"{path.Path}: {rate}{path.Because}{(path.Source is { } source ? $" [{source}]" : "")}");
        }

        foreach (var line in WaysInText.Lines(forecast.Ingress, decay, explain).Concat(AirJson.Lines(forecast.Air)))
            to.WriteLine(line);
        foreach (var warning in forecast.Warnings)
            to.WriteLine($"note: {warning}");
    }

    private static string AYear(Forecast forecast)
    {
        if (forecast.LossRate is not { } rate)
            return "not known";
        var figure = rate.High.GramsPerYear < 1e-6 && forecast.IsComplete ? "nothing leaves" : Words.Band(rate.Select(r => r.GramsPerYear), "g");
        return forecast.IsComplete ? figure : figure + ", and more by ways that cannot be computed";
    }
}
