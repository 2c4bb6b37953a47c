using QRCoder;
using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Codes;

/// <summary>A QR code's module matrix and the size it is printed at.</summary>
/// <param name="text">Exactly what a reader returns.</param>
/// <param name="count">Modules along one edge, without quiet zone.</param>
/// <param name="moduleMm">Edge of one module.</param>
/// <param name="errorCorrection">L, M, Q or H (ISO/IEC 18004: about 7, 15, 25, 30 % of code words recoverable).</param>
public sealed class QrSymbol(string text, int count, double moduleMm, char errorCorrection)
{
    /// <summary>Width of the quiet zone on each side (ISO/IEC 18004: 4X).</summary>
    public const int QuietModules = 4;

    /// <summary>One dot of a 203 dpi label printer.</summary>
    public const double DotMm = 25.4 / 203;

    /// <summary>At least three dots a module, so that the coarsest usual printer draws every module.</summary>
    public const int LeastDots = 3;

    private const double EdgeForFourDotsMm = 18;

    /// <summary>In a symbol of up to so many modules a stain hides too much for level M.</summary>
    private const int SmallModules = 29;

    private readonly Lazy<bool[,]> _modules = new(() => Matrix(text, errorCorrection, count));

    public string Text => text;

    public int Count => count;

    public double ModuleMm => moduleMm;

    public char ErrorCorrection => errorCorrection;

    /// <summary>Dark modules, row by row, without quiet zone; computed when first asked for, as a layout needs the size alone.</summary>
    public bool[,] Modules => _modules.Value;

    /// <summary>Edge of the printed square, quiet zone included.</summary>
    public double EdgeMm => (Count + (2 * QuietModules)) * ModuleMm;

    /// <summary>
    /// The richest text that fits a square of <paramref name="edgeMm"/>: all words, then fewer, lastly the id alone; with the
    /// most error correction that still allows modules of three dots. A code with words has at least level M, a small one Q, so
    /// that it reads with a stain over a twelfth of it; only the id alone may go down to L. Null where not even the id fits.
    /// </summary>
    /// <param name="id">Container id, or null for a sample.</param>
    /// <param name="words">Plain words, richest first; see <see cref="QrText.Words"/>.</param>
    /// <param name="edgeMm">Room for the code with its quiet zone.</param>
    public static QrSymbol? Fit(string? id, IReadOnlyList<string> words, double edgeMm)
    {
        // Modules of four dots are surer to read than of three; a small label cannot afford them.
        for (var dots = edgeMm >= EdgeForFourDotsMm ? LeastDots + 1 : LeastDots; dots >= LeastDots; dots--)
        {
            foreach (var text in QrText.From(id, words))
            {
                var withWords = text.Contains('\n');
                foreach (var level in withWords ? "HQM" : "HQML")
                {
                    if (LargestThatFits(text, level, edgeMm, dots) is { } symbol && !(withWords && level == 'M' && symbol.Count <= SmallModules))
                    {
                        return symbol;
                    }
                }
            }
        }

        return null;
    }

    /// <summary>The dark modules as one path, its quiet zone's top left corner at <paramref name="topLeft"/>.</summary>
    public Group Draw(Position topLeft)
    {
        var quiet = QuietModules * ModuleMm;
        var path = new FilledPath(ModuleOutline.Trace(Modules), Ink.Black);
        var placed = new Placed([path], ModuleMm, topLeft.X + quiet, topLeft.Y + quiet);
        return new Group("QR", new Box(topLeft.X, topLeft.Y, EdgeMm, EdgeMm), [placed]);
    }

    private static QrSymbol? LargestThatFits(string text, char level, double edgeMm, int leastDots)
    {
        if (QrCapacity.ModulesFor(text, level) is not { } count)
        {
            return null;
        }

        var dots = (int)Math.Floor((edgeMm / (count + (2 * QuietModules)) / DotMm) + 1e-9);
        return dots < leastDots ? null : new QrSymbol(text, count, dots * DotMm, level);
    }

    private static bool[,] Matrix(string text, char level, int count)
    {
        var correction = level switch
        {
            'H' => QRCodeGenerator.ECCLevel.H,
            'Q' => QRCodeGenerator.ECCLevel.Q,
            'M' => QRCodeGenerator.ECCLevel.M,
            _ => QRCodeGenerator.ECCLevel.L,
        };
        var version = (count - 17) / 4;
        using var data = QRCodeGenerator.GenerateQrCode(
            text, correction, forceUtf8: false, utf8BOM: false, QRCodeGenerator.EciMode.Default, version);

        // The library's matrix already carries its own quiet zone of four modules.
        var modules = new bool[count, count];
        for (var row = 0; row < count; row++)
        {
            for (var column = 0; column < count; column++)
            {
                modules[row, column] = data.ModuleMatrix[row + QuietModules][column + QuietModules];
            }
        }

        return modules;
    }
}
