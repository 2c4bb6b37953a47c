using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Text;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Files;

namespace Stockroom.Labels.Fonts;

/// <summary>The two weights of the one family that labels are set in.</summary>
public enum Face
{
    Regular,
    Bold,
}

/// <summary>An embedded face with its real metrics; lengths are in ems (1 em = the type size).</summary>
public sealed class LabelFont
{
    /// <summary>Family name as the output formats see it.</summary>
    public const string Family = "Roboto Condensed";

    private static readonly Lazy<LabelFont> Regular = new(() => Load("RobotoCondensed-Regular.ttf"));
    private static readonly Lazy<LabelFont> Bold = new(() => Load("RobotoCondensed-Bold.ttf"));

    /// <summary>Characters below this are looked up in an array; nearly all of a label is among them.</summary>
    private const int Common = 0x180;

    private readonly FrozenDictionary<int, double> _advances;
    private readonly double[] _common = new double[Common];
    private readonly TrueTypeReader _reader;
    private readonly Lazy<(GlyphReader Reader, FrozenDictionary<int, int> Index)> _glyphs;
    private readonly ConcurrentDictionary<int, VectorPath> _outlines = new();

    private LabelFont(ReadOnlyMemory<byte> file)
    {
        File = file;
        var reader = _reader = new TrueTypeReader(file);
        _glyphs = new(() => (_reader.Glyphs(), _reader.Characters().DistinctBy(c => c.Character).ToFrozenDictionary(c => c.Character, c => c.Glyph)));
        _advances = reader.AdvancesEm().ToFrozenDictionary();
        for (var i = 0; i < Common; i++)
        {
            _common[i] = _advances.GetValueOrDefault(i, 1.0);
        }

        (AscentEm, DescentEm) = reader.VerticalExtentEm();
        (XHeightEm, CapHeightEm) = reader.LetterHeightsEm();
    }

    /// <summary>The TrueType file itself.</summary>
    public ReadOnlyMemory<byte> File { get; }

    public double AscentEm { get; }

    /// <summary>Depth below the baseline, positive.</summary>
    public double DescentEm { get; }

    /// <summary>Height of a lower-case x, the measure by which CLP Annex I 1.2.1.5 states letter sizes.</summary>
    public double XHeightEm { get; }

    public double CapHeightEm { get; }

    public static LabelFont Of(Face face) => face == Face.Bold ? Bold.Value : Regular.Value;

    public bool Has(int codePoint) => _advances.ContainsKey(codePoint);

    /// <summary>Set width of one line. A character without a glyph counts as an em; clean the text first.</summary>
    public double WidthMm(ReadOnlySpan<char> text, double sizeMm)
    {
        var em = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            em += AdvanceEm(rune.Value);
        }

        return em * sizeMm;
    }

    /// <summary>Width of one character at a type size of 1.</summary>
    public double WidthMm(System.Text.Rune character) => AdvanceEm(character.Value);

    /// <summary>The outline of a character in ems, its baseline's left end at the origin; filled by the non-zero rule. Empty for a space.</summary>
    internal VectorPath Outline(Rune character) => _outlines.GetOrAdd(character.Value, value =>
    {
        var path = new PathBuilder();
        foreach (var contour in _glyphs.Value.Reader.Contours(_glyphs.Value.Index.GetValueOrDefault(value)))
        {
            contour.AddTo(path, _reader.UnitsPerEm);
        }

        return path.Build();
    });

    private double AdvanceEm(int codePoint) =>
        codePoint < Common ? _common[codePoint] : _advances.GetValueOrDefault(codePoint, 1.0);

    private static LabelFont Load(string name) => new(EmbeddedFile.Bytes("Fonts." + name));
}
