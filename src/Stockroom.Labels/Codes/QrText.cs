namespace Stockroom.Labels.Codes;

/// <summary>What a label's code says: <c>STOCKROOM:</c> and the id, a line end, then plain words for a phone without the program.</summary>
public static class QrText
{
    public const string Prefix = "STOCKROOM:";

    /// <summary>Stands for the id where the label belongs to no container.</summary>
    public const string Sample = "SAMPLE";

    private const int LongestName = 60;
    private const int LongWarnings = 40;
    private static readonly int[] ShorterNames = [40, 26, 16];

    /// <summary>Whole texts, richest first: id with words, with ever fewer words, the id alone.</summary>
    public static IEnumerable<string> From(string? id, IReadOnlyList<string> words)
    {
        var head = Prefix + (id ?? Sample);
        foreach (var text in words.Where(w => w.Length > 0))
        {
            yield return head + "\n" + text;
        }

        yield return head;
    }

    /// <summary>What it is and its worst hazard in plain ASCII, richest first: the hazard is shortened to its signal word before it is left out.</summary>
    /// <param name="name">Name of the content.</param>
    /// <param name="extra">Warnings of the house.</param>
    /// <param name="signalWord">Or null.</param>
    /// <param name="worst">The worst hazard's statement, or null.</param>
    public static IReadOnlyList<string> Words(string name, IReadOnlyList<string> extra, string? signalWord, string? worst)
    {
        var warnings = string.Join(", ", extra);
        var hazard = Join(": ", signalWord, worst);
        return
        [
            .. new[]
            {
                Join(". ", Cut(name, LongestName), warnings, hazard),
                Join(". ", Cut(name, ShorterNames[0]), warnings, hazard),
                Join(". ", Cut(name, ShorterNames[1]), warnings, hazard),
                Join(". ", Cut(name, ShorterNames[0]), warnings, signalWord),
                Join(". ", Cut(name, ShorterNames[1]), warnings, signalWord),
                Join(". ", Cut(name, ShorterNames[2]), warnings, signalWord),
            }.Select(PlainAscii.Of).Distinct().OrderByDescending(w => w.Length),

            // Long warnings (of an orphan) stand in full on the label itself; the code then says at least what it is.
            .. warnings.Length <= LongWarnings ? [] : new[] { Join(". ", Cut(name, ShorterNames[1]), signalWord), Cut(name, ShorterNames[1]) }.Select(PlainAscii.Of),
        ];
    }

    private static string Join(string between, params string?[] parts) =>
        string.Join(between, parts.Where(p => !string.IsNullOrWhiteSpace(p))).Replace("....", "...");

    private static string Cut(string text, int length)
    {
        if (text.Length <= length)
        {
            return text;
        }

        var space = text.LastIndexOf(' ', length - 3);
        var at = space > length / 2 ? space : length - 3;
        return text[..(char.IsHighSurrogate(text[at - 1]) ? at - 1 : at)].TrimEnd(' ', ',', '-') + "...";
    }
}
