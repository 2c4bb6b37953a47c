using Stockroom.Book.Encoding;

namespace Stockroom.Storage.Journals;

/// <summary>One line of the journal that does not hold, or that only a newer program can read.</summary>
internal sealed record BrokenLine(long Line, string Because, bool IsNewer)
{
    /// <summary>What is the matter, in words.</summary>
    public string What => IsNewer
        ? $"line {Line} of its journal was written by a newer program ({Because}); use a newer one"
        : $"line {Line} of its journal was altered: {Because}";

    /// <summary>The same with the entries that cannot be believed.</summary>
    /// <param name="held">Entries before it that hold.</param>
    public string Among(int held) =>
        $"{What}; {held switch { 0 => "no entry", 1 => "only entry 1", _ => $"entries 1 to {held}" }} in it can be believed, from {held + 1} on none";
}

/// <summary>What a journal says, and where it stops being believable.</summary>
internal sealed class JournalReading
{
    private JournalReading(string genesisHash) => Chain = new JournalChain(genesisHash);

    public JournalChain Chain { get; }

    /// <summary>The first line that does not hold; null if all do.</summary>
    public BrokenLine? Broken { get; private set; }

    /// <summary>Bytes up to the end of the last whole line that holds.</summary>
    public long GoodLength { get; private set; }

    /// <summary>Bytes behind it that a write cut short left behind; they were never acknowledged.</summary>
    public long TornBytes { get; private set; }

    /// <summary>True if the last line is whole but for its line end.</summary>
    public bool LacksLineEnd { get; private set; }

    public static JournalReading Of(Stream journal, string genesisHash)
    {
        var reading = new JournalReading(genesisHash);
        var lines = new LineReader(journal);
        for (var number = 1L; lines.Next() is { } line; number++)
        {
            if (!reading.Take(line, number))
                break;
        }

        return reading;
    }

    /// <summary>A book that goes on in words this program does not know is left alone: what it would show is not all there is.</summary>
    /// <exception cref="BookUnavailableException">A newer program wrote in it.</exception>
    public void RefuseIfNewer(BookFiles files)
    {
        if (Broken is { IsNewer: true } newer)
            throw new BookUnavailableException(BookFault.Newer, $"the book '{files.Folder}' cannot be opened: {newer.What}; it was left as it is");
    }

    private bool Take(Line line, long number)
    {
        try
        {
            Chain.Follow(JournalLine.Decode(line.Text));
            LacksLineEnd = !line.IsEnded;
            GoodLength += line.Text.Length + (line.IsEnded ? 1 : 0);
            return true;
        }
        catch (FormatException e)
        {
            // A line is written in one piece, its end last, and no line holds a NUL: without an end, or with blocks that
            // were never filled, it is a write cut short. Anything else was altered.
            if (e is not NewerEntryException && line.IsLast && (!line.IsEnded || line.Text.Span.Contains((byte)0)))
                TornBytes = line.Text.Length + (line.IsEnded ? 1 : 0);
            else
                Broken = new BrokenLine(number, e.Message, e is NewerEntryException);
            return false;
        }
    }
}
