using System.Collections.Frozen;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>One kind of entry: its word in the ledger and how it is read.</summary>
public sealed class EntryKind
{
    internal EntryKind(string word, Func<EntryReader, Entry> read)
    {
        Word = word;
        Read = read;
    }

    public string Word { get; }

    internal Func<EntryReader, Entry> Read { get; }
}

/// <summary>Every kind of entry there is.</summary>
public static class EntryKinds
{
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        new(PlaceMade.Word, PlaceMade.Read),
        new(PlaceLimited.Word, PlaceLimited.Read),
        new(ClassTableChosen.Word, ClassTableChosen.Read),
        new(SubstanceStated.Word, SubstanceStated.Read),
        new(Received.Word, Received.Read),
        new(Opened.Word, Opened.Read),
        new(Weighed.Word, Weighed.Read),
        new(Drawn.Word, Drawn.Read),
        new(Decanted.Word, Decanted.Read),
        new(Moved.Word, Moved.Read),
        new(Covered.Word, Covered.Read),
        new(Packed.Word, Packed.Read),
        new(Sealed.Word, Sealed.Read),
        new(Assayed.Word, Assayed.Read),
        new(Tested.Word, Tested.Read),
        new(Marked.Word, Marked.Read),
        new(Attached.Word, Attached.Read),
        new(LabelPrinted.Word, LabelPrinted.Read),
        new(Quenched.Word, Quenched.Read),
        new(Retired.Word, Retired.Read),
        new(Corrected.Word, Corrected.Read),
        new(Undone.Word, Undone.Read),
    ];

    private static readonly FrozenDictionary<string, EntryKind> ByWord = All.ToFrozenDictionary(k => k.Word, StringComparer.Ordinal);

    public static EntryKind? Find(string word) => ByWord.GetValueOrDefault(word);
}
