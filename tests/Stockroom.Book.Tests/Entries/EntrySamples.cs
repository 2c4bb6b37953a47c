using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Book.Tests.Entries;

/// <summary>A full and, where much may be left out, a bare entry of every kind; texts and numbers can be put in.</summary>
internal static class EntrySamples
{
    public static IEnumerable<Entry> All(string text = "text", decimal number = 1.5m) =>
        Places(text, number).Concat(Receipts(text, number)).Concat(Happenings(text, number)).Select((e, i) => e with
        {
            Number = i + 1,
            Transaction = i + 1,
            HappenedAt = new DateTimeOffset(2024, 2, 29, 23, 59, 59, TimeSpan.FromMinutes(-210)).AddTicks(i * 1_234_567),
            RecordedAt = new DateTimeOffset(2026, 5, 20, 0, 0, 0, TimeSpan.FromHours(14)),
            By = text,
            Previous = new string('0', 64),
            Note = i % 2 == 0 ? text : null,
            Forced = i % 3 == 0 ? text : null,
        });

    private static ContainerId Id => ContainerId.AtOrAfter(17);

    private static ContainerId Other => ContainerId.AtOrAfter(18);

    private static Entry[] Places(string text, decimal number)
    {
        var limits = new PlaceLimits
        {
            HeightMetres = number,
            Position = 3,
            MeanCelsius = number,
            MinCelsius = number,
            MaxCelsius = number,
            SwingKelvin = number,
            LeakTight = true,
            MaxLoadKilograms = number,
            MaxContainers = 12,
            SeasonalSwingKelvin = number,
            WarmestMonth = 7,
            Light = PlaceLight.Window,
            MaxLitres = number,
            MaxFlammableLitres = number,
            AirChangesPerHour = number,
            HasDoor = true,
            IsLocked = false,
            IsWooden = true,
            IsNearHeat = false,
            IsForFlammables = true,
        };
        return
        [
            new PlaceMade { Place = text, Name = text, PlaceKind = PlaceKind.FireCabinet, Inside = text, Limits = limits },
            new PlaceMade { Place = text, Name = text, PlaceKind = PlaceKind.Room },
            new PlaceLimited { Place = text, Name = text, PlaceKind = PlaceKind.OpenShelf, Limits = limits },
            new PlaceLimited { Place = text },
            new ClassTableChosen { Table = text },
            new SubstanceStated { Name = text, Formula = text, Cas = text, State = text, Synonyms = text, Hazards = text, Source = text, AsOf = text },
            new SubstanceStated { Name = text, State = text, Source = text, AsOf = text },
        ];
    }

    private static Entry[] Receipts(string text, decimal number) =>
    [
        new Received
        {
            Container = Id,
            Content = text,
            Parts = [new PartShare(text, number), new PartShare("water", 1)],
            State = MatterState.Liquid,
            IsOrphan = true,
            Seen = text,
            FoundBy = text,
            Lot = new Lot { How = LotOrigin.Split, Origin = text, Supplier = text, Batch = text, From = Other, MadeOn = new DateOnly(2024, 2, 29), Note = text },
            Vessel = text,
            Closure = text,
            Cover = text,
            CoverDepthMillimetres = number,
            Packing = text,
            To = text,
            Quantity = text,
            NetGrams = number,
            Density = new BookedDensity(number, text),
            TareGrams = number,
            GrossGrams = number,
        },
        new Received { Container = Id, Content = text, Lot = new Lot { How = LotOrigin.Found }, To = text },
    ];

    private static Entry[] Happenings(string text, decimal number)
    {
        var density = new BookedDensity(number, text);
        return
        [
            new Opened { Container = Id },
            new Weighed { Container = Id, GrossGrams = number, ReadabilityGrams = number, TemperatureCelsius = -number, PressureHectopascals = number, CalibrationGrams = number },
            new Weighed { Container = Id, GrossGrams = number },
            new Drawn { Container = Id, Quantity = text, Grams = number, Density = density },
            new Decanted { Container = Id, Into = Other, Quantity = text, Grams = number, Density = density },
            new Moved { Container = Id, To = text },
            new Moved { Place = text, To = text },
            new Covered { Container = Id, Act = CoverAct.PutOn, Cover = text, DepthMillimetres = number },
            new Covered { Container = Id, Act = CoverAct.ToppedUp, DepthMillimetres = number },
            new Covered { Container = Id, Act = CoverAct.Measured, DepthMillimetres = number },
            new Covered { Container = Id, Act = CoverAct.TakenOff },
            new Packed { Container = Id, Packing = text },
            new Packed { Container = Id },
            new Sealed { Container = Id, Closure = text, GrossGrams = number, TareGrams = number, GasCelsius = -number, GasBar = number },
            new Assayed { Container = Id, Substance = text, Percent = number, Method = text },
            new Tested { Container = Id, What = text, Result = text },
            new Marked { Container = Id, HandsOff = true, Reason = text },
            new Marked { Container = Id, HandsOff = false, Reason = text },
            new Marked { Container = Id, Pinned = true, Reason = text },
            new Marked { Container = Id, Pinned = false },
            new Marked { Container = Id, LeastPercent = number, Reason = text },
            new Marked { Container = Id },
            new Attached { Container = Id, Name = text, Sha256 = new string('a', 64), Bytes = 12, MediaType = text },
            new LabelPrinted { Container = Id, Stock = text, Rules = text, Says = [new LabelSaying(text, text), new LabelSaying("cover", "")] },
            new LabelPrinted { Container = Id, Stock = text },
            new Quenched { Container = Id, With = text, Quantity = text, Grams = number, Density = density },
            new Retired { Container = Id, Reason = text },
            new Corrected { Container = Id, Entry = 5, Changes = [new FieldChange(text, text), new FieldChange("net_g", null)], Reason = text },
            new Undone { Undoes = 4, Reason = text },
        ];
    }
}
