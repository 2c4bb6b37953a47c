using System.Text.Json;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Book.States;

/// <summary>
/// A whole state as JSON and back, for a snapshot: not the record, which is the entries, and never read by another version
/// than the one that wrote it. The same state gives the same bytes.
/// </summary>
public static class StateCodec
{
    /// <summary>Goes up whenever a member is added, taken away or moved: a snapshot of another version is not read.</summary>
    public const int Version = 6;

    public static byte[] Encode(BookState state)
    {
        using var w = new StateWriter();
        w.Group(state, s =>
        {
            w.Integer(s.NextSerial);
            w.Text(s.ClassTable);
            w.List(s.Places.Values.OrderBy(p => p.Id, StringComparer.Ordinal), p => w.Group(p, x => Write(x, w)));
            w.List(s.OwnSubstances.Values.Select(o => o.Words).OrderBy(o => o.Name, StringComparer.Ordinal), o => w.Group(o, x => Write(x, w)));
            w.List(s.Containers.Values.OrderBy(c => c.Id), c => w.Group(c, x => ContainerFields.Write(x, w)));
        });
        return w.Finish();
    }

    /// <summary>Reads what <see cref="Encode"/> wrote.</summary>
    /// <exception cref="FormatException">It is not a state as this version writes it.</exception>
    public static BookState Decode(JsonElement json)
    {
        try
        {
            return StateReader.Of(json, r => BookState.Restored(r.Integer(), r.Text(), r.Groups(Place), r.Groups(Own), r.Groups(ContainerFields.Read)));
        }
        catch (Exception e) when (e is InvalidOperationException or BookRefusal or OverflowException or ArgumentException)
        {
            throw new FormatException(e.Message, e);
        }
    }

    private static void Write(Place p, StateWriter w)
    {
        w.Text(p.Id);
        w.Text(p.Name);
        w.Text(p.Kind.Word);
        w.Text(p.Inside);
        w.Number(p.Limits.HeightMetres);
        w.Integer(p.Limits.Position);
        w.Number(p.Limits.MeanCelsius);
        w.Number(p.Limits.MinCelsius);
        w.Number(p.Limits.MaxCelsius);
        w.Number(p.Limits.SwingKelvin);
        w.Flag(p.Limits.LeakTight);
        w.Number(p.Limits.MaxLoadKilograms);
        w.Integer(p.Limits.MaxContainers);
        w.Number(p.Limits.SeasonalSwingKelvin);
        w.Integer(p.Limits.WarmestMonth);
        w.Text(p.Limits.Light is { } light ? PlaceLimits.WordOf(light) : null);
        w.Number(p.Limits.MaxLitres);
        w.Number(p.Limits.MaxFlammableLitres);
        w.Number(p.Limits.AirChangesPerHour);
        w.Flag(p.Limits.HasDoor);
        w.Flag(p.Limits.IsLocked);
        w.Flag(p.Limits.IsWooden);
        w.Flag(p.Limits.IsNearHeat);
        w.Flag(p.Limits.IsForFlammables);
        w.Text(p.Note);
        w.Day(p.LastDay);
    }

    private static Place Place(StateReader r) => new()
    {
        Id = r.Text(),
        Name = r.Text(),
        Kind = PlaceKind.Parse(r.Text()),
        Inside = r.TextOrNull(),
        Limits = new PlaceLimits
        {
            HeightMetres = r.NumberOrNull(),
            Position = r.IntegerOrNull(),
            MeanCelsius = r.NumberOrNull(),
            MinCelsius = r.NumberOrNull(),
            MaxCelsius = r.NumberOrNull(),
            SwingKelvin = r.NumberOrNull(),
            LeakTight = r.FlagOrNull(),
            MaxLoadKilograms = r.NumberOrNull(),
            MaxContainers = r.IntegerOrNull(),
            SeasonalSwingKelvin = r.NumberOrNull(),
            WarmestMonth = r.IntegerOrNull(),
            Light = r.TextOrNull() is { } light ? PlaceLimits.ParseLight(light) : null,
            MaxLitres = r.NumberOrNull(),
            MaxFlammableLitres = r.NumberOrNull(),
            AirChangesPerHour = r.NumberOrNull(),
            HasDoor = r.FlagOrNull(),
            IsLocked = r.FlagOrNull(),
            IsWooden = r.FlagOrNull(),
            IsNearHeat = r.FlagOrNull(),
            IsForFlammables = r.FlagOrNull(),
        },
        Note = r.TextOrNull(),
        LastDay = r.Day(),
    };

    private static void Write(OwnSubstanceWords o, StateWriter w)
    {
        foreach (var text in new[] { o.Name, o.Formula, o.Cas, o.State, o.Synonyms, o.Hazards, o.Source, o.AsOf })
            w.Text(text);
    }

    private static OwnSubstance Own(StateReader r)
    {
        var words = new OwnSubstanceWords(r.Text(), r.TextOrNull(), r.TextOrNull(), r.Text(), r.TextOrNull(), r.TextOrNull(), r.Text(), r.Text());
        return OwnSubstance.TryMake(words, out var own, out var column, out var problem) ? own : throw new FormatException($"{column} {problem}");
    }
}
