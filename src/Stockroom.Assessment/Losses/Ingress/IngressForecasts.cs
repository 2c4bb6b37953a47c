using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses.Ingress;

/// <summary>
/// Moisture and oxygen into contents that take them up: the ways out read backwards, driven by what the room's air holds, spent by
/// stoichiometry. Nothing is held back at the content. Uncertain threefold beside the closure.
/// Source: Geankoplis, Transport Processes and Unit Operations, 3rd ed., sections 6.2 and 6.5.
/// </summary>
public static class IngressForecasts
{
    private const double OxygenShare = 0.2095;
    private const double HorizonDays = 500 * 365.25;

    // Strong acid dries a content until it has taken up so much that it holds a tenth less acid.
    private const double AcidSpentAt = 0.1;

    private static readonly Provenance Source = new("Geankoplis, Transport Processes and Unit Operations, 3rd ed.", "sections 6.2 and 6.5, driven inwards", "1993");

    /// <summary>One answer each for water and oxygen.</summary>
    public static IReadOnlyList<IngressForecast> Of(Situation situation, PropertyFacts facts) =>
        situation.Content.IsUnknown ? [] : [Of(situation, facts, "water"), Of(situation, facts, "oxygen")];

    private static IngressForecast Of(Situation situation, PropertyFacts facts, string name)
    {
        var word = name == "water" ? "moisture" : name;
        if (situation.Closure.Mechanism is ClosureMechanism.Fused or ClosureMechanism.Valve)
            return Absent(name, $"no {word} gets in: the vessel is shut tight");
        var acid = name == "water" && situation.Cover?.Name.StartsWith("sulfuric acid", StringComparison.Ordinal) == true;
        var taker = situation.Content.Parts.FirstOrDefault(p => p.Percent >= 5 && AirUptake.Of(p.Substance, name) is not null);
        if (!acid && taker is null)
            return Absent(name, $"nothing in {situation.Content.Name} is listed as taking up {word}");
        if (!acid && name == "water" && taker!.Substance.State == MatterState.Solid && situation.Content.State == MatterState.Liquid && situation.Content.WaterPercent > 0)
            return Absent(name, "it is dissolved in water already: what it takes up of the room's moisture changes its strength");
        if (!acid && name == "water" && (situation.Cover?.Name == "water" || situation.Content.WaterPercent > 50))
            return Absent(name, "it stands under water already");
        var state = new LossState(situation, facts);
        var gas = facts.Catalogue[name];
        var words = new List<string>();
        var way = WayIn.BehindPacking(state, WayIn.Of(state, gas, words), gas, words);
        if (situation.Cover is { Kind: CoverKind.Liquid } cover && !acid && CoverGas.Of(cover.Name, name) is { } passing)
        {
            way = WayIn.BehindCover(state, way, passing);
            words.Add($"then {situation.CoverDepth?.Millimetres ?? 0:0.#} mm of {cover.Name}");
        }

        var outside = name == "water"
            ? (facts.VapourPressure(gas, state.Temperature).Value ?? default) * situation.Humidity.Value
            : PhysicalConstants.StandardAtmosphere * OxygenShare;
        var rate = way.Select(w => new MassRate(w.CubicMetresPerSecond * GasLaw.Concentration(outside, gas.MolarMass!.Value, state.Temperature).KilogramsPerCubicMetre));
        return acid ? ByAcid(situation, rate, words) : ByContent(situation, facts, taker!, name, rate, words);
    }

    private static IngressForecast ByContent(Situation situation, PropertyFacts facts, Part taker, string gas, Band<MassRate> rate, List<string> words)
    {
        var uptake = AirUptake.Of(taker.Substance, gas)!;
        var mass = situation.Amount.Kilograms * (double)taker.Percent / 100;
        var capacity = mass / taker.Substance.MolarMass!.Value.KilogramsPerMole * uptake.Moles.Value * facts.Catalogue[gas].MolarMass!.Value.KilogramsPerMole;
        var (early, expected, late) = Days(situation, rate, new Mass(capacity * uptake.SpoilsAt.Value));
        return new IngressForecast(
            gas, PathVerdict.Applies, rate, $"by way of {string.Join(", ", words)}; {taker.Substance.Name} becomes {uptake.Makes}, spoiled when {uptake.SpoilsAt.Percent:0} % of it has", early, expected, late, uptake.Provenance);
    }

    private static IngressForecast ByAcid(Situation situation, Band<MassRate> rate, List<string> words)
    {
        var acid = (situation.CoverDepth?.Metres ?? 0.005) * situation.Vessel.CrossSection.SquareMetres * 1840;
        var (early, expected, late) = Days(situation, rate, new Mass(acid * AcidSpentAt));
        return new IngressForecast(
            "water", PathVerdict.Applies, rate, $"by way of {string.Join(", ", words)}; the acid cover takes it up, and counts as spent when it has grown by a tenth", early, expected, late, Source);
    }

    private static (DateOnly? Early, DateOnly? Expected, DateOnly? Late) Days(Situation situation, Band<MassRate> rate, Mass room)
    {
        DateOnly? Day(MassRate r)
        {
            var days = r.KilogramsPerSecond > 0 ? room.Kilograms / r.KilogramsPerSecond / 86400 : double.PositiveInfinity;
            return days > HorizonDays ? null : ForecastBuilder.Date(situation.AmountOn, Span.FromDays(days));
        }

        return (Day(rate.High), Day(rate.Expected), Day(rate.Low));
    }

    private static IngressForecast Absent(string gas, string because) => new(gas, PathVerdict.Absent, null, because, null, null, null, null);
}
