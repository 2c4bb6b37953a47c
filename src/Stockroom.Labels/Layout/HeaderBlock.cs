using Stockroom.Labels.Designs;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>Name of the content, formula or composition, and the warnings beside those of the GHS, in the order of the design.</summary>
internal sealed class HeaderBlock(FlowArea flow, LabelContent content, Design design, double paddingMm, Portion portion)
{
    private const double SizeStep = 0.93;

    /// <summary>The formula is never as large as the name.</summary>
    private const double FormulaOfName = 0.58;

    private double _nameSize = double.MaxValue;

    private (double Width, double Height) Room => (flow.Area.Width, flow.Area.Height);

    public bool Place() => design.Head.All(part => part switch
    {
        LabelPart.Name => Name(),
        LabelPart.Formula => !portion.Note || content.Note.IsEmpty || Formula(),
        _ => WarningPlates.Place(
            flow, [.. content.Extra.Take(portion.Extra)], design.Sizes.Warnings.At(Room.Width, Room.Height), content.Demands.BlackOnWhite),
    });

    private bool Name()
    {
        var sizes = content.HasHazards ? design.Sizes.Name : design.Sizes.NameAlone;
        var largest = Math.Max(Legibility.SmallestTypeMm, sizes.At(Room.Width, Room.Height));
        var room = Math.Max(Room.Height * (content.HasHazards ? design.NameRoom : design.NameRoomAlone), largest * FlowArea.LineSpacing);
        return Name(content.Name(portion.NameLength), largest, room);
    }

    /// <summary>Shrinks, then wraps, and cuts inside a word only at the smallest size.</summary>
    private bool Name(Paragraph name, double largest, double roomMm)
    {
        var start = flow.Y;
        for (_nameSize = largest; _nameSize > Legibility.SmallestTypeMm; _nameSize *= SizeStep)
        {
            var (from, to) = flow.Free(start, _nameSize);
            if (name.LongestPieceEm * _nameSize > to - from)
            {
                continue;
            }

            flow.Y = Top(start);
            var lines = (int)Math.Floor((roomMm / (_nameSize * FlowArea.LineSpacing)) + 1e-6);
            if (flow.Set(name, _nameSize, lines))
            {
                return true;
            }
        }

        _nameSize = Legibility.SmallestTypeMm;
        flow.Y = Top(start);
        return flow.Set(name, _nameSize);
    }

    /// <summary>At the very top lets the top of the capitals, rather than of the line, stand level with the top of the code.</summary>
    private double Top(double start)
    {
        if (start > flow.Area.Top)
        {
            return start;
        }

        var font = LabelFont.Of(Face.Bold);
        var above = (FlowArea.LineSpacing - font.AscentEm - font.DescentEm) / 2 + font.AscentEm - font.CapHeightEm;
        return start - Math.Min(above * _nameSize, paddingMm * 0.8);
    }

    private bool Formula()
    {
        var largest = Math.Max(Legibility.SmallestTypeMm, Math.Min(design.Sizes.Formula.MostMm, Math.Min(_nameSize * FormulaOfName, Room.Height)));
        for (var size = largest; size > Legibility.SmallestTypeMm; size *= SizeStep)
        {
            if (flow.Set(content.Note, size, mostLines: 1))
            {
                return true;
            }
        }

        return flow.Set(content.Note, Legibility.SmallestTypeMm);
    }
}
