using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Locks;

/// <summary>
/// Keeps a second writer out by a lock held on an open file (the system lets go of it when the program ends, however it
/// ends), and says beside it who holds it.
/// </summary>
internal sealed class BookLock : IDisposable
{
    private const int Tries = 20;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    // errno EAGAIN on Linux and on macOS; Windows ERROR_SHARING_VIOLATION and ERROR_LOCK_VIOLATION.
    private static readonly int[] Held = [11, 35, unchecked((int)0x80070020), unchecked((int)0x80070021)];

    private readonly DiskFile _file;

    private BookLock(DiskFile file) => _file = file;

    /// <summary>Takes the lock to write; waits about a second for another to let go.</summary>
    /// <exception cref="BookUnavailableException">Another program holds it; the message says which.</exception>
    public static BookLock TakeAlone(IDisk disk, BookFiles files, TimeProvider clock)
    {
        var file = Open(disk, files);
        try
        {
            LockHolder.Here(clock).Write(disk, files);
            return new BookLock(file);
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>Keeps writers out while something is compared; null if one is at work, or the book has no lock file yet.</summary>
    public static BookLock? TryTakeShared(IDisk disk, BookFiles files)
    {
        try
        {
            return disk.FileExists(files.Lock) ? new BookLock(disk.Open(files.Lock, Opening.ReadStill)) : null;
        }
        catch (IOException e) when (Held.Contains(e.HResult))
        {
            return null;
        }
    }

    public void Dispose() => _file.Dispose();

    private static DiskFile Open(IDisk disk, BookFiles files)
    {
        for (var n = 1; ; n++)
        {
            try
            {
                return disk.Open(files.Lock, Opening.WriteAlone);
            }
            catch (IOException e) when (Held.Contains(e.HResult))
            {
                if (n == Tries)
                    throw new BookUnavailableException(BookFault.Locked, $"the book '{files.Folder}' is open in {LockHolder.Of(disk, files)}; close it there first", e);
                Thread.Sleep(Pause);
            }
        }
    }
}
