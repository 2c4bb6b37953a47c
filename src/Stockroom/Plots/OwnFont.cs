using ScottPlot;
using SkiaSharp;
using Stockroom.Labels.Fonts;

namespace Stockroom.Plots;

/// <summary>Sets pictures in the fonts that come with the program: a bare machine has none.</summary>
internal sealed class OwnFont : IFontResolver
{
    private static readonly Lazy<OwnFont> Only = new(() => new OwnFont());

    private readonly SKTypeface _regular = Load(LabelFont.Of(Face.Regular));
    private readonly SKTypeface _bold = Load(LabelFont.Of(Face.Bold));

    private OwnFont()
    {
        ScottPlot.Fonts.FontResolvers.Insert(0, this);
        ScottPlot.Fonts.Default = LabelFont.Family;
    }

    public static void Use() => _ = Only.Value;

    public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) => weight >= FontWeight.SemiBold ? _bold : _regular;

    public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) => bold ? _bold : _regular;

    private static SKTypeface Load(LabelFont font)
    {
        using var data = SKData.CreateCopy(font.File.Span);
        return SKTypeface.FromData(data);
    }
}
