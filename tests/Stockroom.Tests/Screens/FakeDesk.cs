using Stockroom.Views;

namespace Stockroom.Tests.Screens;

/// <summary>A desk of twelve invented containers in an invented museum, on a fixed day.</summary>
public sealed class FakeDesk : IDesk
{
    private const string Cabinet = "display room > element cabinet";
    private const string Acids = "prep room > acid cabinet";
    private const string Solvents = "prep room > solvent cabinet";

    private static readonly HoldingRow[] Rows =
    [
        Row("B2R7K", "bromine, flame-sealed ampoule", "31.2 g", Cabinet + " > upper shelf", " ", "none", "br2 7726-95-6 toxic corrosive"),
        Row("C9F3M", "caesium, flame-sealed ampoule", "5.0 g", Cabinet + " > upper shelf", " ", "none", "cs 7440-46-2 water-reactive"),
        Row("H4N8P", "bromine", "62.1 g", Acids + " > lower shelf", "!", "4.5 g (0.4-45)", "br2 7726-95-6 toxic corrosive"),
        Row("J7T2X", "ammonia solution 25%", "0.91 kg", Acids + " > upper shelf", "!", "19 g (6-60)", "nh3 1336-21-6 corrosive"),
        Row("K4M7T", "nitric acid 65%", "1.40 kg", Acids + " > upper shelf", "!", "2.1 g (0.5-8)", "hno3 7697-37-2 oxidiser corrosive"),
        Row("L3W9B", "acetone", "0.79 kg", Acids + " > lower shelf", "!", "11 g (3-40)", "c3h6o 67-64-1 flammable"),
        Row("M8D5Q", "phosphorus, white, under water", "18 g", Cabinet + " > lower shelf", "*", "0.2 g (0.05-0.9)", "p4 12185-10-3 pyrophoric toxic"),
        Row("N2C6H", "potassium under mineral oil", "44 g", Cabinet + " > lower shelf", "*", "unknown", "k 7440-09-7 water-reactive"),
        Row("P5X4G", "diethyl ether", "0.35 kg", Solvents + " > upper shelf", "*", "26 g (8-90)", "c4h10o 60-29-7 flammable peroxides"),
        Row("R9K2D", "diethyl ether, crystals seen at the neck", "unknown", Solvents + " > lower shelf", "-", "unknown", "c4h10o 60-29-7 peroxides hands off"),
        Row("T6B8V", "unknown corrosive liquid", "unknown", Acids + " > lower shelf", "!", "unknown", "orphan corrosive"),
        Row("W3H5F", "sodium thiosulfate 10% (home-made)", "1.02 kg", Solvents + " > upper shelf", " ", "none", "na2s2o3 quench"),
    ];

    public string BookName { get; init; } = "saltmarsh.stockbook";

    public long Version { get; set; } = 1;

    public Standing? Standing { get; set; }

    /// <summary>The day on which the book is looked at.</summary>
    public DateOnly Date { get; set; } = new(2026, 3, 17);

    /// <summary>How often Today was asked.</summary>
    public int AskedToday { get; private set; }

    /// <summary>Whether asking for a card fails.</summary>
    public bool CardsFail { get; init; }

    /// <summary>Whether asking for a card never comes to an end.</summary>
    public bool CardsHang { get; init; }

    public IReadOnlyList<HoldingRow> All { get; set; } = Rows;

    public TodayView Today()
    {
        AskedToday++;
        return new(Date, BookName, All.Count, Wrong(), Due());
    }

    public IReadOnlyList<HoldingRow> Holdings() => All;

    public Card CardOf(string containerId)
    {
        if (CardsFail) throw new InvalidDataException("the card is torn");
        if (CardsHang) Thread.Sleep(Timeout.Infinite);
        HoldingRow row = All.Single(r => r.Id == containerId);
        return new Card($"{row.Id}  {row.Content}",
        [
            new("Contents",
            [
                new("content", row.Content),
                new("net", row.Amount + " by the weigh-in of 2026-01-12"),
                new("stands in", row.Place),
            ]),
            new("Loss",
            [
                new("a year", row.LossPerYear),
                new("left", "a third is gone between June 2027 and March 2044, most likely in August 2031"),
                new("", "Most of it leaves past the closure; the wall and the liner let through less than a hundredth of that."),
            ]),
            new("Hazards",
            [
                new("signal word", "Danger", Attention.Danger),
                new("H330", "Fatal if inhaled", Attention.Danger),
                new("H314", "Causes severe skin burns and eye damage", Attention.Danger),
                new("H400", "Very toxic to aquatic life", Attention.Warning),
            ]),
            new("Neighbours",
            [
                new("J7T2X", "ammonia solution 25%, one shelf above: would make heat and a toxic gas", Attention.Warning),
                new("W3H5F", "sodium thiosulfate 10%: the quench for it", Attention.Notice),
            ]),
            new("History",
            [
                new("2026-01-12", "weighed 241.7 g gross at 19 °C"),
                new("2025-11-02", "moved from the hatch"),
                new("2025-10-30", "received, bought, lot 7"),
            ]),
        ]);
    }

    public IReadOnlyList<PlaceNode> Places() =>
    [
        new("display", "display room", "room", "17 to 24 C, 4 containers, 2 due",
        [
            new("elements", "element cabinet", "glazed cabinet", "4 containers, 2 due",
                [Shelf("elements-up", "upper shelf", Cabinet), Shelf("elements-low", "lower shelf", Cabinet)], []),
        ], []),
        new("prep", "prep room", "room", "12 to 28 C, 8 containers, 5 wrong",
        [
            new("acids", "acid cabinet", "acid cabinet", "5 containers, 5 wrong",
                [Shelf("acids-up", "upper shelf", Acids), Shelf("acids-low", "lower shelf", Acids)], []),
            new("solvents", "solvent cabinet", "flammables cabinet", "3 containers, 1 due, 1 hands off",
                [Shelf("solvents-up", "upper shelf", Solvents), Shelf("solvents-low", "lower shelf", Solvents)], []),
            new("hatch", "hatch", "shelf", "empty", [], []),
        ], []),
    ];

    private PlaceNode Shelf(string id, string name, string cabinet)
    {
        HoldingRow[] here = [.. All.Where(r => r.Place == $"{cabinet} > {name}")];
        return new(id, name, "shelf", $"{here.Length} containers", [], here);
    }

    private static WrongLine[] Wrong() =>
    [
        new(Attention.Danger, "Bromine stands under ammonia solution and shares its air", "ammonia solution 25% on the shelf above gives off ammonia; with bromine it would make heat and nitrogen bromides. 40 cm apart, no tray between.", "contact pair halogen and ammonia, table of contact pairs, row 12", ["H4N8P", "J7T2X"]),
        new(Attention.Danger, "Nitric acid 65% stands above acetone without a tray", "a leak of 1.40 kg would run onto 0.79 kg of acetone: fire", "contact pair oxidising acid and fuel, table of contact pairs, row 3", ["K4M7T", "L3W9B"]),
        new(Attention.Warning, "The stopper of the bromine bottle has failed", "two weigh-ins 71 days apart show 9.4 g gone; 0.9 g was expected, 8 g at most", "weigh-ins of 2025-11-02 and 2026-01-12", ["H4N8P"]),
        new(Attention.Notice, "An inherited bottle has no label", "nobody knows what is in it, so it is judged in the worst light", "book entry 41", ["T6B8V"]),
    ];

    private static DueLine[] Due() =>
    [
        new("P5X4G", "diethyl ether", Solvents + " > upper shelf", "test for peroxides", new(2026, 1, 20), "opened 2025-01-20; test within 12 months of opening", "common practice"),
        new("M8D5Q", "phosphorus, white", Cabinet + " > lower shelf", "top up the water", new(2026, 3, 16), "the water has fallen to 8 mm, 10 mm are wanted", "forecast of the water cover"),
        new("N2C6H", "potassium", Cabinet + " > lower shelf", "look at the oil", new(2026, 3, 17), "a year since it was last looked at", "common practice"),
    ];

    private static HoldingRow Row(string id, string content, string amount, string place, string sign, string loss, string more) =>
        new(id, content, amount, place, sign, loss, $"{id} {content} {place} {more}".ToLowerInvariant());
}
