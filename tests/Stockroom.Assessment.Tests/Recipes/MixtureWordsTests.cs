using Stockroom.Assessment.Intake;
using Stockroom.Book;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Recipes;

/// <summary>Per cent is mass of the pure substance in 100 g of the whole; everything else is converted and said, or refused.</summary>
public sealed class MixtureWordsTests
{
    [Theory]
    [InlineData("hydrochloric acid=10%; water=90%", "hydrochloric acid", 10)]
    [InlineData("hydrochloric acid=37; water=63", "hydrochloric acid", 37)]
    [InlineData("HCl=10 % w/w; water=rest", "hydrogen chloride", 10)]
    [InlineData("sodium hydroxide=50 g/kg; water=95", "sodium hydroxide", 5)]
    [InlineData("sodium hydroxide=5 g/100 g; water=95", "sodium hydroxide", 5)]
    [InlineData("hydrogen peroxide 30%=50; water=50", "hydrogen peroxide", 15)]
    [InlineData("nitric acid=<10%; water=>90%", "nitric acid", 10)]
    [InlineData("nitric acid<10%; water>90%", "nitric acid", 10)]
    [InlineData("nitric acid>=65%; water<=35%", "nitric acid", 100)]
    [InlineData("sulfuric acid=>90%; water=2%", "sulfuric acid", 98)]
    [InlineData("acetic acid=10-20%; water=rest", "acetic acid", 20)]
    public void Read_SharesByMass_AreTheShareOfThePureSubstance(string mix, string substance, double percent) =>
        Assert.Equal((decimal)percent, Read(mix).PercentOf(substance));

    // Molar masses by IUPAC abridged weights: NaClO 74.44, Cl2 70.90, Ca(ClO)2 142.98, H3PO4 97.99, P2O5 141.94, CuSO4.5H2O 249.68, CuSO4 159.6, Cu 63.55.
    [Theory]
    [InlineData("sodium hypochlorite=5% active chlorine; water=rest", "sodium hypochlorite", 5 * 74.44 / 70.90)]
    [InlineData("sodium hypochlorite=5% available chlorine; water=rest", "sodium hypochlorite", 5 * 74.44 / 70.90)]
    [InlineData("calcium hypochlorite=65% active chlorine; calcium chloride=rest", "calcium hypochlorite", 65 * 142.98 / 141.80)]
    [InlineData("phosphoric acid=50% P2O5; water=rest", "phosphoric acid", 50 * 2 * 97.99 / 141.94)]
    [InlineData("copper(II) sulfate pentahydrate=2% anhydrous; water=rest", "copper(II) sulfate pentahydrate", 2 * 249.68 / 159.60)]
    [InlineData("copper(II) sulfate pentahydrate=1% Cu; water=rest", "copper(II) sulfate pentahydrate", 249.68 / 63.55)]
    public void Read_OtherBasis_IsConvertedByStoichiometryAndSaid(string mix, string substance, double percent)
    {
        var content = Read(mix);
        Assert.Equal(percent, (double)content.PercentOf(substance), 0.01);
        Assert.Contains(content.Notes, n => n.Contains("was converted to", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("sodium hydroxide=4 g/100 mL; water=rest", "is not per cent by mass")]
    [InlineData("ethanol=70% v/v; water=rest", "is not per cent by mass")]
    [InlineData("sodium chloride=5% w/v; water=rest", "is not per cent by mass")]
    [InlineData("sodium hydroxide=1 M; water=rest", "is not per cent by mass")]
    [InlineData("sodium hydroxide=1 mol/L; water=rest", "is not per cent by mass")]
    [InlineData("sodium hydroxide=5% active chlorine; water=rest", "is not per cent by mass")]
    [InlineData("sodium hypochlorite=5% Cl; water=rest", "active chlorine")]
    [InlineData("hydrochloric acid=0%; water=100", "above 0")]
    [InlineData("hydrochloric acid=-5%; water=95", "write a number above 0")]
    [InlineData("hydrochloric acid=60; water=60", "more than 100 %")]
    [InlineData("hydrochloric acid=0,5; water=99", "write a number above 0")]
    [InlineData("hydrochloric acid; water=99", "is not a part")]
    [InlineData("hydrochlric acid=5; water=95", "nearest: hydrochloric acid")]
    [InlineData("ethanol=>40%; methanol=>40%", "give one of them as a figure")]
    [InlineData("phosphoric acid=90% P2O5; water=rest", "more than 100 %")]
    public void Read_WhatIsNoShareByMass_IsRefusedWithWhatWouldBeRight(string mix, string words) =>
        Assert.Contains(words, Assert.Throws<BookRefusal>(() => Read(mix)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("nitric acid=<10%; water=>90%", "nitric acid <10% is taken as 10 %, the worst case")]
    [InlineData("nitric acid=>65%; water=<35%", "nitric acid >65% is taken as 100 %")]
    [InlineData("nitric acid=10; water=rest", "water takes the rest, 90 %")]
    [InlineData("nitric acid=10; water=80", "10 % by mass was not named and is unknown")]
    [InlineData("vinegar=50; water=50", "vinegar is itself a mixture")]
    public void Read_WhatWasAssumed_IsSaid(string mix, string words) =>
        Assert.Contains(Read(mix).Notes, n => n.Contains(words, StringComparison.Ordinal));

    [Theory]
    [InlineData("sodium chloride=50; sucrose=50", MatterState.Solid)]
    [InlineData("sodium chloride=5; water=95", MatterState.Liquid)]
    [InlineData("oxygen=20; nitrogen=80", MatterState.Gas)]
    public void Read_State_IsThatOfTheParts(string mix, MatterState expected) => Assert.Equal(expected, Read(mix).State);

    private static Content Read(string mix) => MixtureWords.Read("the mixture", mix, SubstanceCatalogue.Default);
}
