using Stockroom.Assessment.Tests.Losses;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Vessels;

/// <summary>Whatever the catalogue holds can be judged in a sealed tube, in the cold and in the heat, and no figure of it is nonsense.</summary>
public sealed class EveryContentSealedTests
{
    [Theory]
    [InlineData(-60, TrappedGas.Vacuum)]
    [InlineData(-20, TrappedGas.Air)]
    [InlineData(20, TrappedGas.Argon)]
    [InlineData(80, TrappedGas.Air)]
    public void EveryContent_IsJudged_AndItsPressureIsAFigureOrUnknown(double celsius, TrappedGas gas)
    {
        var sealedIn = gas == TrappedGas.Vacuum ? new Pressure(0) : PhysicalConstants.StandardAtmosphere;
        var tube = Ampoule.OfTube(Length.FromMillimetres(10), Length.FromMillimetres(1), Length.FromMillimetres(100), GlassKind.Borosilicate, sealedIn, Temperature.FromCelsius(20)) with { Gas = gas };
        var judged = 0;
        foreach (var content in SubstanceCatalogue.Default.Substances.Select(Content.Of).Concat(SubstanceCatalogue.Default.Preparations))
        {
            var density = content.Density?.KilogramsPerCubicMetre ?? (content.State == MatterState.Gas ? 5 : 1200);
            var fill = AmpouleFill.Of(
                new AmpouleQuestion { Content = content, Fill = new Mass(4e-6 * density), Ampoule = tube, At = Temperature.FromCelsius(celsius), Warmest = Temperature.FromCelsius(celsius + 10), Coldest = Temperature.FromCelsius(celsius - 10) },
                Bench.Facts);
            Assert.NotEmpty(fill.Because);
            Assert.All(new[] { fill.AtMean, fill.AtWarmest }, p => Assert.True(p is not { } known || (known.Pascals >= 0 && double.IsFinite(known.Pascals)), $"{content.Name}: {p}"));
            judged++;
        }

        Assert.True(judged > 1000);
    }
}
