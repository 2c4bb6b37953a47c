using System.Text.RegularExpressions;
using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>
/// With the statements of the harmonised entries (a table outside the project, named by STOCKROOM_REFERENCE) added to
/// what composition says, pure substances of the harmless list stay unflagged and no dangerous pair becomes milder.
/// </summary>
public sealed partial class StatementTests
{
    private const string Variable = "STOCKROOM_REFERENCE";

    [Fact]
    public void Judge_HarmlessPairsWithHarmonisedStatements_AreNotFlagged()
    {
        var statements = HarmonisedStatements();
        var flagged = HarmlessPairs.All
            .Select(p => (p.A, p.B, Judgement: new PairJudge().Judge(WithStatements(p.A, statements), WithStatements(p.B, statements))))
            .Where(p => p.Judgement.Separation != Separation.SameTray)
            .Select(p => $"{p.A} / {p.B}: {string.Join("; ", p.Judgement.Reasons.Select(r => r.Cause))}");
        Assert.Empty(flagged);
    }

    [Fact]
    public void Judge_DangerousPairsWithHarmonisedStatements_AreNoMilder()
    {
        var statements = HarmonisedStatements();
        var milder = DangerousPairs.All
            .Where(p => new PairJudge().Judge(WithStatements(p.A, statements), WithStatements(p.B, statements)).Separation < Profiles.Judge(p.A, p.B).Separation)
            .Select(p => $"{p.A} / {p.B}");
        Assert.Empty(milder);
    }

    private static ContactProfile WithStatements(string name, Dictionary<string, HashSet<string>> statements)
    {
        var content = SubstanceCatalogue.Default.Resolve(name).Content!;
        var codes = content.Pure?.Cas is { } cas && statements.TryGetValue(cas.Text, out var found) ? found : [];
        return ContactProfile.Of(content, codes);
    }

    private static Dictionary<string, HashSet<string>> HarmonisedStatements()
    {
        var folder = Environment.GetEnvironmentVariable(Variable);
        Assert.SkipWhen(string.IsNullOrEmpty(folder), $"{Variable} does not name a folder that holds ghs/annex_vi_table3_atp21.tsv");
        var byCas = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var line in File.ReadAllLines(Path.Combine(folder!, "ghs", "annex_vi_table3_atp21.tsv")).Skip(1))
        {
            foreach (Match cas in CasPattern().Matches(line))
            {
                if (!byCas.TryGetValue(cas.Value, out var codes))
                    byCas[cas.Value] = codes = new HashSet<string>(StringComparer.Ordinal);
                codes.UnionWith(CodePattern().Matches(line).Select(m => m.Value));
            }
        }

        return byCas;
    }

    [GeneratedRegex(@"\b\d{2,7}-\d\d-\d\b")]
    private static partial Regex CasPattern();

    [GeneratedRegex(@"\b(EUH|H)\d{3}")]
    private static partial Regex CodePattern();
}
