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

    private readonly DurableStream _data;
    private readonly DurableStream _log;
    private readonly LiteEngine _engine;

    private LiteStore(DurableStream data, DurableStream log, LiteEngine engine)
    {
        _data = data;
        _log = log;
        _engine = engine;
    }

    /// <summary>Makes an empty store; the files must be new or empty.</summary>
    public static LiteStore Make(IDisk disk, string data, string log, BookIdentity identity)
    {
        var store = Start(disk.Open(data, Opening.WriteAlone), disk.Open(log, Opening.WriteAlone), readOnly: false);
        store._engine.Insert(Meta, [new BsonDocument { ["_id"] = MetaId, ["book"] = identity.Book, ["format"] = identity.Format }], BsonAutoId.Int64);
        store.Sync();
        return store;
    }

    /// <summary>Opens a store whose header was found to be LiteDB's.</summary>
    public static LiteStore Open(IDisk disk, BookFiles files, bool readOnly)
    {
        var data = disk.Open(files.Lite, readOnly ? Opening.Read : Opening.WriteAlone);
        try
        {
            if (readOnly && !disk.FileExists(files.LiteLog))
                return Start(data, new EmptyFile(), readOnly);
            return Start(data, disk.Open(files.LiteLog, readOnly ? Opening.Read : Opening.WriteAlone), readOnly);
        }
        catch
        {
            data.Dispose();
            throw;
        }
    }

    /// <summary>Identity of the book it belongs to; null if it says none.</summary>
    public string? Book
    {
        get
        {
            var document = Read(Meta).FirstOrDefault(d => d["_id"] == MetaId);
            return document?["book"] is { IsString: true } book ? book.AsString : null;
        }
    }

    /// <summary>All entries' documents, read to the end.</summary>
    public List<BsonDocument> Entries() => Read(EntryDocument.Collection);

    /// <summary>Stores a transaction's entries whole, durable when it returns.</summary>
    public void Insert(IEnumerable<(Entry Entry, string Text, string Hash)> entries)
    {
        _engine.Insert(EntryDocument.Collection, entries.Select(e => EntryDocument.Of(e.Entry, e.Text, e.Hash)), BsonAutoId.Int64);
        Sync();
    }

    public void Dispose()
    {
        try
        {
            _engine.Dispose();
            Sync();
        }
        finally
        {
            _data.Dispose();
            _log.Dispose();
        }
    }

    private static LiteStore Start(DiskFile dataFile, DiskFile logFile, bool readOnly)
    {
        var data = new DurableStream(dataFile);
        var log = new DurableStream(logFile) { After = data };
        data.After = log;
        try
        {
            var engine = new LiteEngine(new EngineSettings
            {
                DataStream = data,
                LogStream = log,
                Collation = Collation.Binary,
                ReadOnly = readOnly,
            });
            return new LiteStore(data, log, engine);
        }
        catch
        {
            data.Dispose();
            log.Dispose();
            throw;
        }
    }

    private void Sync()
    {
        _log.SyncIfDirty();
        _data.SyncIfDirty();
    }

    private List<BsonDocument> Read(string collection)
    {
        var documents = new List<BsonDocument>();
        using var reader = _engine.Query(collection, new Query());
        while (reader.Read())
            documents.Add(reader.Current.AsDocument);
        return documents;
    }
}
