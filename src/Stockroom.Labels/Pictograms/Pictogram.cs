using System.Collections.Frozen;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Files;

namespace Stockroom.Labels.Pictograms;

/// <summary>
/// The nine hazard pictograms of the GHS (UN GHS Annex 1; CLP Annex V): a square set on its point, black symbol on white
/// ground, red frame (CLP Annex I 1.2.1.1-1.2.1.2). The drawings are the project's own.
/// </summary>
public static class Pictogram
{
    /// <summary>Frame width as a share of the side of the square.</summary>
    public const double FrameShare = 0.06;

    /// <summary>Edge of the box in which symbol and frame are drawn once for all sizes.</summary>
    private const double Unit = 100;

    private static readonly FrozenDictionary<string, string> Names = new Dictionary<string, string>
    {
        ["GHS01"] = "exploding bomb",
        ["GHS02"] = "flame",
        ["GHS03"] = "flame over circle",
        ["GHS04"] = "gas cylinder",
        ["GHS05"] = "corrosion",
        ["GHS06"] = "skull and crossbones",
        ["GHS07"] = "exclamation mark",
        ["GHS08"] = "health hazard",
        ["GHS09"] = "environment",
    }.ToFrozenDictionary();

    private static readonly Lazy<FrozenDictionary<(string Code, Ink? Frame), IReadOnlyList<DrawingItem>>> Symbols = new(() =>
        Names.Keys.SelectMany(c => new Ink?[] { Ink.Red, Ink.Black, null }.Select(f => (Code: c, Frame: f))).ToFrozenDictionary(k => k, k => Framed(k.Code, k.Frame)));

    /// <summary>GHS01 to GHS09 in order.</summary>
    public static IReadOnlyList<string> Codes { get; } = [.. Names.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The symbol's name in the standard.</summary>
    /// <exception cref="LabelException">No such code.</exception>
    public static string NameOf(string code) =>
        Names.TryGetValue(code, out var name) ? name : throw Unknown(code);

    /// <summary>The pictogram with the top left corner of its upright bounding box at <paramref name="topLeft"/>.</summary>
    /// <param name="code">GHS01 to GHS09.</param>
    /// <param name="sideMm">Side of the square standing on its point, the length the law measures; over 0.</param>
    /// <param name="topLeft">Corner of the box, whose edge is the side times the square root of two.</param>
    /// <param name="frame">Red, or black where that is allowed; null for the symbol alone, to go into a frame that is printed already.</param>
    /// <exception cref="LabelException">No such code.</exception>
    public static Group Draw(string code, double sideMm, Position topLeft, Ink? frame = Ink.Red)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sideMm);
        var title = NameOf(code);
        var diagonal = DiagonalMm(sideMm);
        var name = frame switch { Ink.Red => code, null => $"{code}-bare", _ => $"{code}-black" };
        var placed = new Placed(Symbols.Value[(code, frame)], diagonal / Unit, topLeft.X, topLeft.Y, name);
        return new Group($"{code} {title}", new Box(topLeft.X, topLeft.Y, diagonal, diagonal), [placed]);
    }

    public static double DiagonalMm(double sideMm) => sideMm * Math.Sqrt(2);

    private static IReadOnlyList<DrawingItem> Framed(string code, Ink? frame)
    {
        const double Middle = Unit / 2;
        const double Inner = Unit * (1 - (2 * FrameShare));
        return
        [
            .. frame is not { } ink
                ? []
                : new[]
                {
                    new FilledPath(new PathBuilder().Diamond(Middle, Middle, Inner).Build(), Ink.White),
                    new FilledPath(new PathBuilder().Diamond(Middle, Middle, Unit).Diamond(Middle, Middle, Inner).Build(), ink),
                },
            .. ShapeReader.Read(EmbeddedFile.Text($"Pictograms.{code}.shape"), code + ".shape"),
        ];
    }

    private static LabelException Unknown(string code) =>
        new($"there is no hazard pictogram '{code}'; the codes are GHS01 to GHS09");
}
