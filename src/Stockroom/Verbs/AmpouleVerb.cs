using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Desk;

namespace Stockroom.Verbs;

internal sealed class AmpouleVerb : IVerb
{
    private const string Defers = "These are figures, not permission: how a tube is drawn, sealed, annealed and shielded is glassblowing practice, and decides more than they do.";

    private readonly Option<string?> _content = new("--content") { Description = "What is to be sealed", HelpName = "NAME" };
    private readonly Option<string?> _bore = new("--bore") { Description = "Inside diameter", HelpName = "MM" };
    private readonly Option<string?> _wall = new("--wall") { Description = "Wall", HelpName = "MM" };
    private readonly Option<string?> _length = new("--length") { Description = "Inside length as drawn off", HelpName = "MM" };
    private readonly Option<string?> _fill = new("--fill") { Description = "Such as \"6 g\", \"2 mL\" or 80% of the tube", HelpName = "FILL" };
    private readonly Option<string?> _glass = new("--glass") { Description = "borosilicate (else this), soda-lime or silica", HelpName = "GLASS" };
    private readonly Option<string?> _gas = new("--gas") { Description = "What was over the content: air (else this), argon, nitrogen or vacuum", HelpName = "GAS" };
    private readonly Option<string?> _sealedAt = new("--sealed-at") { Description = "Temperature of that gas when the glass closed; else 20", HelpName = "C" };
    private readonly Option<string?> _sealedPressure = new("--sealed-pressure") { Description = "Its absolute pressure then; else 1.013, 0 for a vacuum", HelpName = "BAR" };
    private readonly Option<string?> _at = new("--at") { Description = "Usual temperature, at which it is filled; else 20", HelpName = "C" };
    private readonly Option<string?> _max = new("--max") { Description = "The warmest it gets; else 40", HelpName = "C" };
    private readonly Option<string?> _min = new("--min") { Description = "The coldest it gets; else 5", HelpName = "C" };
    private readonly Option<string?> _years = new("--years") { Description = "How long it is to be kept; else 50", HelpName = "N" };
    private readonly Option<bool> _damp = new("--damp") { Description = "The content may hold moisture" };

    public string Name => "ampoule";

    public string Summary => "Whether a fill may stand in a flame-sealed tube, and which would";

    public Command Build(Surroundings around)
    {
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary)
        {
            _content, _bore, _wall, _length, _fill, _glass, _gas, _sealedAt, _sealedPressure, _at, _max, _min, _years, _damp, json,
        };
        command.SetAction(p =>
        {
            var question = Ask(p);
            var fill = AmpouleFill.Of(question, PropertyFacts.Default);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, Answer(question, fill));
            else
                Print(around.Out, question, fill);
            return ExitCodes.Done;
        });
        return command;
    }

    private AmpouleQuestion Ask(ParseResult p)
    {
        var content = ContentWords.Find(Needed(p, _content));
        var at = Celsius(p, _at, 20);
        var (max, min) = (Celsius(p, _max, Math.Max(40, at.Celsius)), Celsius(p, _min, Math.Min(5, at.Celsius)));
        if (min > at || at > max)
            throw RefusedException.Words($"temperatures go --min <= --at <= --max, not {min.Celsius:0.#}, {at.Celsius:0.#}, {max.Celsius:0.#} C");
        var gas = AmpouleWords.Gas(p.GetValue(_gas));
        var pressure = (double)(Numbers.Plain(p.GetValue(_sealedPressure), "a pressure in bar") ?? (gas == TrappedGas.Vacuum ? 0m : 1.01325m));
        if (pressure is < 0 or > 100)
            throw RefusedException.Words($"a tube is not sealed at {pressure} bar absolute; write 0 to 100");
        var years = (double)(Numbers.Plain(p.GetValue(_years), "a number of years") ?? 50m);
        if (years is < 0 or > 1000)
            throw RefusedException.Words($"{years} years cannot be judged; write 0 to 1000");
        var ampoule = Ampoule.OfTube(
            Millimetres(p, _bore, 0.1, 200), Millimetres(p, _wall, 0.05, 30), Millimetres(p, _length, 1, 3000), AmpouleWords.Glass(p.GetValue(_glass)), Pressure.FromBar(pressure), Celsius(p, _sealedAt, 20)) with { Gas = gas };
        return new AmpouleQuestion
        {
            Content = content,
            Ampoule = ampoule,
            Fill = AmpouleWords.Fill(Needed(p, _fill), content, ampoule.VolumeAt(at), at),
            At = at,
            Warmest = max,
            Coldest = min,
            Kept = Span.FromYears(years),
            Damp = p.GetValue(_damp),
        };
    }

    private static string Needed(ParseResult p, Option<string?> option) =>
        p.GetValue(option) ?? throw RefusedException.Words($"an ampoule needs {option.Name}");

    private static Temperature Celsius(ParseResult p, Option<string?> option, double otherwise)
    {
        var celsius = (double?)Numbers.Plain(p.GetValue(option), "a temperature in degrees Celsius") ?? otherwise;
        return celsius is >= -200 and <= 1200
            ? Temperature.FromCelsius(celsius)
            : throw RefusedException.Words($"{option.Name} {celsius} C cannot be judged; write -200 to 1200");
    }

    private static Length Millimetres(ParseResult p, Option<string?> option, double least, double most)
    {
        var typed = Needed(p, option);
        var millimetres = (double)Numbers.Plain(typed.EndsWith("mm", StringComparison.Ordinal) ? typed[..^2] : typed, "a length in mm")!;
        return millimetres >= least && millimetres <= most
            ? Length.FromMillimetres(millimetres)
            : throw RefusedException.Words($"{option.Name} {typed} cannot be; write {least} to {most} mm");
    }

    private static Action<Utf8JsonWriter> Answer(AmpouleQuestion question, AmpouleFill fill) => json =>
    {
        json.WriteString("content", question.Content.Name);
        json.NumberOrNull("volume_ml", question.Ampoule.Volume.Millilitres);
        json.NumberOrNull("fill_g", question.Fill.Grams);
        json.NumberOrNull("liquid_ml", fill.Liquid?.Millilitres);
        json.NumberOrNull("ullage_percent", fill.Ullage?.Percent);
        json.NumberOrNull("liquid_full_at_c", fill.LiquidFull?.Celsius);
        json.WriteStartObject("pressure_bar_abs");
        json.NumberOrNull("at", fill.AtMean?.Bar);
        json.NumberOrNull("max", fill.AtWarmest?.Bar);
        json.WriteEndObject();
        ForecastJson.Band(json, "strength_bar", fill.Strength.Select(s => s.Bar));
        ForecastJson.Band(json, "margin", fill.Margin?.Select(m => m.Value));
        json.TextOrNull("verdict", fill.Verdict is { } verdict ? AmpouleWords.WordOf(verdict) : null);
        json.NumberOrNull("sound_fill_g", fill.SoundFill?.Grams);
        json.Texts("because", fill.Because);
        json.WriteString("note", Defers);
    };

    private static void Print(TextWriter to, AmpouleQuestion question, AmpouleFill fill)
    {
        to.WriteLine($"{question.Content.Name}, {Words.Number(question.Fill.Grams)} g in {Words.Number(question.Ampoule.Volume.Millilitres)} mL of {question.Ampoule.GlassName}: {(fill.Verdict is { } verdict ? AmpouleWords.WordOf(verdict) : "not known")}");
        if (fill.Ullage is { } free)
            to.WriteLine($"{(fill.Liquid is { } liquid ? $"liquid: {Words.Number(liquid.Millilitres)} mL" : "solid")}, {free.Percent:0} % of the tube left free at {question.At.Celsius:0.#} C");
        if (fill.AtMean is { } mean)
            to.WriteLine($"pressure at {question.At.Celsius:0.#} C: {mean.Bar:0.00} bar absolute");
        if (fill.AtWarmest is { } hot)
            to.WriteLine($"pressure at {question.Warmest.Celsius:0.#} C: {hot.Bar:0.00} bar absolute");
        to.WriteLine($"strength across the wall: {fill.Strength.Low.Bar:0.0} to {fill.Strength.High.Bar:0.0} bar");
        if (fill.Margin is { } margin)
            to.WriteLine(margin.Expected.Value >= 100 ? "margin: over 100 times" : $"margin: {margin.Expected.Value:0.0} times ({margin.Low.Value:0.0} to {margin.High.Value:0.0})");
        foreach (var reason in fill.Because)
            to.WriteLine($"because: {reason}");
        to.WriteLine(Defers);
    }
}
