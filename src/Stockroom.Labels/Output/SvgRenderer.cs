using System.Globalization;
using System.Text;
using System.Xml;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Output;

/// <summary>
/// Turns one drawing into an SVG 1.1 picture in millimetres. Letters are outlines, so that every program draws the same; over them lies
/// the text itself, unpainted, to be selected, searched and read out.
/// </summary>
public static class SvgRenderer
{
    /// <summary>Writes the picture.</summary>
    /// <param name="drawing">A page or label.</param>
    /// <param name="title">Read out by readers for the blind.</param>
    /// <param name="output">Left open.</param>
    /// <param name="language">BCP 47 tag of the text.</param>
    public static void Write(Drawing drawing, string title, Stream output, string language = "en")
    {
        var settings = new XmlWriterSettings { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), CloseOutput = false, Indent = true };
        using var xml = XmlWriter.Create(output, settings);
        xml.WriteStartElement("svg", SvgCanvas.Svg);
        xml.WriteAttributeString("xmlns", "xlink", null, SvgCanvas.XLink);
        xml.WriteAttributeString("width", SvgCanvas.Number(drawing.WidthMm) + "mm");
        xml.WriteAttributeString("height", SvgCanvas.Number(drawing.HeightMm) + "mm");
        xml.WriteAttributeString("viewBox", $"0 0 {SvgCanvas.Number(drawing.WidthMm)} {SvgCanvas.Number(drawing.HeightMm)}");
        xml.WriteAttributeString("xml", "lang", null, language);
        xml.WriteAttributeString("role", "img");
        xml.WriteElementString("title", SvgCanvas.Svg, title);
        var canvas = new SvgCanvas(xml);
        canvas.Definitions(drawing.Items);
        xml.WriteStartElement("rect", SvgCanvas.Svg);
        xml.WriteAttributeString("width", SvgCanvas.Number(drawing.WidthMm));
        xml.WriteAttributeString("height", SvgCanvas.Number(drawing.HeightMm));
        xml.WriteAttributeString("fill", "#fff");
        xml.WriteEndElement();
        canvas.Draw(drawing.Items);
        xml.WriteEndElement();
    }
}

/// <summary>Writes items as SVG elements; letters and shapes that recur are kept once.</summary>
internal sealed class SvgCanvas(XmlWriter xml)
{
    public const string Svg = "http://www.w3.org/2000/svg";
    public const string XLink = "http://www.w3.org/1999/xlink";

    private int _windows;

    /// <summary>Every letter and every named shape that the items use.</summary>
    public void Definitions(IReadOnlyList<DrawingItem> items)
    {
        xml.WriteStartElement("defs", Svg);
        foreach (var shared in Shared(items).DistinctBy(p => p.Name))
        {
            xml.WriteStartElement("g", Svg);
            xml.WriteAttributeString("id", shared.Name!);
            Draw(shared.Items);
            xml.WriteEndElement();
        }

        foreach (var (face, rune) in items.Leaves().OfType<TextRun>().SelectMany(t => t.Text.EnumerateRunes().Select(r => (t.Face, r))).Distinct().OrderBy(l => l.Face).ThenBy(l => l.r.Value))
        {
            var outline = LabelFont.Of(face).Outline(rune);
            if (outline.Segments.Count == 0)
            {
                continue;
            }

            // In thousandths of the type size, which the text's transformation scales.
            xml.WriteStartElement("path", Svg);
            xml.WriteAttributeString("id", Letter(face, rune));
            xml.WriteAttributeString("d", Data(outline.Transform(1000, 0, 0), "0.#"));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    public void Draw(IReadOnlyList<DrawingItem> items)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case FilledPath filled:
                    xml.WriteStartElement("path", Svg);
                    xml.WriteAttributeString("fill", Colour(filled.Ink));
                    xml.WriteAttributeString("fill-rule", "evenodd");
                    xml.WriteAttributeString("d", Data(filled.Path));
                    break;
                case StrokedPath stroked:
                    xml.WriteStartElement("path", Svg);
                    xml.WriteAttributeString("fill", "none");
                    xml.WriteAttributeString("stroke", Colour(stroked.Ink));
                    xml.WriteAttributeString("stroke-width", Number(stroked.WidthMm));
                    xml.WriteAttributeString("stroke-linecap", "round");
                    xml.WriteAttributeString("stroke-linejoin", "round");
                    xml.WriteAttributeString("d", Data(stroked.Path));
                    break;
                case TextRun text:
                    Text(text);
                    break;
                case Group group:
                    xml.WriteStartElement("g", Svg);
                    xml.WriteElementString("title", Svg, group.Name);
                    Draw(group.Items);
                    break;
                case Clipped clipped:
                    Clip(clipped);
                    break;
                case Placed placed:
                    xml.WriteStartElement(placed.Name is null ? "g" : "use", Svg);
                    xml.WriteAttributeString("transform", $"translate({Number(placed.Dx)} {Number(placed.Dy)}) scale({Number(placed.Scale)})");
                    if (placed.Name is null)
                    {
                        Draw(placed.Items);
                    }
                    else
                    {
                        xml.WriteAttributeString("href", XLink, "#" + placed.Name);
                    }

                    break;
                default:
                    throw new ArgumentOutOfRangeException(nameof(items), item.GetType().Name, "no such drawing item");
            }

            xml.WriteEndElement();
        }
    }

    private void Clip(Clipped clipped)
    {
        var id = $"window{++_windows}";
        xml.WriteStartElement("clipPath", Svg);
        xml.WriteAttributeString("id", id);
        xml.WriteStartElement("path", Svg);
        xml.WriteAttributeString("d", Data(new PathBuilder().Rectangle(clipped.Window).Build()));
        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteStartElement("g", Svg);
        xml.WriteAttributeString("clip-path", $"url(#{id})");
        Draw(clipped.Items);
    }

    /// <summary>The letters as outlines, and the same words unpainted.</summary>
    private void Text(TextRun text)
    {
        var font = LabelFont.Of(text.Face);
        xml.WriteStartElement("g", Svg);
        xml.WriteStartElement("g", Svg);
        xml.WriteAttributeString("aria-hidden", "true");
        xml.WriteAttributeString("fill", Colour(text.Ink));
        xml.WriteAttributeString("transform", $"translate({Number(text.Baseline.X)} {Number(text.Baseline.Y)}) scale({(text.SizeMm / 1000).ToString("0.########", CultureInfo.InvariantCulture)})");
        var x = 0.0;
        foreach (var rune in text.Text.EnumerateRunes())
        {
            if (font.Outline(rune).Segments.Count > 0)
            {
                xml.WriteStartElement("use", Svg);
                xml.WriteAttributeString("href", XLink, "#" + Letter(text.Face, rune));
                xml.WriteAttributeString("x", (x * 1000).ToString("0.##", CultureInfo.InvariantCulture));
                xml.WriteEndElement();
            }

            x += font.WidthMm(rune);
        }

        xml.WriteEndElement();
        xml.WriteStartElement("text", Svg);
        xml.WriteAttributeString("x", Number(text.Baseline.X));
        xml.WriteAttributeString("y", Number(text.Baseline.Y));
        xml.WriteAttributeString("font-size", Number(text.SizeMm));
        xml.WriteAttributeString("fill", "none");
        xml.WriteAttributeString("textLength", Number(text.WidthMm));
        xml.WriteAttributeString("lengthAdjust", "spacingAndGlyphs");
        xml.WriteString(text.Text);
        xml.WriteEndElement();
    }

    private static IEnumerable<Placed> Shared(IEnumerable<DrawingItem> items) => items.SelectMany(i => i switch
    {
        Placed { Name: not null } placed => [placed],
        Placed placed => Shared(placed.Items),
        Group group => Shared(group.Items),
        Clipped clipped => Shared(clipped.Items),
        _ => [],
    });

    private static string Letter(Face face, Rune rune) => $"{(face == Face.Bold ? "b" : "r")}{rune.Value:x}";

    private static string Data(VectorPath path, string format = "0.#####")
    {
        var data = new StringBuilder();
        foreach (var segment in path.Segments)
        {
            data.Append(segment.Kind switch
            {
                SegmentKind.Move => $"M{Point(segment.End)}",
                SegmentKind.Line => $"L{Point(segment.End)}",
                SegmentKind.Cubic => $"C{Point(segment.First)} {Point(segment.Second)} {Point(segment.End)}",
                _ => "Z",
            });
        }

        return data.ToString();

        string Point(Position p) => $"{p.X.ToString(format, CultureInfo.InvariantCulture)} {p.Y.ToString(format, CultureInfo.InvariantCulture)}";
    }

    public static string Number(double value) => value.ToString("0.#####", CultureInfo.InvariantCulture);

    private static string Colour(Ink ink) => ink switch
    {
        Ink.Black => "#000",
        Ink.White => "#fff",
        _ => "#da0c1a",
    };
}
