using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Tests.Losses;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Vessels;

/// <summary>What can lie over what: densities of the CRC Handbook, and common practice.</summary>
public sealed class CoverFitTests
{
    private static CoverFit Fit(string content, string cover, double millimetres = 20, double grams = 20, double coldest = 10) =>
        CoverFit.Of(Bench.Of(content, grams, "glass reagent bottle 100 mL", "screw cap, PTFE-faced liner", 20, cover, millimetres), StockFacts.Default, Temperature.FromCelsius(coldest))!;

    private static bool? Answer(CoverFit fit, string question) => fit.Points.Single(p => p.Question == question).Good;

    [Theory]
    [InlineData("bromine", "sulfuric acid 98%")]
    [InlineData("bromine", "water")]
    [InlineData("phosphorus (white)", "water")]
    [InlineData("carbon disulfide", "water")]
    [InlineData("mercury", "water")]
    [InlineData("sodium", "paraffin oil")]
    [InlineData("potassium", "paraffin oil")]
    public void Fit_OfThePractice_Holds(string content, string cover)
    {
        var fit = Fit(content, cover);
        Assert.True(fit.Holds, string.Join("; ", fit.Points.Where(p => p.Good != true).Select(p => p.Because)));
    }

    [Theory]
    [InlineData("lithium", "paraffin oil", "floats")]
    [InlineData("diethyl ether", "water", "floats")]
    [InlineData("ethanol", "water", "does not mix")]
    [InlineData("toluene", "paraffin oil", "does not mix")]
    [InlineData("hydrochloric acid 37%", "sulfuric acid 98%", "does not mix")]
    [InlineData("potassium", "water", "does not react")]
    [InlineData("sodium", "sulfuric acid 98%", "does not react")]
    [InlineData("acetone", "sulfuric acid 98%", "does not mix")]
    [InlineData("bromine", "paraffin oil", "does not mix")]
    public void Fit_WhatCannotWork_IsRefusedForItsReason(string content, string cover, string question)
    {
        var fit = Fit(content, cover);
        Assert.False(fit.Holds);
        Assert.False(Answer(fit, question));
    }

    // Water freezes at 0, sulfuric acid of 98 per cent near 3, oil runs to some ten below.
    [Theory]
    [InlineData("phosphorus (white)", "water", -2, false)]
    [InlineData("phosphorus (white)", "water", 4, true)]
    [InlineData("bromine", "sulfuric acid 98%", 1, false)]
    [InlineData("sodium", "paraffin oil", -5, true)]
    public void Fit_InWinter_StaysLiquidOrNot(string content, string cover, double coldest, bool liquid) =>
        Assert.Equal(liquid, Answer(Fit(content, cover, coldest: coldest), "stays liquid"));

    [Fact]
    public void Fit_TooThinOrTooFull_IsSaid()
    {
        Assert.False(Answer(Fit("phosphorus (white)", "water", millimetres: 8), "keeps it below the surface"));
        Assert.False(Answer(Fit("mercury", "water", millimetres: 40, grams: 600), "fits the vessel"));
    }

    [Fact]
    public void Fit_NotInTheTables_IsNotCalledGood()
    {
        var fit = Fit("methylene blue", "paraffin oil");
        Assert.NotEqual(true, fit.Holds);
    }

    [Fact]
    public void Fit_NoLiquidCover_IsNotAsked() =>
        Assert.Null(CoverFit.Of(Bench.BromineUnder(null), StockFacts.Default, null));

    // Two-film figures: bare 4.5 g a year, under 10 mm of water 4.45, under acid 1.7 (0.5 to 3.4).
    [Fact]
    public void Worth_InAWellClosedBottle_IsLittleUnderWaterAndMoreUnderAcid()
    {
        var water = CoverWorth.Of(Bench.BromineUnder("water"), Bench.Facts)!;
        Assert.Equal(4.5, water.Bare.Expected.GramsPerYear, 0.7);
        Assert.InRange(water.Covered.Expected / water.Bare.Expected, 0.97, 1);
        Assert.Contains("changes little", water.Because, StringComparison.Ordinal);
        var acid = CoverWorth.Of(Bench.BromineUnder("sulfuric acid 98%"), Bench.Facts)!;
        Assert.InRange(acid.Covered.Expected.GramsPerYear, 0.5, 3.4);
        Assert.DoesNotContain("changes little", acid.Because, StringComparison.Ordinal);
    }
}
