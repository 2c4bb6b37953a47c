using Stockroom.Chemistry.Hazards;

namespace Stockroom.Desk.Sheets;

/// <summary>Which statement to name first to somebody at the door: common practice, what harms at once before what harms later.</summary>
internal static class HazardRank
{
    private static readonly string[] WorstFirst =
    [
        "H200", "H201", "H202", "H203", "H204", "H205", "H240", "H241", "H250", "H260", "H330", "H300", "H310", "EUH032", "EUH031", "EUH029", "EUH014",
        "H261", "H220", "H224", "H232", "H271", "H270", "H331", "H301", "H311", "H314", "EUH071", "H225", "H272", "H242", "H251", "H228", "H280", "H281",
        "H370", "H350", "H340", "H360", "H372", "H334", "H304", "H226", "EUH019", "H318", "H317", "H332", "H302", "H312", "H410", "H400",
    ];

    /// <summary>The statements of a label, the worst first.</summary>
    public static IReadOnlyList<LabelStatement> Of(LabelElements label) =>
        [.. label.HazardStatements.Concat(label.Supplemental).OrderBy(s => Rank(s.Code))];

    /// <summary>0 for the worst; what has no statement ranks last.</summary>
    public static int Of(LabelElements label, bool isUnknown)
    {
        if (isUnknown)
            return 0;
        var worst = label.HazardStatements.Concat(label.Supplemental).Select(s => Rank(s.Code)).DefaultIfEmpty(int.MaxValue).Min();
        return worst;
    }

    // A combined code counts as its worst part.
    private static int Rank(string code) => code.Split('+').Select(RankOfOne).Min();

    private static int RankOfOne(string code)
    {
        var index = Array.FindIndex(WorstFirst, w => code.StartsWith(w, StringComparison.Ordinal));
        return index < 0 ? WorstFirst.Length : index;
    }
}
