using CsvHelper;
using Stockroom.Storage.Exports;

namespace Stockroom.Imports;

/// <summary>One row of a CSV file: the line of the file it begins on, and its cells.</summary>
internal sealed record CsvRow(int Line, IReadOnlyList<string> Cells);

/// <summary>
/// A CSV file as RFC 4180 has it, read into rows: UTF-8 with or without a byte order mark, any line ends; comma, semicolon or
/// tab parts the cells, whichever the header line has most of. Rows without any content are left out.
/// </summary>
internal sealed record CsvText(CsvRow Header, IReadOnlyList<CsvRow> Rows)
{
    /// <summary>Largest file that is read: 10 MB.</summary>
    public const int MostBytes = 10_000_000;

    /// <summary>Most rows of one file.</summary>
    public const int MostRows = 20_000;

    private const int LongestHeader = 200;

    private static readonly char[] Separators = [',', ';', '\t'];

    /// <summary>Reads a file.</summary>
    /// <exception cref="DocumentException">It is too large, not UTF-8, or its quotes do not pair; the line is named.</exception>
    public static CsvText Read(byte[] file)
    {
        var text = DocumentText.Of(file, MostBytes);
        var rows = RowsOf(text).ToList();
        if (rows.Count == 0)
            throw new DocumentException(1, "the file is empty; its first line names the columns");
        if (rows.Count - 1 > MostRows)
            throw new DocumentException(rows[MostRows + 1].Line, $"the file has {rows.Count - 1} rows; at most {MostRows} are imported at once: part it");
        if (rows[0].Cells.FirstOrDefault(c => c.Length > LongestHeader) is { } longest)
            throw new DocumentException(rows[0].Line, $"a column's name has {longest.Length} characters; this is not a header line");
        return new CsvText(rows[0], rows[1..]);
    }

    private static IEnumerable<CsvRow> RowsOf(DocumentText text)
    {
        using var reader = CsvReader.Create(text.Bytes, new CsvReaderOptions
        {
            Separator = SeparatorOf(text.Bytes.Span),
            HasHeader = false,
            SkipEmptyLines = true,
            TrackLineNumbers = true,
            TrimWhitespace = true,
            MalformedData = CsvMalformedDataHandling.Throw,
        });
        while (Next(reader))
        {
            var cells = new string[reader.FieldCount];
            for (var i = 0; i < cells.Length; i++)
                cells[i] = reader.GetString(i);
            if (cells.Any(c => !string.IsNullOrWhiteSpace(c)))
                yield return new CsvRow((int)reader.LineNumber, cells);
        }
    }

    private static bool Next(CsvReader reader)
    {
        try
        {
            return reader.Read();
        }
        catch (CsvFormatException e)
        {
            throw new DocumentException((int)Math.Max(1, e.LineNumber), $"the quotes of this row do not pair: a cell with a comma, a quote or a line end stands in \"quotes\", and a quote in it is written twice ({FirstSentence(e.Message)})");
        }
    }

    private static string FirstSentence(string message) => message.ReplaceLineEndings(" ").Split(". ", 2)[0].TrimEnd('.');

    // In the header line, outside of quotes.
    private static char SeparatorOf(ReadOnlySpan<byte> text)
    {
        var counts = new int[Separators.Length];
        var isQuoted = false;
        foreach (var b in text)
        {
            if (b == '"')
                isQuoted = !isQuoted;
            else if (!isQuoted && b is (byte)'\n' or (byte)'\r')
            {
                if (counts.Any(c => c > 0))
                    break;
            }
            else if (!isQuoted && Array.IndexOf(Separators, (char)b) is >= 0 and var at)
                counts[at]++;
        }

        return Separators[Array.IndexOf(counts, counts.Max())];
    }
}
