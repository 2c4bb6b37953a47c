using System.CommandLine;
using System.Globalization;
using Stockroom.Book;
using Stockroom.Book.Places;
using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>Finds the book a verb is meant for and opens it.</summary>
internal static class BookAccess
{
    public const string Variable = "STOCKROOM_BOOK";

    public static Option<string?> BookOption() => new("--book") { Description = "The book's folder; else STOCKROOM_BOOK, else one in your data folder", HelpName = "FOLDER" };

    public static Option<bool> JsonOption() => new("--json") { Description = "Print one JSON document and nothing else" };

    public static Option<DateOnly?> AsOfOption() => new("--as-of") { Description = "The book as it was on that day", HelpName = "DATE", CustomParser = Dates.Parse };

    /// <summary>The folder that is meant, whether or not it is there.</summary>
    public static string FolderOf(string? named, Surroundings around) =>
        named ?? around.Variable(Variable) ?? Path.Combine(around.DataFolder, "stockroom.stockbook");

    public static StockBook Read(string? named, Surroundings around) => Open(named, around, readOnly: true);

    public static StockBook Write(string? named, Surroundings around) => Open(named, around, readOnly: false);

    /// <summary>Opens to write, and makes an empty book first where nothing is there yet: a book begins with its first place.</summary>
    public static StockBook WriteOrMake(string? named, Surroundings around)
    {
        var folder = FolderOf(named, around);
        if (Path.Exists(folder))
            return Open(named, around, readOnly: false);
        var book = StockBookFolder.Create(folder, around.Clock);
        around.Error.WriteLine($"stockroom: a new, empty book was made in '{folder}'");
        return book;
    }

    /// <summary>A container's id as typed, spoken or scanned.</summary>
    public static ContainerId Id(string typed)
    {
        var text = typed.Trim();
        if (text.StartsWith("STOCKROOM:", StringComparison.OrdinalIgnoreCase))
            text = text["STOCKROOM:".Length..].Split('\n', '\r', ' ')[0];
        return ContainerId.Parse(text);
    }

    /// <summary>Room first: "prep room &gt; acid cabinet &gt; lower shelf".</summary>
    public static string PathWords(BookState state, string placeId) => string.Join(" > ", state.PathTo(placeId).Select(p => p.Name));

    public static Place Place(BookState state, string words) => state.FindPlace(words);

    private static StockBook Open(string? named, Surroundings around, bool readOnly)
    {
        var folder = FolderOf(named, around);
        if (!Directory.Exists(folder) && named is null && around.Variable(Variable) is null)
        {
            throw RefusedException.Input(string.Create(CultureInfo.InvariantCulture,
                $"there is no stock book at '{folder}' yet; name one with --book FOLDER, look at the demo with 'stockroom demo', or begin with 'stockroom place add'"));
        }

        var book = StockBookFolder.Open(folder, readOnly, around.Clock);
        foreach (var message in book.Messages)
            around.Error.WriteLine("stockroom: " + message);
        return book;
    }
}
