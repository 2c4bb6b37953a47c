using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Tests.Neighbours;

namespace Stockroom.Assessment.Tests.Arrangement;

/// <summary>Pairs that show one need and no other; the tests say so if the rules change beneath them.</summary>
internal static class Pairs
{
    /// <summary>Two that need a tray each and share their air without harm.</summary>
    public static (string A, string B) NeedingATrayEach()
    {
        const string a = "acetic acid";
        const string b = "sodium hydroxide 10%";
        var judged = Profiles.Judge(a, b);
        Assert.Equal(Separation.OwnTray, judged.Separation);
        return (a, b);
    }

    /// <summary>A corrosive liquid and what it must not stand over, though trays would do otherwise.</summary>
    public static (string Upper, string Lower) NeverAbove()
    {
        var (a, b) = NeedingATrayEach();
        Assert.Contains(a, Profiles.Judge(a, b).NeverAbove, StringComparer.Ordinal);
        return (a, b);
    }
}
