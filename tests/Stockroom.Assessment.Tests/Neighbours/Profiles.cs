using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>Profiles by the names a keeper would use.</summary>
internal static class Profiles
{
    public static ContactProfile Of(string name, params string[] statements)
    {
        var resolution = SubstanceCatalogue.Default.Resolve(name);
        return ContactProfile.Of(resolution.Content ?? throw new ArgumentException(resolution.Problem, nameof(name)), statements);
    }

    public static ContactProfile OfContent(Content content) => ContactProfile.Of(content, []);

    public static ContactProfile Orphan(MatterState state, string seen = "unknown liquid") => ContactProfile.Of(Content.Orphan(seen, state), []);

    public static PairJudgement Judge(string a, string b) => new PairJudge().Judge(Of(a), Of(b));
}
