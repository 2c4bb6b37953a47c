using LiteDB;
using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Storage.Attachments;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;
using Stockroom.Storage.Lite;
using Stockroom.Storage.Snapshots;

namespace Stockroom.Storage;

/// <summary>
/// An open book. A transaction is one line of the journal: written, synced, put into LiteDB, and only then acknowledged.
/// Safe to use from several threads; one writes at a time.
/// </summary>
public sealed class StockBook : IStockBook, IDisposable
{
    private const string ClockVariable = "STOCKROOM_CLOCK";
    private const string ClockIsRight = "right";

    // Clocks are put right by seconds all the time; changes of offset do not matter, times are compared as instants.
    private static readonly TimeSpan Tolerance = TimeSpan.FromHours(1);

    private readonly Lock _gate = new();
    private readonly IDisk _disk;
    private readonly BookFiles _files;
    private readonly JournalFile? _journal;
    private readonly LiteStore? _lite;
    private readonly TimeProvider _clock;
    private readonly IReadOnlyList<IDisposable> _held;
    private readonly List<string> _messages;
    private readonly SnapshotFile? _snapshot;
    private readonly AttachmentFiles _attachments;

    private volatile Ledger _ledger;
    private string _lineHash;
    private string? _stopped;
    private int _taken;
    private bool _isClockTold;

    internal StockBook(
        IDisk disk,
        BookFiles files,
        BookIdentity identity,
        JournalFile? journal,
        LiteStore? lite,
        JournalChain chain,
        List<string> messages,
        TimeProvider clock,
        IReadOnlyList<IDisposable> held)
    {
        (_disk, _files, Identity, _journal, _lite, _messages, _clock, _held) = (disk, files, identity, journal, lite, messages, clock, held);
        _attachments = new AttachmentFiles(disk, files);
        _ledger = Ledger.Of(identity.GenesisHash, chain.Entries);
        _lineHash = chain.LineHash;
        if (_ledger.HeadHash != chain.EntryHash)
            throw BookUnavailableException.DoesNotHold(files.Folder, "its last entry is not in canonical form");
        if (journal is null)
            return;
        _snapshot = new SnapshotFile(disk, files, identity);
        Tell(_snapshot.Check());
    }

    public BookIdentity Identity { get; }

    public string Folder => _files.Folder;

    public bool IsReadOnly => _journal is null;

    public Ledger Ledger => _ledger;

    /// <summary>What does not hold of a damaged book that was opened to read, a line each; empty if it holds.</summary>
    public IReadOnlyList<string> Damage { get; internal init; } = [];

    /// <summary>What the keeper should be told: on opening, and after a fault that lost nothing. A line each.</summary>
    public IReadOnlyList<string> Messages
    {
        get
        {
            lock (_gate)
                return [.. _messages];
        }
    }

    /// <summary>Those of the messages that were not taken before, for telling each once.</summary>
    public IReadOnlyList<string> TakeNews()
    {
        lock (_gate)
        {
            var news = _messages[_taken..];
            _taken = _messages.Count;
            return news;
        }
    }

    /// <inheritdoc/>
    /// <exception cref="BookUnavailableException">It cannot be made durable; nothing was booked.</exception>
    public IReadOnlyList<Entry> Append(Transaction transaction)
    {
        lock (_gate)
        {
            if (_journal is not { } journal)
                throw new BookUnavailableException(BookFault.ReadOnly, $"the book '{Folder}' is open to read only; open it to write");
            if (_stopped is not null)
                throw new BookUnavailableException(BookFault.Disk, $"nothing more can be booked in '{Folder}' before it is opened anew: {_stopped}");
            CheckJournal(journal);
            var booking = _ledger.Append(transaction, TimeOfBooking());
            var (bytes, hash) = JournalLine.Encode(booking.Transaction, _lineHash, booking.Entries, booking.Texts);
            Write(journal, bytes);
            (_ledger, _lineHash) = (booking.After, hash);
            Follow(booking);
            if (_snapshot!.IsDueAfter(booking.Entries.Count))
                Tell(_snapshot.Keep(_ledger, _lineHash));
            return booking.Entries;
        }
    }

    /// <summary>Keeps a file with a container: its content is on the medium before the entry that names it is booked.</summary>
    /// <param name="by">Who books it.</param>
    /// <param name="draft">Container, day, note and the name as given; name, hash, length and media type are put in.</param>
    /// <param name="content">1 to <see cref="Attached.MostBytes"/> bytes.</param>
    /// <exception cref="BookRefusal">It cannot be booked; nothing has changed.</exception>
    /// <exception cref="BookUnavailableException">The disk refuses, or the attachments would grow beyond what a backup takes.</exception>
    public IReadOnlyList<Entry> Attach(string by, Attached draft, byte[] content)
    {
        lock (_gate)
        {
            var transaction = new Transaction(by, BookAttachments.Described(draft, content));
            _ = _ledger.Append(transaction, _clock.GetLocalNow());
            if (IsReadOnly)
                return Append(transaction);
            BookAttachments.CheckRoom(_ledger, content.Length);
            StockBookFolder.Guarded($"nothing was attached in '{Folder}'", () => _attachments.Put(AttachmentFiles.HashOf(content), content));
            return Append(transaction);
        }
    }

    /// <summary>True if an attachment is there and fits its hash.</summary>
    public bool HasAttachment(string sha256) => _attachments.IsSound(sha256);

    /// <summary>The content of an attachment, checked against its hash.</summary>
    /// <exception cref="BookUnavailableException">It is missing or altered.</exception>
    public byte[] ReadAttachment(string sha256) => _attachments.Read(sha256);

    /// <summary>Checks everything that is kept against what the open book says.</summary>
    public VerificationReport Verify()
    {
        lock (_gate)
            return _journal is { } journal && _lite is { } lite ? BookVerification.OfOpen(journal, lite, Identity, _ledger, _attachments) : BookVerification.OfFolder(_disk, Folder);
    }

    /// <summary>Lets go of the book.</summary>
    public void Dispose()
    {
        lock (_gate)
        {
            if (_stopped is null)
                Tell(_snapshot?.Keep(_ledger, _lineHash));
            _stopped ??= "it was closed";
            foreach (var thing in _held)
                Release(thing);
        }
    }

    // A folder that was moved or whose disk is gone can still be written through files that are open, and nobody would
    // ever read what went there.
    private void CheckJournal(JournalFile journal)
    {
        journal.Mend();
        if (journal.IsBroken)
            throw new BookUnavailableException(BookFault.Disk, $"nothing was booked in '{Folder}': what a failed write left in the journal cannot be taken off yet; try again when the disk works, or open the book anew");
        var there = StockBookFolder.Guarded($"nothing was booked in '{Folder}'", () => _disk.LengthOf(_files.Journal));
        if (there is null)
            throw new BookUnavailableException(BookFault.Disk, $"nothing was booked in '{Folder}': its journal is gone; the folder was moved or taken away, or its disk is not there; it goes on when that is back");
        if (there != journal.Length)
            throw new BookUnavailableException(BookFault.Disk, $"nothing was booked in '{Folder}': its journal has {there} bytes where {journal.Length} were left; another program wrote into it, open the book anew");
    }

    // An entry booked before the one it follows would make "the book as it was known on a day" a lie: a clock a little
    // behind gives the last entry's time, one far behind is refused until the keeper says that it is right.
    private DateTimeOffset TimeOfBooking()
    {
        var now = _clock.GetLocalNow();
        if (_ledger.Entries is not [.., var last] || now >= last.RecordedAt)
            return now;
        var behind = $"the clock says {now:yyyy-MM-dd HH:mm}, but entry {last.Number} was booked on {last.RecordedAt:yyyy-MM-dd HH:mm}";
        if (now >= last.RecordedAt - Tolerance)
        {
            TellOfClock($"{behind}; until it has caught up, entries carry the time of that one");
            return last.RecordedAt.ToOffset(now.Offset);
        }

        if (Environment.GetEnvironmentVariable(ClockVariable) != ClockIsRight)
            throw new BookUnavailableException(BookFault.Clock, $"nothing was booked in '{Folder}': {behind}; set the clock right, or, if it was wrong then, set {ClockVariable}={ClockIsRight}");
        TellOfClock($"{behind}; {ClockVariable}={ClockIsRight}: the times of booking go back here");
        return now;
    }

    private void TellOfClock(string message)
    {
        if (!_isClockTold)
            _messages.Add(message);
        _isClockTold = true;
    }

    private void Write(JournalFile journal, byte[] line)
    {
        try
        {
            journal.Append(line);
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            throw DiskFaults.Explain(e, journal.IsBroken
                ? $"it cannot be told whether transaction {_ledger.LastTransaction + 1} was booked in '{Folder}', look at its ledger when the disk works again"
                : $"nothing was booked in '{Folder}'");
        }
    }

    // The journal has it, so it is booked, whatever LiteDB says; what LiteDB lacks is replayed on the next opening.
    private void Follow(Booking booking)
    {
        try
        {
            _lite!.Insert(booking.Entries.Zip(booking.Texts, (entry, text) => (entry, text, Stockroom.Book.Encoding.EntryCodec.HashOf(text))));
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            _stopped = $"transaction {booking.Transaction} is safe in the journal, but LiteDB could not take it ({DiskFaults.OneLine(e.Message)})";
            _messages.Add(_stopped);
        }
    }

    private void Tell(string? message)
    {
        if (message is not null)
            _messages.Add(message);
    }

    private void Release(IDisposable thing)
    {
        try
        {
            thing.Dispose();
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e) || e is LiteException)
        {
            _messages.Add($"closing '{Folder}': {DiskFaults.OneLine(e.Message)}; what LiteDB lacks is replayed on the next opening");
        }
    }
}
