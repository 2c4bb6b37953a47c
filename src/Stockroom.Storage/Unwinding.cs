namespace Stockroom.Storage;

/// <summary>What was taken hold of on the way to an open book; let go in reverse unless the book was reached.</summary>
internal sealed class Unwinding : IDisposable
{
    private readonly Stack<IDisposable> _held = new();
    private bool _isDone;

    /// <summary>All that is held, the last first.</summary>
    public IReadOnlyList<IDisposable> Held => [.. _held];

    public T Hold<T>(T thing)
        where T : IDisposable
    {
        _held.Push(thing);
        return thing;
    }

    /// <summary>Hands everything held over to the book.</summary>
    public T Done<T>(T book)
    {
        _isDone = true;
        return book;
    }

    public void Dispose()
    {
        if (_isDone)
            return;
        while (_held.TryPop(out var thing))
            thing.Dispose();
    }
}
