namespace Stockroom.Storage.Journals;

/// <summary>One line of the journal that does not hold.</summary>
internal sealed record BrokenLine(long Line, string Because);

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
            if (line.IsLast && (!line.IsEnded || line.Text.Span.Contains((byte)0)))
                TornBytes = line.Text.Length + (line.IsEnded ? 1 : 0);
            else
                Broken = new BrokenLine(number, e.Message);
            return false;
        }
    }
}
