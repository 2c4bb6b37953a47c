using Stockroom.Book.Encoding;

namespace Stockroom.Book.Containers;

/// <summary>One part of a printed label, such as "place", and what stood there; empty where nothing did.</summary>
public sealed record LabelSaying(string Part, string Text)
{
    internal static LabelSaying Read(EntryReader r) => new(r.Text("part"), r.Text("text"));

    internal void Write(EntryWriter w)
    {
        w.Text("part", Part);
        w.Text("text", Text);
    }
}
