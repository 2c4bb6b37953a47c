using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Verbs;

/// <summary>Reads an ampoule as typed: its fill in g, mL or per cent of the tube, its glass and gas.</summary>
internal static class AmpouleWords
{
    private static readonly Dictionary<string, GlassKind> Glasses = new(StringComparer.OrdinalIgnoreCase)
    {
        ["borosilicate"] = GlassKind.Borosilicate,
        ["soda-lime"] = GlassKind.SodaLime,
        ["silica"] = GlassKind.Silica,
    };

    private static readonly Dictionary<string, TrappedGas> Gases = new(StringComparer.OrdinalIgnoreCase)
    {
        ["air"] = TrappedGas.Air,
        ["argon"] = TrappedGas.Argon,
        ["nitrogen"] = TrappedGas.Nitrogen,
        ["vacuum"] = TrappedGas.Vacuum,
    };

    public static GlassKind Glass(string? word) => OneOf(Glasses, word ?? "borosilicate", "a glass");

    public static TrappedGas Gas(string? word) => OneOf(Gases, word ?? "air", "a gas over the content");

    public static string WordOf(FillVerdict verdict) => verdict switch
    {
        FillVerdict.Sound => "sound",
        FillVerdict.Marginal => "marginal",
        FillVerdict.Unsafe => "unsafe",
        _ => "never seal",
    };

    /// <summary>A mass; a volume or a share of the tube by the content's density at the temperature at which it is filled.</summary>
    public static Mass Fill(string words, Content content, Volume tube, Temperature at)
    {
        var text = words.Trim();
        if (text.EndsWith('%'))
        {
            var percent = (double)(Numbers.Plain(text[..^1], "a fill in per cent of the tube") ?? 0);
            return percent is > 0 and <= 100
                ? new Mass(tube.CubicMetres * percent / 100 * Density(content, at, words).KilogramsPerCubicMetre)
                : throw RefusedException.Words($"a fill of {text} cannot be; it lies above 0 and up to 100 %");
        }

        if (!TypedAmount.TryParse(text, out var amount, out var problem))
            throw RefusedException.Words($"{problem}, or a share of the tube such as 80%");
        return amount.IsVolume
            ? new Mass((double)amount.Value * 1e-6 * Density(content, at, words).KilogramsPerCubicMetre)
            : Mass.FromGrams((double)amount.Value);
    }

    private static Density Density(Content content, Temperature at, string words)
    {
        var facts = PropertyFacts.Default;
        if (content.Pure is not { } pure)
            return content.Density ?? throw RefusedException.Words($"no density of {content.Name} is in the tables; give the fill in grams, not '{words}'");
        var liquid = facts.LiquidDensity(pure, at);
        if (liquid.Value is { } rho)
            return rho;
        return facts.StateAt(pure, at) == MatterState.Solid && facts.SolidDensity(pure).Value is { } solid
            ? solid
            : throw RefusedException.Words($"{pure.Name} is no liquid at {at.Celsius:0} C ({liquid.Reason}); give the fill in grams, not '{words}'");
    }

    private static T OneOf<T>(Dictionary<string, T> known, string word, string what) => known.TryGetValue(word.Trim(), out var value)
        ? value
        : throw RefusedException.Words($"'{word}' is not {what}; write {string.Join(", ", known.Keys)}");
}
