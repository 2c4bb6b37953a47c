using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>Liquids that swell as they freeze need room below their melting point too.</summary>
internal static class Frost
{
    /// <summary>Why a fill breaks the glass on freezing; null where it does not, or does not freeze where it is kept.</summary>
    public static string? Fault(AmpouleQuestion question, SealedContent content, Filling filling)
    {
        if (!Freezes(question, content, out var melting) || filling.Frozen() is not { } frozen || frozen < question.Ampoule.VolumeAt(melting))
            return null;
        return $"{content.Name} freezes at {melting.Celsius:0.#} degrees C and swells by {content.Growth!.Growth.Percent:0.#} per cent to {frozen.Millilitres:0.##} mL, more than the glass holds";
    }

    /// <summary>What must be minded though there is room: a plug that freezes from the top leaves the rest none.</summary>
    public static string? Caution(AmpouleQuestion question, SealedContent content) => Freezes(question, content, out var melting) && question.At >= melting
        ? $"it freezes below {melting.Celsius:0.#} degrees C where it is kept, and swells: a plug frozen at the top can crack the tube though there is room"
        : null;

    /// <summary>True where a content that swells meets its melting point between the coldest and the warmest.</summary>
    public static bool Freezes(AmpouleQuestion question, SealedContent content, out Temperature melting)
    {
        melting = content.Melting ?? Temperature.FromCelsius(0);
        return content.Growth is not null && question.Coldest < melting;
    }
}
