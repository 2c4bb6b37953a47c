using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Losses;
using Stockroom.Book;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Concerns;

/// <summary>
/// Air that is surely bad: vapour of everything in a cabinet together near its flammable limit, a room over its exposure limits or
/// short of oxygen, radon over its level, each at the low end of what is forecast; and what would take fire in a refrigerator if it broke.
/// </summary>
public sealed class AirConcern : IConcern
{
    // A quarter of the limit is where a space counts as dangerous (29 CFR 1910.146: 10 % for entry; 25 % in use with warning devices).
    private const double NearFlammable = 0.25;

    private const string Source = "well-mixed air of the place as usually met; 29 CFR 1910.1000(d)(2) for several together";

    public IEnumerable<WrongItem> Find(StockAssessment stock)
    {
        foreach (var (cabinet, air) in AirOf.Cabinets(stock))
        {
            var closed = AirSpaces.Of(cabinet.Kind.Word) is { Closed: true };
            if (closed && air.Flammable.Low.Value >= NearFlammable)
                yield return Item(Severity.Danger, $"Vapour gathers in {cabinet.Name}: air it, and close what leaks", $"together {air.Flammable.Expected.Percent:0} % of the lower flammable limit ({air.Flammable.Low.Percent:0} to {air.Flammable.High.Percent:0})", air.Leading);
            if (air.RoomLimits.Low.Value >= 1)
                yield return Item(Severity.Danger, $"What leaks in {cabinet.Name} is more than its room's air may hold: close it better, or air the room", $"together {air.RoomLimits.Expected.Value:0.#} times the limits for daily work ({air.RoomLimits.Low.Value:0.#} to {air.RoomLimits.High.Value:0.#})", air.Leading);
            if (air.Radon.Low.Value >= 1)
                yield return Item(Severity.Danger, $"Radon from {cabinet.Name} is above its reference level in the room: seal it, or air the room", $"{air.Radon.Expected.Value * RadonForecast.Reference.BecquerelsPerCubicMetre:0} Bq/m3 against 300 (2013/59/Euratom, Art. 74)", air.LeadingRadon);
            if (cabinet.Kind == PlaceKind.Refrigerator && air.WorstFire is { } fire && fire.Breakage.ShareOfLowerFlammableLimit!.Value.Value >= 1)
                yield return Item(Severity.Danger, $"If {fire.Breakage.Gas.Name} in {cabinet.Name} breaks, its vapour can take fire at the switches: use one without sources of ignition inside", $"{fire.Breakage.ShareOfLowerFlammableLimit!.Value.Value:0.#} times its lower flammable limit", [fire.Label]);
        }
    }

    private static WrongItem Item(Severity severity, string what, string because, IEnumerable<string> labels) =>
        new(severity, "air", what, because, Source, null, [.. labels.Select(ContainerId.Parse)]);
}
