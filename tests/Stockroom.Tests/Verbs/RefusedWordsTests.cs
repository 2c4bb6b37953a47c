namespace Stockroom.Tests.Verbs;

/// <summary>Words that are wrong: exit 2, one line that names the value and what would be right, and not a byte of the book changed.</summary>
public sealed class RefusedWordsTests
{
    private static readonly string LongName = new('x', 200);

    [Theory]
    [InlineData(2, "list", "--book", "")]
    [InlineData(2, "demo", "--report", "--book", " ")]
    [InlineData(3, "backup", "")]
    [InlineData(3, "repair", "")]
    [InlineData(3, "restore", "x", "")]
    [InlineData(2, "import", "")]
    [InlineData(2, "export", "")]
    [InlineData(3, "facts", "--each", "")]
    [InlineData(3, "classify", "--mix-file", "")]
    [InlineData(3, "backup", "x", "--encrypt", "--passphrase-file", "")]
    public void Name_OfAFileOrFolder_Blank_IsRefusedInOneLine(int code, params string[] typed)
    {
        using var keeper = Keeper.WithSmallBook();
        var before = keeper.BookBytes();
        keeper.Run(typed).Refused(code);
        Assert.Equal(before, keeper.BookBytes());
    }

    [Theory]
    [InlineData("'99999999999' is not a whole number of a size that can be for '--every'", "backup", "--to", "x", "--every", "99999999999")]
    [InlineData("one thing at a time", "backup", "x.stockbackup", "--due")]
    [InlineData("one thing at a time", "backup", "--to", "x", "--off")]
    public void Option_Wrong_IsRefusedWithoutNamesOfTypes(string words, params string[] typed) => AssertRefused(words, typed);

    [Fact]
    public void Export_OverTheBooksOwnFile_IsRefused()
    {
        using var keeper = Keeper.WithSmallBook();
        var before = keeper.BookBytes();
        Assert.Contains("is a file of the book itself", keeper.Run("export", Path.Combine(keeper.Book, "book.json")).Refused(2), StringComparison.Ordinal);
        Assert.Equal(before, keeper.BookBytes());
    }

    [Theory]
    [InlineData("place", "add", "x", "--kind", "palace")]
    [InlineData("place", "add", "x", "--kind", "shelf", "--inside", "nowhere")]
    public void Place_FirstOfABookAndRefused_MakesNoBook(params string[] typed)
    {
        using var keeper = new Keeper();
        keeper.Run(typed).Refused(2);
        Assert.False(Path.Exists(keeper.Book));
        Directory.CreateDirectory(keeper.Book);
        Assert.Equal(0, keeper.Run("place", "add", "x", "--kind", "room").Code);
    }

    [Theory]
    [InlineData("'MM452' is a mistyped container's id: its check character", "show", "MM452")]
    [InlineData("'M0O51' is not a container's id: 'O' never stands in one", "show", "M0O51")]
    [InlineData("'MM4' is not a container's id: it has 3 characters", "show", "MM4")]
    [InlineData("an id has 5", "weigh", "MM45111111", "20")]
    [InlineData("there is no container MM451 in this book", "show", "MM451")]
    [InlineData("there is no container MM451 in this book", "move", "MM451", "left")]
    [InlineData("there is no container MM451 in this book", "weigh", "MM451", "20")]
    [InlineData("there is no container MM451 in this book", "ledger", "MM451")]
    [InlineData("there is no container MM451 in this book", "forecast", "MM451")]
    public void Id_Wrong_IsRefused(string words, params string[] typed) => AssertRefused(words, typed);

    [Theory]
    [InlineData("'acetonne' is not in the catalogue; nearest: acetone", "acetonne")]
    [InlineData("nearest: hydrochloric acid", "hydrocloric acid")]
    [InlineData("nearest: bromine", "brommine")]
    [InlineData("nearest: potassium", "potasium")]
    [InlineData("'orphan' and what is seen on it", "grandfather's green stuff")]
    [InlineData("'orphan' and what is seen on it", "unknown")]
    [InlineData("an orphan needs what is seen on it", "orphan")]
    public void Content_Misspelt_IsRefusedWithTheNearestOffered(string words, string content)
    {
        AssertRefused(words, "add", content, "--place", "left-shelf", "--amount", "1 g");
        using var keeper = new Keeper();
        if (content != "orphan")
            Assert.Contains("not in the catalogue", keeper.Run("facts", content).Refused(2), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("'-5 g' must be above zero", "--amount", "-5 g")]
    [InlineData("'0 g' must be above zero", "--amount", "0 g")]
    [InlineData("'5' has no unit; write for example 5 g or 5 mL", "--amount", "5")]
    [InlineData("is not an amount", "--amount", "NaN g")]
    [InlineData("is not an amount", "--amount", "99999999999999999999999999999999999999 g")]
    [InlineData("more than any stock holds", "--amount", "9999999999999999 g")]
    [InlineData("a gross mass of -1 g must be above zero", "--gross", "-1")]
    [InlineData("a gross mass of 0 g must be above zero", "--gross", "0")]
    [InlineData("'1e400' is not a gross mass in grams", "--gross", "1e400")]
    [InlineData("a tare of -2 g must be above zero", "--tare", "-2")]
    [InlineData("'many' is not the depth of a cover; write for example water:40 mm", "--cover", "water:many")]
    [InlineData("'-3 mm' is not the depth of a cover", "--cover", "water:-3 mm")]
    [InlineData("a cover 99999999 mm deep cannot be", "--cover", "water:99999999 mm")]
    [InlineData("is not a vessel that can be named; nearest: glass vial", "--vessel", "glas vial 20 mL")]
    [InlineData("is not a closure that can be named; nearest: flame seal", "--closure", "flame seel")]
    [InlineData("'2026-13-01' is not a date; write for example 2026-03-31", "--on", "2026-13-01")]
    [InlineData("'2026-02-29' is not a date", "--on", "2026-02-29")]
    [InlineData("'yesterday' is not a date", "--on", "yesterday")]
    [InlineData("1700-01-01 cannot be; the book begins in 1800", "--on", "1700-01-01")]
    [InlineData("2999-12-31 lies in the future; today is 2026-06-15", "--on", "2999-12-31")]
    [InlineData("it was received on 2026-06-15", "--opened", "2020-01-01")]
    [InlineData("Unrecognized command or argument '--colour'", "--colour", "red")]
    public void Add_WrongOption_IsRefused(string words, string option, string value) =>
        AssertRefused(words, "add", "acetone", "--place", "left-shelf", option, value);

    [Fact]
    public void Add_MoreThanTheVesselHolds_IsRefused() => AssertRefused(
        "more than one glass vial 4 mL holds", "add", "acetone", "--place", "left-shelf", "--amount", "400 mL", "--vessel", "glass vial 4 mL");

    [Fact]
    public void Add_MoreSolidThanTheVesselHolds_IsRefused() => AssertRefused(
        "1 kg of gold is about 52 mL, more than one glass vial 20 mL holds", "add", "gold", "--place", "left-shelf", "--amount", "1 kg", "--vessel", "glass vial 20 mL");

    [Fact]
    public void Add_ACoverDeeperThanTheVessel_IsRefused() => AssertRefused(
        "1000 mm of water are about", "add", "bromine", "--place", "left-shelf", "--amount", "2 mL", "--vessel", "glass vial 20 mL", "--cover", "water:1000 mm");

    [Theory]
    [InlineData("1 kg of gold is about 52 mL, more than one glass vial 20 mL holds", "gold", "1 kg", "--days", "30")]
    [InlineData("1000 mm of water are about 491 mL, more than one glass vial 20 mL holds", "bromine", "2 mL", "--cover", "water:1000 mm")]
    [InlineData("a swing of -4 K cannot be; write 0 to 100", "bromine", "2 mL", "--swing", "-4")]
    [InlineData("a swing of 400 K cannot be; write 0 to 100", "bromine", "2 mL", "--seasonal-swing", "400")]
    public void Forecast_ThatCannotBe_IsRefused(string words, string content, string amount, string option, string value) =>
        AssertRefused(words, "forecast", "--content", content, "--amount", amount, "--vessel", "glass vial 20 mL", "--closure", "loose cap", option, value);

    [Fact]
    public void Add_PlaceThatIsNotThere_IsRefused() => AssertRefused("there is no place 'nowhere' in this book; 'stockroom places' lists them", "add", "acetone", "--place", "nowhere");

    [Fact]
    public void Add_NoPlace_IsAskedForOne() => AssertRefused("a place is needed: --place PLACE", "add", "acetone");

    [Theory]
    [InlineData("holds the control character U+0007", "--note", "bell\a")]
    [InlineData("holds the control character U+001B", "--by", "\u001b[31mred")]
    [InlineData("holds the control character U+000A", "--origin", "two\nlines")]
    [InlineData("holds the control character U+009B", "--packing", "can\u009b")]
    public void Add_ControlCharacter_IsRefusedAndNotPrinted(string words, string option, string value)
    {
        var line = AssertRefused(words, "add", "acetone", "--place", "left-shelf", option, value);
        Assert.DoesNotContain(line, char.IsControl);
    }

    [Fact]
    public void Add_ControlCharacterInTheName_IsRefused() => AssertRefused("U+0001", "add", "ace\u0001tone", "--place", "left-shelf");

    [Fact]
    public void Add_NameOf200Characters_IsRefusedInOneLine() => AssertRefused("is not in the catalogue", "add", LongName, "--place", "left-shelf");

    [Theory]
    [InlineData("'shelf', a shelf, must stand inside another place", "shelf", "--kind", "shelf")]
    [InlineData("cannot stand inside", "room two", "--kind", "room", "--inside", "left")]
    [InlineData("'attic' is not", "loft", "--kind", "attic")]
    [InlineData("cannot be; a temperature lies between", "loft", "--kind", "room", "--mean", "5000")]
    [InlineData("a swing of -3 K cannot be; write 0 to 100", "loft", "--kind", "room", "--swing", "-3")]
    [InlineData("'1e9' is not a temperature in degrees Celsius", "loft", "--kind", "room", "--mean", "1e9")]
    [InlineData("'two' is not an order", "loft", "--kind", "room", "--order", "two")]
    [InlineData("needs a name", "", "--kind", "room")]
    public void PlaceAdd_ThatCannotBe_IsRefused(string words, params string[] typed) => AssertRefused(words, ["place", "add", .. typed]);

    [Fact]
    public void PlaceLimit_ThatSaysNothing_IsRefused() => AssertRefused("nothing is said of the place", "place", "limit", "left");

    [Theory]
    [InlineData("'lisst' is not a verb. Nearest: list", "lisst")]
    [InlineData("a verb is needed")]
    [InlineData("two contents are needed", "pair", "acetone")]
    [InlineData("'class' is not a class table; it is one of: none, road, sea, storage", "pair", "acetone", "water", "--table", "class")]
    [InlineData("a name is needed", "facts")]
    [InlineData("lies between -273.15 and 5000", "facts", "water", "--at", "-300")]
    [InlineData("a container is needed", "forecast")]
    [InlineData("a forecast with no book needs --amount", "forecast", "--content", "acetone")]
    [InlineData("-80 to 200", "forecast", "--content", "acetone", "--amount", "1 g", "--vessel", "glass vial 4 mL", "--closure", "flame seal", "--temperature", "900")]
    [InlineData("'-1' is not a number of labels to skip", "label", "--content", "acetone", "--out", "x.pdf", "--skip", "-1")]
    [InlineData("a file is needed: --out FILE.pdf", "label", "--content", "acetone")]
    [InlineData("labels are written as .pdf", "label", "--content", "acetone", "--out", "x.docx")]
    [InlineData("'mars' is not an edition", "label", "--content", "acetone", "--out", "x.pdf", "--rules", "mars")]
    [InlineData("'.xlsx' is not a format of export", "export", "book.xlsx")]
    [InlineData("only '-' (standard input) can be read", "add", "--journal", "file.txt")]
    [InlineData("'x' is not the number of an entry", "correct", "x", "gross_g=1")]
    [InlineData("is not FIELD=VALUE", "correct", "1", "gross_g")]
    [InlineData("there is no entry 99 to correct", "correct", "99", "name=x")]
    [InlineData("'tcsh' is not a shell", "completions", "tcsh")]
    public void Words_Wrong_AreRefused(string words, params string[] typed)
    {
        AssertRefused(words, typed);
    }

    private static string AssertRefused(string words, params string[] typed)
    {
        using var keeper = Keeper.WithSmallBook();
        var before = File.ReadAllBytes(keeper.Journal);
        var line = keeper.Run(typed).Refused(2);
        Assert.Contains(words, line, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(keeper.Journal));
        keeper.Run("verify").Done();
        return line;
    }
}
