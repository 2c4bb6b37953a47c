using LiteDB;
using LiteDB.Engine;
using Stockroom.Storage.Disks;

namespace Stockroom.Endurance.Tests.Plain;

/// <summary>LiteDB by itself with the same kind of documents a book keeps, for comparison.</summary>
internal sealed class PlainStore : IDisposable
{
    public const string Data = "/plain/book.litedb";
    public const string Log = "/plain/book.litedb-log";

    // An engine that failed may end the program when it is collected, so none ever is.
    private static readonly List<LiteEngine> Kept = [];

    private readonly DiskFile _data;
    private readonly DiskFile _log;
    private readonly LiteEngine _engine;

    /// <summary>Opens or makes a store in a folder of a disk.</summary>
    public PlainStore(IDisk disk, string folder = "/plain")
    {
        _data = disk.Open(Path.Combine(folder, "book.litedb"), Opening.WriteAlone);
        _log = disk.Open(Path.Combine(folder, "book.litedb-log"), Opening.WriteAlone);
        _engine = new LiteEngine(new EngineSettings
        {
            DataStream = new PlainStream(_data),
            LogStream = new PlainStream(_log),
            Collation = Collation.Binary,
        });
        lock (Kept)
            Kept.Add(_engine);
    }

    public static string Text(int number) => $"{number} " + new string((char)('a' + (number % 26)), 300 + (number * 37 % 900));

    public void Insert(int number) =>
        _engine.Insert("entries", [new BsonDocument { ["_id"] = number, ["kind"] = "weighed", ["text"] = Text(number) }], BsonAutoId.Int32);

    public List<BsonDocument> Read()
    {
        var documents = new List<BsonDocument>();
        using var reader = _engine.Query("entries", new Query());
        while (reader.Read())
            documents.Add(reader.Current.AsDocument);
        return documents;
    }

    public void Dispose()
    {
        try
        {
            _engine.Dispose();
        }
        finally
        {
            _data.Dispose();
            _log.Dispose();
        }
    }

    /// <summary>What a store answers: "whole" with that many documents or one more, "refused", or "wrong in silence".</summary>
    public static string Answer(IDisk left, int acknowledged, string folder = "/plain")
    {
        try
        {
            using var store = new PlainStore(left, folder);
            var documents = store.Read().OrderBy(d => d["_id"]).ToList();
            var right = documents.Select((d, i) => d["_id"] == i + 1 && d["kind"] == "weighed" && d["text"] == Text(i + 1) && d.Count == 3).All(r => r);
            return right && (documents.Count == acknowledged || documents.Count == acknowledged + 1) ? "whole" : "wrong in silence";
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return "refused with an exception";
        }
    }
}
