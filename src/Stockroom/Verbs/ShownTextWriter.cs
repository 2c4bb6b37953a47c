using System.Text;

namespace Stockroom.Verbs;

/// <summary>
/// Stands before a terminal or a file of answers: whatever text a book, an import or a file name holds, only
/// <see cref="ShownText"/> comes out. A line written is one line, but for help texts.
/// </summary>
internal sealed class ShownTextWriter(TextWriter to, bool isOneLine = true) : TextWriter
{
    public override Encoding Encoding => to.Encoding;

    public override string NewLine
    {
        get => to.NewLine;
#pragma warning disable CS8765 // the framework's own annotation of the base allows null and ignores it
        set => to.NewLine = value;
#pragma warning restore CS8765
    }

    public override void Write(char value) => to.Write(ShownText.IsHidden(value) && value is not ('\n' or '\r' or '\t') && !char.IsSurrogate(value) ? ShownText.Of(value.ToString(), oneLine: false) : value.ToString());

    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    public override void Write(ReadOnlySpan<char> buffer) => Write(new string(buffer));

    public override void Write(string? value) => to.Write(ShownText.Of(value ?? "", oneLine: false));

    public override void WriteLine() => to.WriteLine();

    public override void WriteLine(string? value) => to.WriteLine(ShownText.Of(value ?? "", isOneLine));

    public override void Flush() => to.Flush();
}
