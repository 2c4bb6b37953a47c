using System.Collections.Concurrent;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>Statements measured once for all the labels of one printing; many labels say the same. Safe for several threads.</summary>
internal sealed class ParagraphStore
{
    private readonly ConcurrentDictionary<(string Text, Face Face), Paragraph> _paragraphs = new();

    public Paragraph Of(string text, Face face) => _paragraphs.GetOrAdd((text, face), k => new Paragraph(k.Text, k.Face));
}
