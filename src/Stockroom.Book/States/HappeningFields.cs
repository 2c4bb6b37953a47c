using Stockroom.Book.Containers;

namespace Stockroom.Book.States;

/// <summary>What of the parts of a container, and of what happened to it, stands where in a written state.</summary>
internal static class HappeningFields
{
    public static void Write(PartShare p, StateWriter w)
    {
        w.Text(p.Substance);
        w.Number(p.Percent);
    }

    public static PartShare Part(StateReader r) => new(r.Text(), r.Number());

    public static void Write(LabelSaying s, StateWriter w)
    {
        w.Text(s.Part);
        w.Text(s.Text);
    }

    public static LabelSaying Saying(StateReader r) => new(r.Text(), r.Text());

    public static void Write(BookedDensity d, StateWriter w)
    {
        w.Number(d.GramsPerMillilitre);
        w.Text(d.Source);
    }

    public static BookedDensity Density(StateReader r) => new(r.Number(), r.Text());

    public static void Write(Cover c, StateWriter w)
    {
        w.Text(c.Name);
        w.Number(c.DepthMillimetres);
        w.Day(c.Since);
        w.Day(c.DepthOn);
    }

    public static Cover Cover(StateReader r) => new(r.Text(), r.NumberOrNull(), r.Day(), r.Day());

    public static void Write(CoverDepth d, StateWriter w)
    {
        w.Integer(d.Entry);
        w.Day(d.On);
        w.Number(d.Millimetres);
    }

    public static CoverDepth Depth(StateReader r) => new(r.Integer(), r.Day(), r.Number());

    public static void Write(Refitting d, StateWriter w)
    {
        w.Integer(d.Entry);
        w.Day(d.On);
        w.Flag(d.OtherCover);
    }

    public static Refitting Refitting(StateReader r) => new(r.Integer(), r.Day(), r.Flag());

    public static void Write(Lot l, StateWriter w)
    {
        w.Text(Containers.Lot.WordOf(l.How));
        w.Text(l.Origin);
        w.Text(l.Supplier);
        w.Text(l.Batch);
        w.Id(l.From);
        w.Day(l.MadeOn);
        w.Text(l.Note);
    }

    public static Lot Lot(StateReader r) => new()
    {
        How = Containers.Lot.ParseOrigin(r.Text()),
        Origin = r.TextOrNull(),
        Supplier = r.TextOrNull(),
        Batch = r.TextOrNull(),
        From = r.IdOrNull(),
        MadeOn = r.DayOrNull(),
        Note = r.TextOrNull(),
    };

    public static void Write(Weighing x, StateWriter w)
    {
        w.Integer(x.Entry);
        w.Day(x.On);
        w.Number(x.GrossGrams);
        w.Number(x.ReadabilityGrams);
        w.Number(x.TemperatureCelsius);
        w.Number(x.PressureHectopascals);
        w.Number(x.CalibrationGrams);
    }

    public static Weighing Weighing(StateReader r) => new(r.Integer(), r.Day(), r.Number(), r.NumberOrNull(), r.NumberOrNull(), r.NumberOrNull(), r.NumberOrNull());

    public static void Write(Draw x, StateWriter w)
    {
        w.Integer(x.Entry);
        w.Day(x.On);
        w.Text(x.Quantity);
        w.Number(x.Grams);
        w.Id(x.Into);
    }

    public static Draw Draw(StateReader r) => new(r.Integer(), r.Day(), r.Text(), r.Number(), r.IdOrNull());

    public static void Write(Fill x, StateWriter w)
    {
        w.Integer(x.Entry);
        w.Day(x.On);
        w.Text(x.Quantity);
        w.Number(x.Grams);
        w.Id(x.From);
    }

    public static Fill Fill(StateReader r) => new(r.Integer(), r.Day(), r.Text(), r.Number(), r.Id());

    public static void Write(TestResult x, StateWriter w)
    {
        w.Integer(x.Entry);
        w.Day(x.On);
        w.Text(x.Result);
    }

    public static TestResult Test(StateReader r) => new(r.Integer(), r.Day(), r.Text());

    public static void Write(Attachment x, StateWriter w)
    {
        w.Integer(x.Entry);
        w.Day(x.On);
        w.Text(x.Name);
        w.Text(x.Sha256);
        w.Integer(x.Bytes);
        w.Text(x.MediaType);
        w.Text(x.Note);
    }

    public static Attachment Attachment(StateReader r) => new(r.Integer(), r.Day(), r.Text(), r.Text(), r.Integer(), r.Text(), r.TextOrNull());

    public static void Write(Assay x, StateWriter w)
    {
        w.Integer(x.Entry);
        w.Day(x.On);
        w.Text(x.Substance);
        w.Number(x.Percent);
        w.Text(x.Method);
    }

    public static Assay Assay(StateReader r) => new(r.Integer(), r.Day(), r.Text(), r.Number(), r.TextOrNull());
}
