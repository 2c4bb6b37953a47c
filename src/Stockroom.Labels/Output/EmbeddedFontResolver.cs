using PdfSharp.Fonts;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Output;

/// <summary>Gives the PDF library the embedded faces and no others, so that a page never depends on the machine's fonts.</summary>
internal sealed class EmbeddedFontResolver : IFontResolver
{
    private const string RegularFace = "label-regular";
    private const string BoldFace = "label-bold";

    private static readonly Lock Once = new();
    private static bool registered;

    private EmbeddedFontResolver()
    {
    }

    public static void Register()
    {
        lock (Once)
        {
            if (!registered)
            {
                GlobalFontSettings.FontResolver = new EmbeddedFontResolver();
                registered = true;
            }
        }
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(isBold ? BoldFace : RegularFace);

    public byte[]? GetFont(string faceName) => faceName switch
    {
        RegularFace => LabelFont.Of(Face.Regular).File.ToArray(),
        BoldFace => LabelFont.Of(Face.Bold).File.ToArray(),
        _ => null,
    };
}
