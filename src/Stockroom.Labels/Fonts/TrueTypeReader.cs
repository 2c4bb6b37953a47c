using System.Buffers.Binary;
using System.Text;

namespace Stockroom.Labels.Fonts;

/// <summary>
/// Reads what text setting needs from a TrueType file: which characters it has and how wide each is.
/// Layout of the tables: ISO/IEC 14496-22 (Open Font Format), tables head, hhea, hmtx, OS/2, cmap.
/// </summary>
internal sealed class TrueTypeReader
{
    private readonly ReadOnlyMemory<byte> _file;
    private readonly Dictionary<string, int> _tables = [];
    private readonly double _unitsPerEm;

    public TrueTypeReader(ReadOnlyMemory<byte> file)
    {
        _file = file;
        var count = U16(4);
        for (var i = 0; i < count; i++)
        {
            var record = 12 + (16 * i);
            _tables[Encoding.ASCII.GetString(_file.Span.Slice(record, 4))] = (int)U32(record + 8);
        }

        _unitsPerEm = U16(_tables["head"] + 18);
    }

    public (double Ascent, double Descent) VerticalExtentEm()
    {
        var hhea = _tables["hhea"];
        return (I16(hhea + 4) / _unitsPerEm, -I16(hhea + 6) / _unitsPerEm);
    }

    public (double XHeight, double CapHeight) LetterHeightsEm()
    {
        var os2 = _tables["OS/2"];
        return (I16(os2 + 86) / _unitsPerEm, I16(os2 + 88) / _unitsPerEm);
    }

    /// <summary>Advance width of every character that has a glyph of its own.</summary>
    public IEnumerable<KeyValuePair<int, double>> AdvancesEm()
    {
        var hmtx = _tables["hmtx"];
        var longMetrics = U16(_tables["hhea"] + 34);
        foreach (var (character, glyph) in Characters())
        {
            var index = Math.Min(glyph, longMetrics - 1);
            yield return new(character, U16(hmtx + (4 * index)) / _unitsPerEm);
        }
    }

    public double UnitsPerEm => _unitsPerEm;

    public GlyphReader Glyphs() => new(_file, _tables["loca"], _tables["glyf"], I16(_tables["head"] + 50) != 0);

    public IEnumerable<(int Character, int Glyph)> Characters()
    {
        var table = FullUnicodeTable();
        var groups = U32(table + 12);
        for (var i = 0; i < groups; i++)
        {
            var group = table + 16 + (12 * i);
            var (first, last, glyph) = (U32(group), U32(group + 4), U32(group + 8));
            for (var character = first; character <= last; character++)
            {
                var index = (int)(glyph + character - first);
                if (index != 0)
                {
                    yield return ((int)character, index);
                }
            }
        }
    }

    private int FullUnicodeTable()
    {
        var cmap = _tables["cmap"];
        var count = U16(cmap + 2);
        for (var i = 0; i < count; i++)
        {
            var offset = cmap + (int)U32(cmap + 4 + (8 * i) + 4);
            if (U16(offset) == 12)
            {
                return offset;
            }
        }

        throw new InvalidDataException("the label font has no character table of format 12 (full Unicode)");
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_file.Span[at..]);

    private int I16(int at) => BinaryPrimitives.ReadInt16BigEndian(_file.Span[at..]);

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(_file.Span[at..]);
}
