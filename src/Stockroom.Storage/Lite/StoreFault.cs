using System.Runtime.ExceptionServices;

namespace Stockroom.Storage.Lite;

/// <summary>
/// Remembers that the disk failed under LiteDB. From then on nothing more reaches the files, and what was kept in memory
/// is not believed: the book is opened anew and follows its journal.
/// </summary>
internal sealed class StoreFault
{
    public Exception? Cause { get; private set; }

    public bool HasHappened => Cause is not null;

    public void Happened(Exception cause) => Cause ??= cause;

    /// <summary>Tells the caller what LiteDB was not told.</summary>
    /// <exception cref="IOException">The disk failed.</exception>
    public void ThrowIfHappened()
    {
        if (Cause is not null)
            ExceptionDispatchInfo.Throw(Cause);
    }
}

/// <summary>
/// Stands for a failed read inside LiteDB. An <see cref="IOException"/> there makes LiteDB 5.0.21 drop its open
/// transaction, whose finalizer then ends the whole program; any other exception makes it roll back in order.
/// </summary>
internal sealed class StoreReadException(Exception cause) : Exception("the disk failed while LiteDB read", cause);
