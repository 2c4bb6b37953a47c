namespace Stockroom.Imports;

/// <summary>
/// Text that a spreadsheet would run as a formula gets an apostrophe before it in a CSV file, and loses it when it is
/// read back. The signs are those of OWASP's note on CSV injection: = + - @, tab, CR, LF and the full-width = + - @; blanks
/// before them do not hide them. A text that begins with an apostrophe gets another, so that each reads back as it was.
/// </summary>
internal static class FormulaGuard
{
    private const char Guard = '\'';
    private const string Signs = "=+-@\t\r\n＝＋－＠";

    public static string Put(string text) => text.Length > 0 && (text[0] == Guard || IsFormula(text)) ? Guard + text : text;

    public static string Take(string cell) =>
        cell.Length > 1 && cell[0] == Guard && (cell[1] == Guard || IsFormula(cell[1..])) ? cell[1..] : cell;

    private static bool IsFormula(string text) => text.TrimStart(' ') is [var first, ..] && Signs.Contains(first, StringComparison.Ordinal);
}
