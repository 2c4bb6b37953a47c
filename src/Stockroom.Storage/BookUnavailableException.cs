namespace Stockroom.Storage;

/// <summary>Why a book cannot be opened, made or written.</summary>
public enum BookFault
{
    /// <summary>There is nothing at that path.</summary>
    Missing = 0,

    /// <summary>Something is there, and it is not a stock book; it was left as it is.</summary>
    NotABook,

    /// <summary>A new book would have to overwrite something.</summary>
    AlreadyThere,

    ReadOnly,

    /// <summary>Another program holds it.</summary>
    Locked,

    /// <summary>A newer version of the program wrote it.</summary>
    Newer,

    /// <summary>What is kept does not hold: altered, cut short, or unreadable.</summary>
    Damaged,

    DiskFull,

    /// <summary>The machine's clock was set back behind the last entry.</summary>
    Clock,

    /// <summary>A passphrase is missing or too short.</summary>
    Passphrase,

    /// <summary>Any other failure of the disk.</summary>
    Disk,
}

/// <summary>A book cannot be opened, made or written. The message is one line for the keeper.</summary>
public sealed class BookUnavailableException : Exception
{
    public BookUnavailableException(BookFault fault, string message, Exception? cause = null)
        : base(message, cause) => Fault = fault;

    /// <summary>What the keeper of a damaged book does next.</summary>
    internal const string WhatToDo = "'stockroom verify' names all that fails, 'stockroom repair NEW_FOLDER' saves what is sound";

    public BookFault Fault { get; }

    /// <summary>What is kept does not hold, and what to do about it.</summary>
    internal static BookUnavailableException DoesNotHold(string folder, string what) =>
        new(BookFault.Damaged, $"the book '{folder}' does not hold: {what}; {WhatToDo}");
}
