using LiteDB;
using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;
using Stockroom.Storage.Lite;

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

    private volatile Ledger _ledger;
    private string _lineHash;
    private string? _stopped;

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
        _ledger = Ledger.Of(identity.GenesisHash, chain.Entries);
        _lineHash = chain.LineHash;
        if (_ledger.HeadHash != chain.EntryHash)
            throw new BookUnavailableException(BookFault.Damaged, $"the book '{files.Folder}' does not hold: its last entry is not in canonical form");
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
            var now = _clock.GetLocalNow();
            CheckClock(now);
            var booking = _ledger.Append(transaction, now);
            var (bytes, hash) = JournalLine.Encode(booking.Transaction, _lineHash, booking.Entries, booking.Texts);
            Write(journal, bytes);
            (_ledger, _lineHash) = (booking.After, hash);
            Follow(booking);
            return booking.Entries;
        }
    }

    /// <summary>Checks everything that is kept against what the open book says.</summary>
    public VerificationReport Verify()
    {
        lock (_gate)
            return _journal is { } journal && _lite is { } lite ? BookVerification.OfOpen(journal, lite, Identity, _ledger) : BookVerification.OfFolder(_disk, Folder);
    }

    /// <summary>Lets go of the book.</summary>
    public void Dispose()
    {
        lock (_gate)
        {
            _stopped ??= "it was closed";
            foreach (var thing in _held)
                Release(thing);
        }
    }

    // An entry booked before the one it follows would make "the book as it was known on a day" a lie.
    private void CheckClock(DateTimeOffset now)
    {
        if (_ledger.Entries is [.., var last] && now < last.RecordedAt - Tolerance && Environment.GetEnvironmentVariable(ClockVariable) != ClockIsRight)
        {
            throw new BookUnavailableException(
                BookFault.Clock,
                $"nothing was booked in '{Folder}': the clock says {now:yyyy-MM-dd HH:mm}, but entry {last.Number} was booked on {last.RecordedAt:yyyy-MM-dd HH:mm}; set the clock right, or, if it was wrong then, set {ClockVariable}={ClockIsRight}");
        }
    }

    private void Write(JournalFile journal, byte[] line)
    {
        try
        {
            journal.Append(line);
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            if (journal.IsBroken)
                _stopped = "a failed write could not be taken back";
            throw DiskFaults.Explain(e, $"nothing was booked in '{Folder}'");
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
