using System.Text;
using System.Text.Json;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Storage.Exports;

namespace Stockroom.Storage.Tests.Exports;

/// <summary>A book as one document and back: equal in every byte; anything wrong in it is named with its line.</summary>
public sealed class BookExportTests : IDisposable
{
    private readonly BookOnDisk _disk = new();
    private readonly string _parent = Directory.CreateTempSubdirectory("stockroom-exports-").FullName;
    private readonly string[] _lines;

    public BookExportTests()
    {
        _disk.MakeAndClose(4);
        using (var book = _disk.Open())
        {
            var id = book.Ledger.State.Present.First().Id;
            book.Append(new Transaction("Ada", new Corrected { HappenedAt = BookOnDisk.Now, Entry = 2, Reason = "slip", Changes = [new FieldChange("note", "ESC \u001B[2J, = and \"")] }));
            book.Append(book.Ledger.Undo("Ada", "not so", BookOnDisk.Now));
            book.Attach("Ada", new Attached { Container = id, HappenedAt = BookOnDisk.Now, Name = "a.txt", Sha256 = "", Bytes = 0, MediaType = "" }, "hello"u8.ToArray());
        }

        _lines = Encoding.UTF8.GetString(Export(_disk.Folder)).Split('\n');
    }

    private string New => Path.Combine(_parent, "new.stockbook");

    public void Dispose()
    {
        _disk.Dispose();
        Directory.Delete(_parent, recursive: true);
    }

    [Fact]
    public void Import_OfAnExport_IsTheSameBookInEveryByteAndOnEveryDay()
    {
        Assert.Equal(ImportEnd.Made, BookImport.Into(New, BookImport.Read(Document(_lines))));
        Assert.Equal(File.ReadAllBytes(_disk.Journal), File.ReadAllBytes(Path.Combine(New, "journal.txt")));
        Assert.Equal(File.ReadAllBytes(Path.Combine(_disk.Folder, "book.json")), File.ReadAllBytes(Path.Combine(New, "book.json")));
        Assert.Equal(_lines, Encoding.UTF8.GetString(Export(New)).Split('\n'));
        Assert.True(StockBookFolder.Verify(New).Holds);
        Assert.Equal("hello", File.ReadAllText(Assert.Single(Directory.GetFiles(Path.Combine(New, "attachments")))));
        using var from = StockBookFolder.Open(_disk.Folder, readOnly: true);
        using var to = StockBookFolder.Open(New, readOnly: true);
        foreach (var day in from.Ledger.Entries.Select(e => e.HappenedOn).Distinct().SelectMany(d => new[] { d.AddDays(-1), d, d.AddDays(1) }))
            Assert.Equal(from.Ledger.StateOn(day, day).Containers.Values.Select(c => (c.Id, c.NetGrams, c.PlaceId)).Order(), to.Ledger.StateOn(day, day).Containers.Values.Select(c => (c.Id, c.NetGrams, c.PlaceId)).Order());
    }

    [Fact]
    public void Import_WrittenAnotherWay_IsTheSameBook()
    {
        using var document = JsonDocument.Parse(Document(_lines));
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true }))
            document.RootElement.WriteTo(json);
        byte[] withMark = [0xEF, 0xBB, 0xBF, .. stream.ToArray()];
        BookImport.Into(New, BookImport.Read(withMark));
        Assert.Equal(File.ReadAllBytes(_disk.Journal), File.ReadAllBytes(Path.Combine(New, "journal.txt")));
    }

    [Fact]
    public void Import_IntoAnEmptyFolderOrABookWithoutEntries_MakesTheBook()
    {
        var exported = BookImport.Read(Document(_lines));
        Directory.CreateDirectory(New);
        Assert.Equal(ImportEnd.Made, BookImport.Into(New, exported));
        var empty = Path.Combine(_parent, "empty.stockbook");
        StockBookFolder.Create(empty).Dispose();
        Assert.Equal(ImportEnd.Made, BookImport.Into(empty, exported));
        Assert.Equal(Export(New), Export(empty));
        Assert.Equal(2, Directory.GetDirectories(_parent).Length);
    }

    [Theory]
    [InlineData("letter.txt")]
    [InlineData("settings.json")]
    public void Import_IntoABookWithoutEntriesThatHoldsMore_IsRefusedAndKeepsIt(string more)
    {
        var exported = BookImport.Read(Document(_lines));
        var empty = Path.Combine(_parent, "empty.stockbook");
        StockBookFolder.Create(empty).Dispose();
        File.WriteAllText(Path.Combine(empty, more), "Dear diary");
        var refusal = Assert.Throws<BookUnavailableException>(() => BookImport.Into(empty, exported));
        Assert.Contains($"holds '{more}' as well", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<BookUnavailableException>(() => BookImport.Check(empty, exported));
        Assert.Equal("Dear diary", File.ReadAllText(Path.Combine(empty, more)));
    }

    [Fact]
    public void Import_IntoABookWithoutEntriesThatAnotherHolds_IsRefused()
    {
        var exported = BookImport.Read(Document(_lines));
        var empty = Path.Combine(_parent, "empty.stockbook");
        using var held = StockBookFolder.Create(empty);
        Assert.Equal(BookFault.Locked, Assert.Throws<BookUnavailableException>(() => BookImport.Into(empty, exported)).Fault);
        Assert.True(Directory.Exists(empty));
    }

    [Fact]
    public void Import_IntoABookWithEntries_IsRefusedUnlessItIsThisBook()
    {
        using var other = new BookOnDisk();
        other.MakeAndClose(2);
        var exported = BookImport.Read(Document(_lines));
        var before = File.ReadAllBytes(other.Journal);
        Assert.Contains("is another book, with", Assert.Throws<BookUnavailableException>(() => BookImport.Into(other.Folder, exported)).Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(other.Journal));
        Assert.Equal(ImportEnd.AlreadyThere, BookImport.Into(_disk.Folder, exported));
        using (var book = _disk.Open())
            BookOnDisk.Receive(book);
        Assert.Contains("is the same book with", Assert.Throws<BookUnavailableException>(() => BookImport.Into(_disk.Folder, exported)).Message, StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(_parent, "x"), "");
        Assert.Throws<BookUnavailableException>(() => BookImport.Into(_parent, exported));
    }

    [Theory]
    [InlineData("\"net_g\":100", "\"net_g\":\"100\"", "entries[1]: 'net_g' is String, not Number")]
    [InlineData("\"net_g\":100", "\"net_g\":1e400", "entries[1]: 'net_g' cannot be read: 1e400")]
    [InlineData("\"net_g\":100", "\"nett_g\":100", "entries[1]: 'nett_g' is not a member this version knows")]
    [InlineData("\"net_g\":100", "\"net_g\":100,\"net_g\":100", "entries[1]: ")]
    [InlineData("\"orphan\":false,", "", "entries[1]: 'orphan' is missing")]
    [InlineData("\"lot\":{\"how\":\"made\"}", "\"lot\":{\"how\":\"stolen\"}", "entries[1]: 'stolen' is not how a lot comes to be")]
    [InlineData("\"lot\":{\"how\":\"made\"}", "\"lot\":{\"how\":\"made\",\"x\":1}", "entries[1]: 'lot.x' is not a member")]
    [InlineData("\"kind\":\"received\"", "\"kind\":\"recieved\"", "entries[1]: 'recieved' is not a kind of entry")]
    [InlineData("\"content\":\"", "\"content\":\"\\uD800", "entries[1]: 'content' cannot be read")]
    [InlineData("\"number\":2,", "\"number\":3,", "entries[1]: 'number' is 3 where 2 belongs")]
    [InlineData("\"transaction\":2,", "\"transaction\":4,", "entries[1]: 'transaction' is 4 where")]
    public void Import_OneEntryWrong_NamesItsLineAndMember(string was, string wrong, string says)
    {
        var at = Array.FindIndex(_lines, l => l.Contains("\"number\":2,", StringComparison.Ordinal));
        Assert.Contains(was, _lines[at], StringComparison.Ordinal);
        var fault = Assert.Single(Refused(With(at, _lines[at].Replace(was, wrong, StringComparison.Ordinal))).Faults);
        Assert.Equal(at + 1, fault.Line);
        Assert.StartsWith(says, fault.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Import_AnAmountAltered_IsFoundByTheEntryBehind()
    {
        var at = Array.FindIndex(_lines, l => l.Contains("\"number\":2,", StringComparison.Ordinal));
        var fault = Assert.Single(Refused(With(at, _lines[at].Replace("\"net_g\":100", "\"net_g\":10", StringComparison.Ordinal))).Faults);
        Assert.Equal((at + 2, true), (fault.Line, fault.Because.Contains("'previous' is not the hash of entry 2", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("  \"version\": 1,", "  \"version\": 2,", "'version' is not 1")]
    [InlineData("  \"format\": \"stockroom export\",", "  \"format\": \"x\",", "'format' is not 'stockroom export'")]
    [InlineData("  \"version\": 1,", "", "'version' is missing")]
    [InlineData("  \"version\": 1,", "  \"version\": 1, \"colour\": 2,", "'colour' is not a member of an export")]
    [InlineData("  \"version\": 1,", "  \"version\": 1,\n \"version\": 1,", "'version' stands twice")]
    [InlineData("  \"version\": 1,", "  \"version\": 1", "not JSON at byte")]
    public void Import_HeadWrong_NamesTheMember(string was, string wrong, string says) =>
        Assert.StartsWith(says, Assert.Single(Refused(Document([.. _lines.Select(l => l == was ? wrong : l)])).Faults).Because, StringComparison.Ordinal);

    [Fact]
    public void Import_LastEntryTakenOut_IsFoundByTheHead()
    {
        var last = Array.FindLastIndex(_lines, l => l.Contains("\"number\":", StringComparison.Ordinal));
        List<string> lines = [.. _lines];
        lines.RemoveAt(last);
        lines[last - 1] = lines[last - 1].TrimEnd(',');
        Assert.Contains("'head' is not the hash of the last entry", Refused(Document(lines)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Import_AttachmentAltered_IsRefusedAndOneLeftOutIsTold()
    {
        var at = Array.FindIndex(_lines, l => l.Contains("\"content\":\"aGVsbG8=\"", StringComparison.Ordinal));
        Assert.Contains("attachments[0]: 'content' does not fit 'sha256'", Refused(With(at, _lines[at].Replace("aGVsbG8=", "aGVsbGA=", StringComparison.Ordinal))).Message, StringComparison.Ordinal);
        Assert.Single(BookImport.Read(With(at, "")).MissingAttachments);
    }

    [Fact]
    public void Import_NotUtf8_NamesTheByte()
    {
        var bytes = Document(_lines);
        var at = bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes("ö"));
        bytes[at + 1] = (byte)'x';
        var fault = Assert.Single(Refused(bytes).Faults);
        Assert.Contains("(0xC3) is not UTF-8", fault.Because, StringComparison.Ordinal);
        Assert.Equal(bytes.AsSpan(0, at).Count((byte)'\n') + 1, fault.Line);
        Assert.Contains("is UTF-16", Refused(Encoding.Unicode.GetPreamble()).Message, StringComparison.Ordinal);
    }

    private DocumentException Refused(byte[] document)
    {
        var e = Assert.Throws<DocumentException>(() => BookImport.Read(document));
        Assert.All(e.Faults, f => Assert.DoesNotContain('\n', f.Because));
        return e;
    }

    private byte[] With(int at, string line) => Document([.. _lines.Select((l, i) => i == at ? line : l)]);

    private static byte[] Document(IEnumerable<string> lines) => Encoding.UTF8.GetBytes(string.Join('\n', lines));

    private static byte[] Export(string folder)
    {
        using var book = StockBookFolder.Open(folder, readOnly: true);
        return BookExport.Of(book).Document;
    }
}
