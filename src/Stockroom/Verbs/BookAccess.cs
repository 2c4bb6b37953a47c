using System.CommandLine;
using System.Globalization;
using Stockroom.Book;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;
using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>Finds the book a verb is meant for and opens it.</summary>
internal static class BookAccess
{
    public const string Variable = "STOCKROOM_BOOK";

    public static Option<string?> BookOption()
    {
        var option = new Option<string?>("--book") { Description = "The book's folder; else STOCKROOM_BOOK, else one in your data folder", HelpName = "FOLDER" };
        option.Validators.Add(static result =>
        {
            if (result.Tokens is [{ Value: var folder }] && string.IsNullOrWhiteSpace(folder))
                result.AddError($"'{folder}' is not a folder; write --book FOLDER");
        });
        return option;
    }

    public static Option<bool> JsonOption() => new("--json") { Description = "Print one JSON document and nothing else" };

    public static Option<DateOnly?> AsOfOption() => new("--as-of") { Description = "The book as it was on that day", HelpName = "DATE", CustomParser = Dates.Parse };

    /// <summary>The folder that is meant, whether or not it is there.</summary>
    public static string FolderOf(string? named, Surroundings around) =>
        named ?? FromVariable(around) ?? Path.Combine(around.DataFolder, "stockroom.stockbook");

    /// <summary>Opens to read, a damaged book as far as it holds: that is told, and the exit code will be that of a refusal.</summary>
    public static StockBook Read(string? named, Surroundings around) => Seen(StockBookFolder.OpenDamaged(Existing(named, around)), around);

    /// <summary>Opens to read only if the whole book holds: for what leaves the house, such as exports and labels.</summary>
    public static StockBook ReadWhole(string? named, Surroundings around) => Seen(StockBookFolder.Open(Existing(named, around), readOnly: true, around.Clock), around);

    /// <summary>Opens for the screens: what they show first need not wait until all is verified.</summary>
    public static BookOnSight OnSight(string? named, Surroundings around)
    {
        var book = BookOnSight.Open(Existing(named, around));
        around.Seen.InUse.Add(book.Folder);
        return book;
    }

    public static StockBook Write(string? named, Surroundings around)
    {
        var book = Seen(StockBookFolder.Open(Existing(named, around), readOnly: false, around.Clock), around);
        around.Seen.InUse.Add(book.Folder);
        return book;
    }

    /// <summary>Opens to write, and makes an empty book first where nothing is there yet: a book begins with its first place.</summary>
    /// <param name="named">The folder as typed.</param>
    /// <param name="around">Streams and clock.</param>
    /// <param name="first">What is to be booked first: where an empty book would refuse it, none is made.</param>
    public static StockBook WriteOrMake(string? named, Surroundings around, Func<BookState, Transaction> first)
    {
        var folder = FolderOf(named, around);
        if (!IsNew(folder))
            return Write(named, around);
        var nothing = Ledger.Empty("");
        _ = nothing.Append(first(nothing.State), around.Clock.GetLocalNow());
        var book = around.Seen.Add(StockBookFolder.Create(folder, around.Clock));
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

    /// <summary>True where a book would have to be made first.</summary>
    public static bool IsNew(string folder) => !Path.Exists(folder) || IsEmptyFolder(folder);

    // What may not be looked into is not empty; opening it says why.
    private static bool IsEmptyFolder(string folder)
    {
        try
        {
            return Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static string? FromVariable(Surroundings around) => around.Variable(Variable) is { } folder && !string.IsNullOrWhiteSpace(folder) ? folder : null;

    private static string Existing(string? named, Surroundings around)
    {
        var folder = FolderOf(named, around);
        return Directory.Exists(folder) || named is not null || FromVariable(around) is not null
            ? folder
            : throw RefusedException.Input(string.Create(CultureInfo.InvariantCulture,
                $"there is no stock book at '{folder}' yet; name one with --book FOLDER, look at the demo with 'stockroom demo', or begin with 'stockroom place add'"));
    }

    private static StockBook Seen(StockBook book, Surroundings around)
    {
        around.Seen.Add(book);
        around.Seen.Tell(around.Error);
        return book;
    }
}
