using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Storage.Tests.Disks;

namespace Stockroom.Storage.Tests.Journals;

public sealed class JournalTests
{
    [Fact]
    public void Journal_EachLine_IsTheSha256OfItsTextAndTheTextAsPlainToolsSeeIt()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var lines = File.ReadAllText(disk.Journal).Split('\n');
        Assert.Equal(7, lines.Length);
        Assert.Equal("", lines[^1]);
        foreach (var line in lines[..^1])
        {
            Assert.Equal(line[..64], Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(line[65..]))));
            Assert.Contains(line, lines);
        }

        for (var i = 1; i < lines.Length - 1; i++)
            Assert.Contains($"\"previous\":\"{lines[i - 1][..64]}\"", lines[i], StringComparison.Ordinal);
    }

    [Fact]
    public void Journal_CheckedWithSha256sum_Agrees()
    {
        if (!OperatingSystem.IsLinux())
            return;
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        using var shell = Process.Start(new ProcessStartInfo("sh", ["-c", "tail -n 1 \"$0\" | cut -c 66- | tr -d '\\n' | sha256sum", disk.Journal]) { RedirectStandardOutput = true })!;
        var answer = shell.StandardOutput.ReadToEnd();
        Assert.Equal(File.ReadAllLines(disk.Journal)[^1][..64], answer[..64]);
    }

    [Fact]
    public void Open_AnyByteOfTheJournalAltered_IsRefusedWithTheNumberOfItsLine()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose(transactions: 3);
        var whole = File.ReadAllBytes(disk.Journal);
        var before = disk.Bytes();
        for (var at = 0; at < whole.Length; at++)
        {
            var altered = (byte[])whole.Clone();
            altered[at] ^= 0x01;
            File.WriteAllBytes(disk.Journal, altered);
            var line = whole.AsSpan(0, at).Count((byte)'\n') + 1;
            var refusal = disk.Refused();
            Assert.Equal(BookFault.Damaged, refusal.Fault);
            Assert.True(
                refusal.Message.Contains($"line {line} ", StringComparison.Ordinal) || at == whole.Length - 1,
                $"byte {at} of line {line}: {refusal.Message}");
            Assert.Equal(altered, File.ReadAllBytes(disk.Journal));
            Assert.Equal(before[disk.Lite], File.ReadAllBytes(disk.Lite));
            if (at % 40 == 0)
                Assert.False(StockBookFolder.Verify(disk.Folder).Holds);
        }
    }

    [Fact]
    public void Open_AnyLineTakenOutDoubledOrSwapped_IsRefused()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose(transactions: 5);
        var lines = File.ReadAllLines(disk.Journal).ToList();
        for (var i = 0; i < lines.Count; i++)
        {
            AssertRefused(disk, [.. lines[..i], .. lines[(i + 1)..]]);
            AssertRefused(disk, [.. lines[..i], lines[i], .. lines[i..]]);
            if (i > 0)
                AssertRefused(disk, [.. lines[..(i - 1)], lines[i], lines[i - 1], .. lines[(i + 1)..]]);
        }
    }

    [Fact]
    public void Open_ALineRewrittenWithAFittingHash_IsRefusedAtTheNextLine()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose(transactions: 4);
        var lines = File.ReadAllLines(disk.Journal);
        var text = lines[1][65..].Replace("\"net_g\":100", "\"net_g\":900", StringComparison.Ordinal);
        Assert.NotEqual(lines[1][65..], text);
        lines[1] = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text))) + " " + text;
        File.WriteAllText(disk.Journal, string.Join('\n', lines) + "\n");
        // The second entry of the altered line still names the first one's old hash.
        Assert.Contains("line 2 ", disk.Refused().Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_ALastEntryRewrittenWithFittingHashes_IsRefusedBecauseLiteDbKnowsBetter()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose(transactions: 4);
        var lines = File.ReadAllLines(disk.Journal);
        var text = lines[^1][65..].Replace("\"gross_g\":150.25", "\"gross_g\":150.24", StringComparison.Ordinal);
        Assert.NotEqual(lines[^1][65..], text);
        lines[^1] = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text))) + " " + text;
        File.WriteAllText(disk.Journal, string.Join('\n', lines) + "\n");
        Assert.Contains("entry 7 in the LiteDB file is not the journal's", disk.Refused().Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_AfterAKillAtAnyByteOfTheLastLine_IsBeforeOrAfterAndNeverBetween()
    {
        using var disk = new BookOnDisk();
        Dictionary<string, byte[]> before;
        string headBefore, headAfter;
        using (var book = disk.Make(new RehearsedDisk()))
        {
            BookOnDisk.Receive(book);
            (before, headBefore) = (disk.Bytes(), book.Ledger.HeadHash);
            BookOnDisk.Receive(book, "iodine");
            headAfter = book.Ledger.HeadHash;
        }

        var whole = File.ReadAllBytes(disk.Journal);
        for (var length = before[disk.Journal].Length; length <= whole.Length; length++)
        {
            disk.PutBack(before);
            File.WriteAllBytes(disk.Journal, whole[..length]);
            using (var book = disk.OpenOn(new RehearsedDisk { SkipsSyncs = true }))
            {
                var isAfter = length >= whole.Length - 1;
                Assert.Equal(isAfter ? headAfter : headBefore, book.Ledger.HeadHash);
                var told = string.Join('\n', book.Messages);
                Assert.Equal(length > before[disk.Journal].Length && !isAfter, told.Contains("cut short", StringComparison.Ordinal));
                Assert.Equal(isAfter, told.Contains("replayed", StringComparison.Ordinal));
                if (length % 40 != 0 && !isAfter)
                    continue;
                Assert.True(book.Verify().Holds);
                BookOnDisk.Receive(book, "mercury");
            }

            using var again = disk.Open();
            Assert.Empty(again.Messages);
        }
    }

    [Fact]
    public void Open_AJournalOfAnotherBook_IsRefused()
    {
        using var disk = new BookOnDisk();
        using var other = new BookOnDisk();
        disk.MakeAndClose();
        other.MakeAndClose();
        File.Copy(other.Journal, disk.Journal, overwrite: true);
        Assert.Contains("line 1 ", disk.Refused().Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_WithoutAJournal_IsDamagedAndMakesNone()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.Delete(disk.Journal);
        Assert.Equal(BookFault.Damaged, disk.Refused().Fault);
        Assert.False(File.Exists(disk.Journal));
    }

    [Fact]
    public void Open_ALineLongerThanAnyBuffer_IsReadWhole()
    {
        using var disk = new BookOnDisk();
        using (var book = disk.Make())
        {
            var id = BookOnDisk.Receive(book);
            for (var i = 0; i < 12; i++)
            {
                var note = new Marked { HappenedAt = BookOnDisk.Now, Container = id, Note = new string((char)('a' + i), 1_999) };
                book.Append(new Transaction("Ada", [.. Enumerable.Repeat(note, 40 + i)]));
            }
        }

        Assert.Contains(File.ReadLines(disk.Journal), l => l.Length > 100_000);
        using var again = disk.Open();
        Assert.Equal(13, again.Ledger.LastTransaction - 1);
    }

    private static void AssertRefused(BookOnDisk disk, List<string> lines)
    {
        var kept = File.ReadAllText(disk.Journal);
        File.WriteAllText(disk.Journal, string.Concat(lines.Select(l => l + "\n")));
        Assert.Equal(BookFault.Damaged, disk.Refused().Fault);
        File.WriteAllText(disk.Journal, kept);
        disk.Open().Dispose();
    }
}
