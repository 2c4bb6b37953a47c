using System.Text;
using Stockroom.Tests.Verbs;

namespace Stockroom.Tests.Imports;

/// <summary>A keeper's list, taken whole or not at all; every bad row by its line and reason.</summary>
public sealed class CsvImportTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithSmallBook();

    public void Dispose() => _keeper.Dispose();

    [Fact]
    public void Import_AsASpreadsheetHasIt_BooksEveryRow()
    {
        var answer = Import("\uFEFFChemical;Volume (mL);Location;Date received;Remarks;Vendor\r\nacetone;250;left shelf;2024-02-29;\"half; full\";a shop\r\n;;;;;\r\nNaCl;1.5 kg;STORE > right cabinet > right shelf;;;\r\n");
        answer.Done();
        Assert.Equal((2, 2, 0), (answer.Json.GetProperty("rows").GetInt32(), answer.Json.GetProperty("booked").GetInt32(), answer.Json.GetProperty("refused").GetArrayLength()));
        var acetone = Show(_keeper.IdOf("acetone"));
        Assert.Equal(("250 mL", "left-shelf", "2024-02-29"), (acetone.GetProperty("quantity").GetString(), acetone.GetProperty("place").GetString(), acetone.GetProperty("received").GetString()));
        Assert.InRange(acetone.GetProperty("net_g").GetDouble(), 197, 198); // CRC Handbook: 0.7900 g/mL at 20 C
        Assert.Equal((1500.0, "2026-06-15"), (Show(_keeper.IdOf("sodium chloride")).GetProperty("net_g").GetDouble(), Show(_keeper.IdOf("sodium chloride")).GetProperty("received").GetString()));
        var entries = _keeper.Run("ledger", "--json").Done().Json.GetProperty("entries").EnumerateArray().TakeLast(2).ToList();
        Assert.Equal("half; full", entries[0].GetProperty("entry").GetProperty("note").GetString());
        Assert.Equal("a shop", entries[0].GetProperty("entry").GetProperty("lot").GetProperty("supplier").GetString());
        Assert.Single(entries.Select(e => e.GetProperty("transaction").GetInt64()).Distinct());
    }

    [Theory]
    [InlineData("content,amount,place\nacetone,20 mL,left-shelf\nbrommine,1 g,left-shelf\n", 3, "'brommine' is not in the catalogue; nearest: bromine")]
    [InlineData("content,amount,place\nacetone,20,left-shelf\n", 2, "column amount: '20' has no unit")]
    [InlineData("content,amount,place\nacetone,\"1,5 kg\",left-shelf\n", 2, "the decimal sign is a point: 1.5 kg")]
    [InlineData("content,amount,place\nacetone,20 mL,left-shelv\n", 2, "there is no place 'left-shelv' in this book; nearest: left-shelf")]
    [InlineData("content,amount,place\nacetone,20 mL,\n", 2, "column place: is empty")]
    [InlineData("content,place,received\nacetone,left-shelf,31.03.2025\n", 2, "column received: '31.03.2025' is not a day; write for example 2025-03-31")]
    [InlineData("content,place,received\nacetone,left-shelf,2025-02-30\n", 2, "column received: '2025-02-30' is not a day")]
    [InlineData("content,place,received\nacetone,left-shelf,2031-01-01\n", 2, "2031-01-01 lies in the future")]
    [InlineData("content,place,received,opened\nacetone,left-shelf,2025-02-02,2025-02-01\n", 2, "cannot be opened on 2025-02-01")]
    [InlineData("content,place,vessel\nacetone,left-shelf,bucket\n", 2, "'bucket' is not a vessel that can be named")]
    [InlineData("content,place,net_g\nacetone,left-shelf,\"1,000\"\n", 2, "column net_g: '1,000' is not a number; write a decimal point")]
    [InlineData("content,place,net_g\nacetone,left-shelf,0\n", 2, "0 g is nothing to receive")]
    [InlineData("content,place,net_g\nacetone,left-shelf,-5\n", 2, "-5 g")]
    [InlineData("content,place,lot\nacetone,left-shelf,stolen\n", 2, "'stolen' is not how a lot comes to be")]
    [InlineData("content,place\n,left-shelf\n", 2, "column content: is empty")]
    [InlineData("content,place\norphan,left-shelf\n", 2, "an orphan needs what is seen on it")]
    [InlineData("id,content,place\nK4T7X,acetone,left-shelf\n", 2, "'K4T7X' is a mistyped container's id")]
    [InlineData("id,content,place\nHHHHH,acetone,left-shelf\n", 2, "HHHHH")]
    [InlineData("content,place\nacetone,left-shelf,more\n", 2, "the row has 3 cells where the header has 2 columns")]
    [InlineData("content,place\n\nacetone,left-shelf\n\"ace\u001Btone\",left-shelf\n", 4, "column content: holds the control character U+001B")]
    [InlineData("content,place\nacetone,left-shelf\n\"bromine,left-shelf\n", 3, "the quotes of this row do not pair")]
    [InlineData("content,place\nacetone,left\"-shelf\n", 2, "the quotes of this row do not pair")]
    [InlineData("content,place\n\"acetone\" x,left-shelf\n", 2, "the quotes of this row do not pair")]
    [InlineData("content\nacetone\n", 2, "column place: is empty")]
    [InlineData("amount,place\n1 g,left-shelf\n", 1, "no column stands for 'content'")]
    [InlineData("content,substance,place\na,b,c\n", 1, "the columns 'content' and 'substance' both stand for 'content'")]
    [InlineData("content,ammount,place\nacetone,1 g,left-shelf\n", 1, "the column 'ammount' is not known and looks like 'amount'")]
    [InlineData("", 1, "the file is empty")]
    [InlineData("content,place,composition\nmy brine,left-shelf,sodium chloride=60%; water=50%\n", 2, "%")]
    public void Import_OneRowWrong_IsRefusedByLineAndReasonAndChangesNothing(string csv, int line, string says)
    {
        var before = _keeper.BookBytes();
        var answer = Import(csv);
        Assert.Equal(3, answer.Code);
        var fault = Assert.Single(answer.Json.GetProperty("refused").EnumerateArray());
        Assert.Equal(line, fault.GetProperty("line").GetInt32());
        Assert.Contains(says, fault.GetProperty("because").GetString(), StringComparison.Ordinal);
        Assert.Equal(0, answer.Json.GetProperty("booked").GetInt32());
        Assert.Single(answer.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(before, _keeper.BookBytes());
    }

    [Fact]
    public void Import_ManyRowsWrong_NamesEach()
    {
        var before = _keeper.BookBytes();
        var answer = Run("content,amount,place\nacetone,20 mL,left-shelf\nbrommine,1 g,left-shelf\n\"two\nlines\",1 g,left-shelf\nwater,1 g,nowhere\n");
        Assert.Equal(3, answer.Code);
        Assert.Empty(answer.Out);
        var lines = answer.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(4, lines.Length);
        Assert.Contains("list.csv:3: 'brommine'", lines[0], StringComparison.Ordinal);
        Assert.Contains("list.csv:4: 'two\\u000Alines'", lines[1], StringComparison.Ordinal);
        Assert.Contains("list.csv:6: there is no place 'nowhere'", lines[2], StringComparison.Ordinal);
        Assert.Contains("nothing was booked: 3 of 4 rows", lines[3], StringComparison.Ordinal);
        Assert.Equal(before, _keeper.BookBytes());
    }

    [Fact]
    public void Import_DuplicateIds_AreRefusedByLine()
    {
        var id = _keeper.Add("water", "--place", "left-shelf");
        var answer = Import($"id,content,place\n{id},acetone,left-shelf\nCCCC3,acetone,left-shelf\n".Replace("CCCC3", NextId(), StringComparison.Ordinal) + $"{NextId()},bromine,left-shelf\n");
        Assert.Equal([(2, $"{id} is already in the book"), (4, $"column id: {NextId()} stands already on line 3")], answer.Json.GetProperty("refused").EnumerateArray().Select(f => (f.GetProperty("line").GetInt32(), f.GetProperty("because").GetString()!)));
    }

    [Fact]
    public void Import_DryRun_SaysWhatWouldBeBookedAndWritesNothing()
    {
        var before = _keeper.BookBytes();
        var said = Run("content,amount,place\nacetone,20 mL,left-shelf\n", "--dry-run").Done();
        Assert.Contains("would be received: acetone, 20 mL, put in left-shelf", said.OutLines[0], StringComparison.Ordinal);
        Assert.Equal("1 rows would be booked in 1 entries; nothing was written", said.OutLines[1]);
        var json = Import("content,amount,place\nacetone,20 mL,left-shelf\n", "--dry-run").Done().Json;
        Assert.Equal((1, 0, 1), (json.GetProperty("rows").GetInt32(), json.GetProperty("booked").GetInt32(), json.GetProperty("would_book").GetInt32()));
        Assert.Equal(before, _keeper.BookBytes());
        var none = Path.Combine(_keeper.Folder, "none.stockbook");
        Run("name,kind\nhall,room\n", "--dry-run", "--book", none).Done();
        Assert.False(Directory.Exists(none));
    }

    [Fact]
    public void Import_WithAMapping_TakesTheColumnsThatAreSaid()
    {
        Import("Was,Wo,Wieviel,Farbe\nacetone,left-shelf,20 mL,clear\n", "--map", "Was=content", "Wo=place", "Wieviel=quantity", "--map", "Farbe=note").Done();
        Assert.Equal("20 mL", Show(_keeper.IdOf("acetone")).GetProperty("quantity").GetString());
        File.WriteAllText(Path.Combine(_keeper.Folder, "list.csv"), "Was,Wo,Wieviel,Farbe\nwater,left-shelf,20 mL,clear\n");
        Assert.Equal(0, _keeper.Run("import", "--map", "Was=content", "Wo=place", "Wieviel=quantity", "Farbe=-", Path.Combine(_keeper.Folder, "list.csv")).Code);
        Assert.Contains("there is no column 'Who'", Import("Was,Wo\nacetone,left-shelf\n", "--map", "Who=content").Json.GetProperty("refused")[0].GetProperty("because").GetString(), StringComparison.Ordinal);
        Assert.Contains("'contents' is not a field to map 'Was' to, nearest: content", Import("Was,Wo\nacetone,left-shelf\n", "--map", "Was=contents").Json.GetProperty("refused")[0].GetProperty("because").GetString(), StringComparison.Ordinal);
        Assert.Contains("is not COLUMN=FIELD", Run("a\n", "--map", "Was").Refused(2), StringComparison.Ordinal);
    }

    [Fact]
    public void Import_ColumnNoFieldIsKnownFor_IsToldAndLeftOut()
    {
        var answer = Run("content,place,Colour,Price\nacetone,left-shelf,clear,12\n");
        Assert.Equal(0, answer.Code);
        Assert.Contains("not used, for no field is known for it: 'Colour', 'Price'", answer.ErrorLine, StringComparison.Ordinal);
    }

    [Fact]
    public void Import_ManyColumnsNoFieldIsKnownFor_NamesTheFirstAndCountsTheRest()
    {
        var answer = Run($"content,place,{string.Join(',', Enumerable.Range(0, 500).Select(n => $"z{n}"))}\nacetone,left-shelf\n");
        Assert.Equal(0, answer.Code);
        Assert.Contains("'z11' and 488 more; say", answer.ErrorLine, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Volume (oz)")]
    [InlineData("Amount [pcs]")]
    public void Import_AmountInAUnitThatIsNotKnown_IsRefusedUnlessItIsLeftOut(string header)
    {
        Assert.Contains($"the unit of the column '{header}' is not known", Import($"content,place,{header}\nacetone,left-shelf,20\n").Json.GetProperty("refused")[0].GetProperty("because").GetString(), StringComparison.Ordinal);
        Import($"content,place,{header}\nacetone,left-shelf,20\n", "--map", $"{header}=-").Done();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Import_Utf16WithoutAMark_IsNamed(bool bigEndian)
    {
        var file = Path.Combine(_keeper.Folder, "wide.csv");
        File.WriteAllBytes(file, new System.Text.UnicodeEncoding(bigEndian, byteOrderMark: false).GetBytes("content,place\nacetone,left-shelf\n"));
        Assert.Contains("the file is UTF-16", _keeper.Run("import", file).Refused(3), StringComparison.Ordinal);
    }

    [Fact]
    public void Import_OrphanOnlyWhereItIsStated()
    {
        Assert.Contains("booked with the word 'orphan'", Import("content,place,orphan\nbrown sludge,left-shelf,\n").Json.GetProperty("refused")[0].GetProperty("because").GetString(), StringComparison.Ordinal);
        Import("content,place,orphan,seen\nbrown sludge,left-shelf,yes,\norphan: green crystals,left-shelf,,\n").Done();
        var all = _keeper.Run("list", "--json").Done().Json.GetProperty("containers").EnumerateArray().ToList();
        Assert.Equal(["brown sludge", "green crystals"], all.Where(c => c.GetProperty("orphan").GetBoolean()).Select(c => c.GetProperty("content").GetString()!).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Import_Places_InAnyOrder_AreSetUp()
    {
        var book = Path.Combine(_keeper.Folder, "new.stockbook");
        var made = Run("name,id,kind,inside,min_c,max_c\ntop shelf,top,shelf,cab,,\ncabinet,cab,acid cabinet,hall,5,20\nhall,,room,,,\n", "--book", book);
        Assert.Equal(0, made.Code);
        Assert.Contains("a new, empty book was made", made.ErrorLine, StringComparison.Ordinal);
        var places = _keeper.Run("places", "--json", "--book", book).Done().Json.GetProperty("places").EnumerateArray().Select(p => p.GetProperty("id").GetString()).Order(StringComparer.Ordinal);
        Assert.Equal(["cab", "hall", "top"], places);
        Assert.Contains("'cellar' is not a kind of place", Run("name,kind\nx,cellar\n", "--book", book).Refused(3), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("content,place\nacetone,left-shelf\nBr\u00FCne,left-shelf\n", 3, "byte 3 of the line (0xFC) is not UTF-8")]
    public void Import_NotUtf8_NamesLineAndByte(string text, int line, string says)
    {
        var file = Path.Combine(_keeper.Folder, "latin.csv");
        File.WriteAllBytes(file, Encoding.Latin1.GetBytes(text));
        var said = _keeper.Run("import", file).Refused(3);
        Assert.Contains($"latin.csv:{line}: {says}", said, StringComparison.Ordinal);
        File.WriteAllBytes(file, [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(text)]);
        Assert.Contains("is UTF-16; save it as UTF-8", _keeper.Run("import", file).Refused(3), StringComparison.Ordinal);
    }

    [Fact]
    public void Import_TooLargeOrTooLong_IsRefusedInOneLine()
    {
        Assert.Contains("at most 10000000", Run(new string('x', 10_000_001)).Refused(3), StringComparison.Ordinal);
        Assert.Contains("at most 20000 are imported at once", Run("content,place\n" + string.Concat(Enumerable.Repeat("x,y\n", 20_001))).Refused(3), StringComparison.Ordinal);
        Assert.Contains("at most 300", Run($"content,place,supplier\nacetone,left-shelf,{new string('x', 301)}\n").Refused(3), StringComparison.Ordinal);
        Assert.Contains("at most 2000", Run($"content,place,note\nacetone,left-shelf,{new string('x', 5000)}\n").Refused(3), StringComparison.Ordinal);
        Run($"content,place,supplier,note\nacetone,left-shelf,{new string('x', 200)},{new string('x', 2000)}\n").Done();
    }

    [Fact]
    public void Import_WrongWordsOrNoFile_AreRefused()
    {
        _keeper.Run("import", "list.xlsx").Refused(2);
        _keeper.Run("import", Path.Combine(_keeper.Folder, "none.csv")).Refused(3);
        _keeper.Run("import", _keeper.Folder + ".csv").Refused(3);
        _keeper.Run("import").Refused(2);
    }

    private string NextId()
    {
        using var book = Storage.StockBookFolder.Open(_keeper.Book, readOnly: true);
        return book.Ledger.State.NewId().ToString();
    }

    private Answer Import(string csv, params string[] words) => Run(csv, [.. words, "--json"]);

    private Answer Run(string csv, params string[] words)
    {
        var file = Path.Combine(_keeper.Folder, "list.csv");
        File.WriteAllText(file, csv, new UTF8Encoding(false));
        return _keeper.Run(["import", file, .. words]);
    }

    private System.Text.Json.JsonElement Show(string id) => _keeper.Run("show", id, "--json").Done().Json;
}
