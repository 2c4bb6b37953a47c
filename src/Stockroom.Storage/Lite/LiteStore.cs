using LiteDB;
using LiteDB.Engine;
using Stockroom.Book.Entries;
using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Lite;

/// <summary>The LiteDB file of a book, on streams of our own. It follows the journal and never leads.</summary>
internal sealed class LiteStore : IDisposable
{
    private const string Meta = "book";
    private const string MetaId = "identity";

    // Entries found by their number to try the upper levels of the index.
    private const int Sample = 100;

    // Entries looked for after each insertion, from the last on.
    private const int Newest = 4;

    // An engine that failed may hold a transaction whose finalizer throws and so ends the program: it is never collected.
    private static readonly List<LiteEngine> Failed = [];

    private readonly DurableStream _data;
    private readonly DurableStream _log;
    private readonly StoreFault _fault;
    private readonly LiteEngine _engine;

    private LiteStore(DurableStream data, DurableStream log, StoreFault fault, LiteEngine engine) =>
        (_data, _log, _fault, _engine) = (data, log, fault, engine);

    /// <summary>Makes an empty store; the files must be new or empty.</summary>
    /// <exception cref="IOException">The disk failed.</exception>
    public static LiteStore Make(IDisk disk, string data, string log, BookIdentity identity)
    {
        var store = Start(() => disk.Open(data, Opening.WriteAlone), () => disk.Open(log, Opening.WriteAlone), readOnly: false);
        store.Change(e => e.Insert(Meta, [new BsonDocument { ["_id"] = MetaId, ["book"] = identity.Book, ["format"] = identity.Format }], BsonAutoId.Int64));
        return store;
    }

    /// <summary>Opens a store whose header was found to be LiteDB's.</summary>
    /// <exception cref="IOException">The disk failed.</exception>
    public static LiteStore Open(IDisk disk, BookFiles files, bool readOnly)
    {
        var opening = readOnly ? Opening.Read : Opening.WriteAlone;
        return Start(
            () => disk.Open(files.Lite, opening),
            () => readOnly && !disk.FileExists(files.LiteLog) ? new EmptyFile() : disk.Open(files.LiteLog, opening),
            readOnly);
    }

    /// <summary>Identity of the book it belongs to; null if it says none.</summary>
    public string? ReadBook()
    {
        var document = Read(Meta, new Query()).FirstOrDefault(d => d["_id"] == MetaId);
        return document?["book"] is { IsString: true } book ? book.AsString : null;
    }

    /// <summary>All entries' documents, read to the end.</summary>
    public List<BsonDocument> ReadEntries() => Read(EntryDocument.Collection, new Query());

    /// <summary>Walks the index of the entries from the last to the first, and finds some of them by their number.</summary>
    /// <param name="count">Entries, numbered from 1, that were read in the other direction.</param>
    /// <exception cref="InvalidDataException">The index does not lead to all of them.</exception>
    public void CheckIndex(long count)
    {
        var expected = count;
        foreach (var number in Read(EntryDocument.Collection, new Query { OrderBy = "$._id", Order = Query.Descending, Select = "{_id: $._id}" }).Select(d => d["_id"].AsInt64))
        {
            if (number != expected--)
                throw new InvalidDataException($"its index leads to entry {number} where {expected + 1} belongs");
        }

        if (expected != 0)
            throw new InvalidDataException($"its index, walked backwards, ends at entry {expected + 1}");
        for (var i = 0L; i < Math.Min(count, Sample); i++)
        {
            var number = 1 + (i * (count - 1) / Math.Max(1, Math.Min(count, Sample) - 1));
            var query = new Query();
            query.Where.Add(BsonExpression.Create("$._id = @0", new BsonValue(number)));
            if (Read(EntryDocument.Collection, query) is not [var found] || found["_id"].AsInt64 != number)
                throw new InvalidDataException($"its index does not find entry {number}");
        }
    }

    /// <summary>Stores entries whole, durable when it returns.</summary>
    /// <exception cref="IOException">The disk failed.</exception>
    /// <exception cref="LiteException">LiteDB found its file damaged.</exception>
    /// <exception cref="InvalidDataException">LiteDB took them, and its index does not lead to them.</exception>
    public void Insert(IEnumerable<(Entry Entry, string Text, string Hash)> entries)
    {
        var last = 0L;
        Change(engine => engine.Insert(
            EntryDocument.Collection,
            entries.Select(e =>
            {
                last = e.Entry.Number;
                return EntryDocument.Of(e.Entry, e.Text, e.Hash);
            }),
            BsonAutoId.Int64));
        if (last > 0)
            CheckNewest(last);
    }

    // A damaged page of the collection may be sound enough to be written on, and lose its way from there.
    private void CheckNewest(long last)
    {
        var expected = last;
        foreach (var number in Read(EntryDocument.Collection, new Query { OrderBy = "$._id", Order = Query.Descending, Select = "{_id: $._id}", Limit = Newest }).Select(d => d["_id"].AsInt64))
        {
            if (number != expected--)
                throw new InvalidDataException($"its index leads to entry {number} where {expected + 1} belongs");
        }

        if (last - expected < Math.Min(Newest, last))
            throw new InvalidDataException($"its index, walked backwards, ends at entry {expected + 1}");
    }

    /// <summary>Closes it; what was acknowledged is in the journal, so a failure loses nothing.</summary>
    public void Dispose()
    {
        try
        {
            _engine.Dispose();
            _log.SyncIfDirty();
            _data.SyncIfDirty();
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Bury(_engine);
        }
        finally
        {
            _data.CloseFile();
            _log.CloseFile();
        }
    }

    private static LiteStore Start(Func<DiskFile> openData, Func<DiskFile> openLog, bool readOnly)
    {
        var fault = new StoreFault();
        var dataFile = openData();
        DiskFile? logFile = null;
        try
        {
            logFile = openLog();
            var data = new DurableStream(dataFile, fault);
            var log = new DurableStream(logFile, fault) { After = data };
            data.After = log;
            var engine = new LiteEngine(new EngineSettings { DataStream = data, LogStream = log, Collation = Collation.Binary, ReadOnly = readOnly });
            return new LiteStore(data, log, fault, engine);
        }
        catch (Exception)
        {
            // Whatever LiteDB makes of a failed write or read, the disk's own answer is the one to tell.
            dataFile.Dispose();
            logFile?.Dispose();
            fault.ThrowIfHappened();
            throw;
        }
    }

    private static void Bury(LiteEngine engine)
    {
        lock (Failed)
            Failed.Add(engine);
    }

    private void Change(Func<LiteEngine, int> change) => Use(engine =>
    {
        change(engine);
        _log.SyncIfDirty();
        _data.SyncIfDirty();
        return true;
    });

    private List<BsonDocument> Read(string collection, Query query) => Use(engine =>
    {
        var documents = new List<BsonDocument>();
        using var reader = engine.Query(collection, query);
        while (reader.Read())
            documents.Add(reader.Current.AsDocument);
        return documents;
    });

    private T Use<T>(Func<LiteEngine, T> use)
    {
        try
        {
            _fault.ThrowIfHappened();
            var result = use(_engine);
            _fault.ThrowIfHappened();
            return result;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Bury(_engine);
            _fault.ThrowIfHappened();
            throw;
        }
    }
}
