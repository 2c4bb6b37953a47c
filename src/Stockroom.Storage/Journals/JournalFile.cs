using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Journals;

/// <summary>The journal of an open book, written at its end only.</summary>
internal sealed class JournalFile(DiskFile file, long goodLength) : IDisposable
{
    private long _length = goodLength;

    /// <summary>Bytes of it that were written and synced.</summary>
    public long Length => _length;

    /// <summary>True if a failed write could not be taken back yet.</summary>
    public bool IsBroken { get; private set; }

    /// <summary>Appends a line and returns when it is on the medium. If that fails, the journal is as it was before.</summary>
    /// <exception cref="IOException">The disk refused; nothing was booked.</exception>
    public void Append(byte[] line)
    {
        try
        {
            file.Position = _length;
            file.Write(line);
            file.Sync();
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            TakeBack();
            throw;
        }

        _length += line.Length;
    }

    /// <summary>Tries again to take a failed write back.</summary>
    public void Mend()
    {
        if (!IsBroken)
            return;
        IsBroken = false;
        TakeBack();
    }

    /// <summary>Cuts off what a write cut short left behind the last whole line.</summary>
    public void CutTail()
    {
        if (file.Length == _length)
            return;
        file.SetLength(_length);
        file.Sync();
    }

    /// <summary>Reads it from the beginning.</summary>
    public JournalReading ReadAgain(string genesisHash)
    {
        file.Position = 0;
        return JournalReading.Of(file, genesisHash);
    }

    public void Dispose() => file.Dispose();

    private void TakeBack()
    {
        try
        {
            CutTail();
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            IsBroken = true;
        }
    }
}
