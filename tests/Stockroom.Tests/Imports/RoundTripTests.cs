using System.Text;
using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;
using Stockroom.Exports;
using Stockroom.Imports;
using Stockroom.Tests.Verbs;

namespace Stockroom.Tests.Imports;

/// <summary>What goes out comes in again: the demo as lists and as a document; formulas guarded on the way.</summary>
public sealed class RoundTripTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithDemo();

    public void Dispose() => _keeper.Dispose();

    [Fact]
    public void Csv_OfTheDemo_ImportsToAnEqualList()
    {
        var (csv, again) = (InFolder("list.csv"), InFolder("again.csv"));
        _keeper.Run("export", csv).Done();
        var there = _keeper.Run("list", "--json").Done().Out;
        _keeper.Book = InFolder("new.stockbook");
        Assert.Equal(0, _keeper.Run("import", csv).Code);
        Assert.Equal(there, _keeper.Run("list", "--json").Done().Out);
        _keeper.Run("export", again).Done();
        Assert.Equal(File.ReadAllText(csv), File.ReadAllText(again));
        _keeper.Run("verify").Done();
    }

    [Fact]
    public void Csv_OfALeastStrengthAndASealing_ComesBack()
    {
        _keeper.Add("hydrochloric acid 37%", "--place", "acid-cabinet", "--amount", "5 mL", "--vessel", "glass ampoule 10 mL", "--closure", "flame seal", "--on", "2025-12-01", "--sealed", "2026-01-02", "--sealed-at", "-20", "--sealed-pressure", "0.875", "--least-strength", "30.5");
        Csv_OfTheDemo_ImportsToAnEqualList();
        var there = _keeper.Run("list", "--json").Done().Json.GetProperty("containers").EnumerateArray().Single(c => c.GetProperty("least_strength_percent").ValueKind == System.Text.Json.JsonValueKind.Number);
        Assert.Equal((30.5m, -20m, 0.875m), (there.GetProperty("least_strength_percent").GetDecimal(), there.GetProperty("sealed_at_c").GetDecimal(), there.GetProperty("sealed_pressure_bar").GetDecimal()));
    }

    [Fact]
    public void Csv_OfTheDemosPlaces_ImportsToEqualPlaces()
    {
        var (csv, again) = (InFolder("places.csv"), InFolder("again.csv"));
        _keeper.Run("export", csv, "--places").Done();
        _keeper.Book = InFolder("new.stockbook");
        Assert.Equal(0, _keeper.Run("import", csv).Code);
        _keeper.Run("export", again, "--places").Done();
        Assert.Equal(File.ReadAllText(csv), File.ReadAllText(again));
    }

    // A limit that is added to places and not to the list is found here.
    [Fact]
    public void Csv_OfAPlaceWithEveryLimit_ComesBackWhole()
    {
        var limits = new PlaceLimits
        {
            HeightMetres = 0.5m, Position = 3, MeanCelsius = 19.5m, MinCelsius = -2, MaxCelsius = 31, SwingKelvin = 4, SeasonalSwingKelvin = 12, WarmestMonth = 1, Light = PlaceLight.Window, LeakTight = false,
            MaxLoadKilograms = 80, MaxContainers = 12, MaxLitres = 40, MaxFlammableLitres = 0, AirChangesPerHour = 0.5m, HasDoor = true, IsLocked = false, IsWooden = true, IsNearHeat = false, IsForFlammables = true,
        };
        Assert.All(typeof(PlaceLimits).GetProperties().Where(p => !p.GetMethod!.IsStatic), p => Assert.True(p.GetValue(limits) is not null, p.Name));
        var made = new PlaceMade { Place = "cold", Name = "cold", PlaceKind = PlaceKind.Room, Limits = limits, Note = "=x", HappenedAt = _keeper.Clock.GetLocalNow() };
        var book = new MemoryStockBook(_keeper.Clock);
        book.Append(new Transaction("Ada", made));
        var outcome = new CsvImport(Ledger.Empty(""), "Ada", _keeper.Clock).Try(CsvExport.Places(book.Ledger.State), []);
        var back = Assert.IsType<PlaceMade>(Assert.Single(outcome.Entries));
        Assert.Equal((limits, "=x"), (back.Limits, back.Note));
    }

    [Fact]
    public void Json_OfTheDemo_ImportsToAnEqualBook()
    {
        var photo = InFolder("photo.png");
        File.WriteAllBytes(photo, [0x89, .. "PNG\r\n\u001A\n"u8, 1, 2, 3]);
        _keeper.Run("attach", "MM451", photo).Done();
        var (json, again, book) = (InFolder("book.json"), InFolder("again.json"), _keeper.Book);
        _keeper.Run("export", json).Done();
        var days = new[] { "2024-01-01", "2025-06-01", "2026-06-15" };
        var lists = days.Select(d => _keeper.Run("list", "--json", "--as-of", d).Done().Out).ToList();
        _keeper.Book = InFolder("new.stockbook");
        var dry = _keeper.Run("import", json, "--dry-run", "--json").Done().Json;
        Assert.False(Directory.Exists(_keeper.Book));
        var done = _keeper.Run("import", json, "--json").Done().Json;
        Assert.Equal((dry.GetProperty("rows").GetInt32(), 0, dry.GetProperty("rows").GetInt32()), (done.GetProperty("rows").GetInt32(), dry.GetProperty("booked").GetInt32(), done.GetProperty("booked").GetInt32()));
        Assert.Equal(lists, days.Select(d => _keeper.Run("list", "--json", "--as-of", d).Done().Out));
        _keeper.Run("export", again).Done();
        Assert.Equal(File.ReadAllBytes(json), File.ReadAllBytes(again));
        Assert.Equal(File.ReadAllBytes(Path.Combine(book, "journal.txt")), File.ReadAllBytes(Path.Combine(_keeper.Book, "journal.txt")));
        _keeper.Run("verify").Done();
        Assert.Contains("is already this book", _keeper.Run("import", json).Done().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_IntoABookWithEntries_IsRefusedAndChangesNothing()
    {
        var json = InFolder("book.json");
        _keeper.Run("export", json).Done();
        DemoBooks.CopySmallTo(_keeper.Book = InFolder("small.stockbook"));
        var before = _keeper.BookBytes();
        Assert.Contains("is another book, with 5 entries of its own", _keeper.Run("import", json).Refused(3), StringComparison.Ordinal);
        Assert.Equal(before, _keeper.BookBytes());
    }

    [Fact]
    public void Json_Altered_NamesFileLineAndMember()
    {
        var json = InFolder("book.json");
        _keeper.Run("export", json).Done();
        var lines = File.ReadAllLines(json);
        var at = Array.FindIndex(lines, l => l.Contains("\"orphan\":false", StringComparison.Ordinal));
        lines[at] = lines[at].Replace("\"orphan\":false", "\"orphan\":\"no\"", StringComparison.Ordinal);
        File.WriteAllLines(json, lines);
        _keeper.Book = InFolder("new.stockbook");
        Assert.Contains($"book.json:{at + 1}: entries[{at - 6}]: 'orphan' is String, not True", _keeper.Run("import", json).Refused(3), StringComparison.Ordinal);
        Assert.False(Directory.Exists(_keeper.Book));
    }

    // A cell that begins so is run by spreadsheets (OWASP, CSV injection; the full-width signs too); RFC 4180 quotes the rest.
    [Theory]
    [InlineData("=1+2", "'=1+2")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\r=1", "'\r=1")]
    [InlineData("\n=1", "'\n=1")]
    [InlineData("  =1", "'  =1")]
    [InlineData("＝1", "'＝1")]
    [InlineData("'=1", "''=1")]
    [InlineData("''x", "'''x")]
    [InlineData("'x", "''x")]
    [InlineData("'", "''")]
    [InlineData("plain - and = within", "plain - and = within")]
    public void Guard_AFormula_IsPutAndTakenAway(string text, string guarded)
    {
        Assert.Equal(guarded, FormulaGuard.Put(text));
        Assert.Equal(text, FormulaGuard.Take(guarded));
    }

    // What a keeper typed with an apostrophe of their own stays.
    [Theory]
    [InlineData("'twas")]
    [InlineData("x'=1")]
    public void Guard_TextThatWasNotGuarded_StaysAsItIs(string text) => Assert.Equal(text, FormulaGuard.Take(text));

    private string InFolder(string name) => Path.Combine(_keeper.Folder, name);
}
