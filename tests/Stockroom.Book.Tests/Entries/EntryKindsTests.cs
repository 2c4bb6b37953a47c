using Stockroom.Book.Entries;

namespace Stockroom.Book.Tests.Entries;

public sealed class EntryKindsTests
{
    private static readonly List<Type> Types = typeof(Entry).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Entry)) && !t.IsAbstract).ToList();

    [Fact]
    public void All_EveryKindOfEntryInTheAssembly_IsRegisteredUnderItsWord()
    {
        Assert.NotEmpty(Types);
        var words = Types.Select(WordOf).ToList();
        Assert.Equal(words.Order(StringComparer.Ordinal), EntryKinds.All.Select(k => k.Word).Order(StringComparer.Ordinal));
        Assert.Equal(words.Count, words.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Kind_OfTheSamples_CoversEveryTypeAndIsItsWord()
    {
        var samples = EntrySamples.All().ToList();
        Assert.Equal(Types.Select(t => t.Name).Order(StringComparer.Ordinal), samples.Select(s => s.GetType().Name).Distinct().Order(StringComparer.Ordinal));
        Assert.All(samples, s => Assert.Equal(WordOf(s.GetType()), s.Kind));
    }

    private static string WordOf(Type type) => (string)type.GetField("Word")!.GetRawConstantValue()!;
}
