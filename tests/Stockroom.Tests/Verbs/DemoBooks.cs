using System.Collections.Concurrent;
using Stockroom.Tests.Verbs;

[assembly: AssemblyFixture(typeof(DemoBooks))]

namespace Stockroom.Tests.Verbs;

/// <summary>Books made once by the verbs, the demo of a day and a small one, and copied for each test that wants one.</summary>
public sealed class DemoBooks : IDisposable
{
    private static readonly ConcurrentDictionary<DateOnly, Lazy<(Keeper Keeper, Answer Report)>> Made = new();

    private static readonly Lazy<Keeper> Small = new(() =>
    {
        var keeper = new Keeper();
        keeper.Run("place", "add", "store", "--kind", "room", "--mean", "20");
        keeper.Run("place", "add", "left cabinet", "--kind", "cabinet", "--inside", "store", "--id", "left").Done();
        keeper.Run("place", "add", "left shelf", "--kind", "shelf", "--inside", "left", "--id", "left-shelf").Done();
        keeper.Run("place", "add", "right cabinet", "--kind", "cabinet", "--inside", "store", "--id", "right").Done();
        keeper.Run("place", "add", "right shelf", "--kind", "shelf", "--inside", "right", "--id", "right-shelf").Done();
        return keeper;
    });

    /// <summary>What "demo --report" printed on that day.</summary>
    internal static Answer Report(DateOnly today) => Of(today).Report;

    internal static void CopyTo(string folder, DateOnly today) => Copy(Of(today).Keeper.Book, folder);

    internal static void CopySmallTo(string folder) => Copy(Small.Value.Book, folder);

    public void Dispose()
    {
        foreach (var made in Made.Values)
            made.Value.Keeper.Dispose();
        if (Small.IsValueCreated)
            Small.Value.Dispose();
    }

    private static void Copy(string book, string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var file in Directory.EnumerateFiles(book))
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
    }

    private static (Keeper Keeper, Answer Report) Of(DateOnly today) => Made.GetOrAdd(today, day => new(() =>
    {
        var keeper = new Keeper(day);
        return (keeper, keeper.Run("demo", "--report", "--book", keeper.Book));
    })).Value;
}
