using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Storage.Attachments;

/// <summary>What holds for all attachments of a book together, and how one is described.</summary>
public static class BookAttachments
{
    /// <summary>Most bytes of all attachments of one book: 1,000 MB, so that a backup fits in memory.</summary>
    public const long MostBytesTogether = 1_000_000_000;

    private const int LongestName = 200;

    /// <summary>The entry with what its content says of itself.</summary>
    internal static Attached Described(Attached draft, byte[] content)
    {
        var name = CleanName(draft.Name);
        return draft with { Name = name, Sha256 = AttachmentFiles.HashOf(content), Bytes = content.Length, MediaType = MediaTypes.Of(content, name) };
    }

    /// <summary>A file's name without folders, control characters and signs that steer the direction of text; at most 200 characters.</summary>
    public static string CleanName(string given)
    {
        var name = given[(given.LastIndexOfAny(['/', '\\']) + 1)..];
        var plain = string.Concat(name.EnumerateRunes()
            .Where(r => System.Text.Rune.GetUnicodeCategory(r) is not (System.Globalization.UnicodeCategory.Control or System.Globalization.UnicodeCategory.Format
                or System.Globalization.UnicodeCategory.LineSeparator or System.Globalization.UnicodeCategory.ParagraphSeparator))
            .Select(r => r.ToString())).Trim();
        if (plain.Length <= LongestName)
            return plain.Length > 0 ? plain : "file";
        var ending = Path.GetExtension(plain) is { Length: < 20 } extension ? extension : "";
        var end = LongestName - ending.Length;
        return plain[..(char.IsHighSurrogate(plain[end - 1]) ? end - 1 : end)] + ending;
    }

    /// <summary>Refuses what would make the attachments too large to be backed up.</summary>
    /// <exception cref="BookUnavailableException">One more of that length is too much.</exception>
    internal static void CheckRoom(Ledger ledger, long bytes)
    {
        var there = AttachmentFiles.NamedBy(ledger.Entries).Values.Sum(a => a.Bytes);
        if (there + bytes > MostBytesTogether)
            throw new BookUnavailableException(BookFault.DiskFull, $"nothing was attached: the attachments of this book have {there} bytes and one of {bytes} more would pass {MostBytesTogether}; keep large files elsewhere and attach a smaller copy");
    }
}
