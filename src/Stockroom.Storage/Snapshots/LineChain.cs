using System.Globalization;
using System.Text;
using Stockroom.Storage.Journals;

namespace Stockroom.Storage.Snapshots;

/// <summary>
/// Follows a journal's chain of lines by its bytes alone: each line fits its hash and names the one before. Entries are
/// read only behind the snapshot.
/// </summary>
internal static class LineChain
{
    /// <summary>The chain from the snapshot on; null where the journal fails, or does not have the line the snapshot names.</summary>
    public static JournalChain? Follow(Stream journal, string genesisHash, Snapshot snapshot)
    {
        var lines = new LineReader(journal);
        var previous = genesisHash;
        for (var number = 1L; number <= snapshot.Transaction; number++)
        {
            if (lines.Next() is not { IsEnded: true } line || Hash(line.Text, number, previous) is not { } hash)
                return null;
            previous = hash;
        }

        return previous == snapshot.LineHash ? Tail(lines, JournalChain.From(snapshot)) : null;
    }

    private static JournalChain? Tail(LineReader lines, JournalChain chain)
    {
        try
        {
            while (lines.Next() is { } line)
                chain.Follow(JournalLine.Decode(line.Text));
            return chain;
        }
        catch (FormatException)
        {
            return null;
        }
    }

    private static string? Hash(ReadOnlyMemory<byte> line, long number, string previous)
    {
        const int Begin = JournalLine.HashLength + 1;
        if (line.Length <= Begin)
            return null;
        var hash = JournalLine.HashOf(line.Span[Begin..]);
        var begin = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{hash} {{\"transaction\":{number},\"previous\":\"{previous}\","));
        return line.Span.StartsWith(begin) ? hash : null;
    }
}
