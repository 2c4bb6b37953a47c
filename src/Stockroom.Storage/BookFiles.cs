namespace Stockroom.Storage;

/// <summary>What a book's folder holds.</summary>
internal sealed record BookFiles(string Folder)
{
    /// <summary>Format version, identity and day of making; written last, so that a folder with it is a whole book.</summary>
    public string Identity => Path.Combine(Folder, "book.json");

    /// <summary>The ledger as text: one line a transaction. The truth.</summary>
    public string Journal => Path.Combine(Folder, "journal.txt");

    /// <summary>What the keeper set for this book, such as when it is backed up; the book is whole without it.</summary>
    public string Settings => Path.Combine(Folder, "settings.json");

    /// <summary>What the book adds up to, for opening the screens fast; the book is whole without it.</summary>
    public string Snapshot => Path.Combine(Folder, "snapshot.txt");

    /// <summary>Folder of the files kept with containers, each named by the hash of its content.</summary>
    public string Attachments => Path.Combine(Folder, "attachments");

    public string Lite => Path.Combine(Folder, "book.litedb");

    public string LiteLog => Path.Combine(Folder, "book.litedb-log");

    /// <summary>Locked while a program has the book open; its mere presence means nothing.</summary>
    public string Lock => Path.Combine(Folder, "lock");

    /// <summary>Who holds the lock; stands apart because a locked file cannot be read everywhere.</summary>
    public string Holder => Path.Combine(Folder, "lock-holder.json");

    /// <summary>All files that the program itself keeps in the folder.</summary>
    public IReadOnlyList<string> Own => [Identity, Journal, Settings, Snapshot, Lite, LiteLog, Lock, Holder];
}
