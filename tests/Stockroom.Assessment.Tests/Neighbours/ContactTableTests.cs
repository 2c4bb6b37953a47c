using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>The contact tables hang together; the strict reader has already refused unknown names and rows without a source.</summary>
public sealed class ContactTableTests
{
    private static readonly string[] Tables =
        ["contact-families.tsv", "contact-family-groups.tsv", "substance-families.tsv", "contact-pairs.tsv", "named-pairs.tsv", "vapour-neighbours.tsv"];

    [Fact]
    public void Substances_AllOfTheCatalogue_HaveARow()
    {
        var written = ContactFacts.Default.Substances.ToHashSet();
        Assert.Equal([], SubstanceCatalogue.Default.Substances.Select(s => s.Name).Except(written));
    }

    [Fact]
    public void Families_AllOfThem_AreCarriedByASubstanceOrBroughtByAStatementByWaterOrByNotBeingKnown()
    {
        var table = EmbeddedTables.Facts("substance-families.tsv", "substance", "family", "from_percent", "carries");
        var carried = table.Rows.Where(r => r.YesNo("carries")).Select(r => r.Text("family")).ToHashSet();
        string[] otherwise = ["water-based", "plain-water", "unknown-content"];
        Assert.Empty(ContactFacts.Default.Families.Where(f => f.Statements.Count == 0).Select(f => f.Key).Except(carried).Except(otherwise));
    }

    [Fact]
    public void Rules_FireExplosionOrGas_NeedACabinetEachAtLeast() =>
        Assert.Empty(ContactFacts.Default.Rules
            .Where(r => r.Would.Any(Consequences.NeedsOwnCabinet) && r.Separation < Separation.OwnCabinet)
            .Select(r => $"{r.Cause}: {string.Join(", ", r.Would)}"));

    [Fact]
    public void Rules_AllOfThem_NeedATrayEachAtLeast() =>
        Assert.DoesNotContain(ContactFacts.Default.Rules, r => r.Separation == Separation.SameTray);

    [Fact]
    public void Rules_MarkedAsVerified_DoNotRestOnMemory() =>
        Assert.Empty(ContactFacts.Default.Rules.Where(r => r.Verified == r.Provenance.FromMemory).Select(r => $"{r.Cause}: {r.Provenance}"));

    [Fact]
    public void Words_OnScreen_KeepPublishedCodesOut()
    {
        string[] codes = ["TRAY", "CAB", "FAR"];
        var shown = ContactFacts.Default.Families.Select(f => f.PlainName).Concat(ContactFacts.Default.Rules.Select(r => r.Cause)).ToList();
        Assert.DoesNotContain(shown, text => codes.Any(c => text.Contains(c, StringComparison.Ordinal)));
    }

    [Fact]
    public void Tables_EachOfThem_IsAmongTheEmbedded() => Assert.Empty(Tables.Except(EmbeddedTables.Names));
}
