using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>A file was put with the container. The book keeps its content beside the ledger, under its hash.</summary>
public sealed record Attached : ContainerEntry
{
    public const string Word = "attached";

    /// <summary>Most bytes one file may have: 20 MB.</summary>
    public const long MostBytes = 20_000_000;

    private const int HashLength = 64;

    public override string Kind => Word;

    /// <summary>File name as given, without folders or control characters.</summary>
    public required string Name { get; init; }

    /// <summary>SHA-256 of the content, 64 lower-case hexadecimal digits.</summary>
    public required string Sha256 { get; init; }

    public required long Bytes { get; init; }

    public required string MediaType { get; init; }

    internal override bool AllowedWhenRetired => true;

    /// <summary>True for 64 lower-case hexadecimal digits.</summary>
    public static bool IsHash(string text) => text.Length == HashLength && text.All(char.IsAsciiHexDigitLower);

    internal static Attached Read(EntryReader r) => new()
    {
        Name = r.Text("name"),
        Sha256 = r.Text("sha256"),
        Bytes = r.Integer("bytes"),
        MediaType = r.Text("media_type"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("name", Name);
        w.Text("sha256", Sha256);
        w.Integer("bytes", Bytes);
        w.Text("media_type", MediaType);
    }

    private protected override void Check(BookState state, Container container)
    {
        Limits.Words(Container, "the name of the file attached", Name);
        Limits.Words(Container, "the media type of the file attached", MediaType);
        if (!IsHash(Sha256))
            throw new BookRefusal($"{Container}: '{Sha256}' is not a SHA-256 hash; it has {HashLength} digits out of 0-9 and a-f");
        if (Bytes is < 1 or > MostBytes)
            throw new BookRefusal($"{Container}: '{Name}' has {Bytes} bytes; a file attached has at least 1 and at most {MostBytes}");
        if (container.Attachments.FirstOrDefault(a => a.Sha256 == Sha256) is { } there)
            throw new BookRefusal($"{Container}: '{Name}' is already attached, as '{there.Name}' on {there.On:yyyy-MM-dd}");
    }

    private protected override Container Change(Container container) => container with
    {
        Attachments = container.Attachments.Add(new Attachment(Number, HappenedOn, Name, Sha256, Bytes, MediaType, Note)),
    };
}
