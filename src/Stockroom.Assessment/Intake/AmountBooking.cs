using System.Globalization;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Intake;

/// <summary>Turns an amount as typed into the mass that is booked, and keeps the density it used and whose figure that was.</summary>
public static class AmountBooking
{
    private static readonly Temperature Room = Temperature.FromCelsius(20);

    /// <summary>The mass in grams; for a volume by the content's density at 20 degrees Celsius.</summary>
    /// <param name="amount">As typed.</param>
    /// <param name="content">What it is of.</param>
    /// <param name="facts">Where densities come from.</param>
    /// <returns>Grams and density, or the reason why a volume cannot be booked as a mass.</returns>
    public static AmountBooked Of(TypedAmount amount, Content content, PropertyFacts facts)
    {
        if (!amount.IsVolume)
            return new AmountBooked(amount.Value, null, null);
        if (content.IsUnknown)
            return new AmountBooked(null, null, "the density of an unknown content is not known; weigh it, or leave the amount out");
        var (density, source) = DensityOf(content, facts);
        if (density is not { } known)
            return new AmountBooked(null, null, $"'{amount}' cannot be booked as a mass: {source}; give the amount in grams");
        var perMillilitre = RoundedToSix((decimal)known.GramsPerMillilitre);
        return new AmountBooked(amount.Value * perMillilitre, new BookedDensity(perMillilitre, source), null);
    }

    private static (Density? Density, string Source) DensityOf(Content content, PropertyFacts facts)
    {
        if (content.Pure is { } pure)
        {
            var fact = facts.Density(pure, Room);
            return fact.Value is { } value ? (value, fact.Provenance!.ToString()) : (null, fact.Reason!);
        }

        return content.Density is { } density
            ? (density, content.Provenance?.ToString() ?? "given with the mixture")
            : (null, $"no density of {content.Name} is in the tables");
    }

    private static decimal RoundedToSix(decimal value) =>
        decimal.Parse(value.ToString("G6", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);
}

/// <summary>A mass in grams ready to book, with the density used for a volume; or null and the reason.</summary>
public sealed record AmountBooked(decimal? Grams, BookedDensity? Density, string? Problem);
