using Stockroom.Labels.Layout;

namespace Stockroom.Labels.Tests;

/// <summary>
/// Labels of many kinds for the tests. Statements are worded as in Regulation (EC) No 1272/2008 Annexes III and IV, written
/// down for the tests only; the program takes its wording from its own tables.
/// </summary>
internal static class Samples
{
    public static readonly DateTimeOffset PrintedAt = new(2030, 5, 17, 9, 30, 0, TimeSpan.Zero);

    public static LabelText NitricAcid { get; } = new()
    {
        Id = "K7F2-9T",
        Title = "Nitric acid 65 %",
        TitleNote = "HNO3 · CAS 7697-37-2",
        SignalWord = "Danger",
        Pictograms = ["GHS03", "GHS06", "GHS05"],
        HazardStatements =
        [
            new("H272", "May intensify fire; oxidiser"),
            new("H331", "Toxic if inhaled"),
            new("H314", "Causes severe skin burns and eye damage"),
            new("EUH071", "Corrosive to the respiratory tract"),
        ],
        PrecautionaryStatements =
        [
            new("P210", "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking."),
            new("P280", "Wear protective gloves/protective clothing/eye protection/face protection."),
            new("P301+P330+P331", "IF SWALLOWED: Rinse mouth. Do NOT induce vomiting."),
            new("P303+P361+P353", "IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water."),
            new("P304+P340", "IF INHALED: Remove person to fresh air and keep comfortable for breathing."),
            new("P305+P351+P338", "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing."),
        ],
        Details =
        [
            new("Amount", "500 mL"),
            new("Opened", "2029-11-02"),
            new("Received", "2029-10-19"),
            new("Lot", "R-0417"),
            new("Place", "Prep room, acid cabinet, shelf 2"),
            new("Keeper", "A. Larsen"),
        ],
        Footnotes = ["Classified by Regulation (EC) No 1272/2008, Annex VI as of the 21st adaptation"],
    };

    public static LabelText Ether { get; } = new()
    {
        Id = "M3QX-4B",
        Title = "Diethyl ether",
        TitleNote = "(C2H5)2O · CAS 60-29-7",
        SignalWord = "Danger",
        Pictograms = ["GHS02", "GHS07"],
        HazardStatements =
        [
            new("H224", "Extremely flammable liquid and vapour"),
            new("H302", "Harmful if swallowed"),
            new("H336", "May cause drowsiness or dizziness"),
            new("EUH019", "May form explosive peroxides"),
            new("EUH066", "Repeated exposure may cause skin dryness or cracking"),
        ],
        PrecautionaryStatements =
        [
            new("P210", "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking."),
            new("P240", "Ground and bond container and receiving equipment."),
            new("P403+P233", "Store in a well-ventilated place. Keep container tightly closed."),
        ],
        Extra = ["HANDS OFF"],
        Details = [new("Amount", "about 180 mL"), new("Opened", "2028-03-11"), new("Place", "Prep room, flammables cabinet, shelf 1")],
    };

    public static LabelText UraniumMetal { get; } = new()
    {
        Id = "U92A-7C",
        Title = "Uranium, metal turnings",
        TitleNote = "U · CAS 7440-61-1",
        SignalWord = "Danger",
        Pictograms = ["GHS06", "GHS08"],
        HazardStatements =
        [
            new("H300+H330", "Fatal if swallowed or if inhaled"),
            new("H373", "May cause damage to organs through prolonged or repeated exposure"),
            new("H413", "May cause long lasting harmful effects to aquatic life"),
        ],
        PrecautionaryStatements =
        [
            new("P260", "Do not breathe dust/fume."),
            new("P264", "Wash hands thoroughly after handling."),
            new("P301+P310", "IF SWALLOWED: Immediately call a doctor."),
            new("P405", "Store locked up."),
        ],
        Extra = ["RADIOACTIVE"],
        Details = [new("Mass", "12.40 g"), new("Cover", "paraffin oil"), new("Activity", "0.31 MBq"), new("Place", "Element cabinet, drawer 6")],
    };

    public static LabelText Unknown { get; } = new()
    {
        Id = "Q4DW-2H",
        Title = "Contents unknown",
        TitleNote = "brown crust, sharp smell; found 2030-04-02 by A. Larsen",
        Extra = ["HANDS OFF"],
        Details = [new("Place", "Prep room, quarantine tray")],
    };

    public static LabelText Gold { get; } = new()
    {
        Id = "A9VV-1K",
        Title = "Gold, native, on quartz",
        TitleNote = "Au",
        Details = [new("Mass", "3.117 g"), new("Received", "2021-06-30"), new("Lot", "gift of the Moe family"), new("Place", "Hall, case 2, shelf 4")],
    };

    public static LabelText Chromate { get; } = new()
    {
        Id = "C6RN-8P",
        Title = "Potassium dichromate",
        TitleNote = "K2Cr2O7 · CAS 7778-50-9",
        SignalWord = "Danger",
        Pictograms = ["GHS03", "GHS06", "GHS05", "GHS08", "GHS09"],
        HazardStatements =
        [
            new("H272", "May intensify fire; oxidiser"),
            new("H301", "Toxic if swallowed"),
            new("H330", "Fatal if inhaled"),
            new("H312", "Harmful in contact with skin"),
            new("H314", "Causes severe skin burns and eye damage"),
            new("H317", "May cause an allergic skin reaction"),
            new("H334", "May cause allergy or asthma symptoms or breathing difficulties if inhaled"),
            new("H340", "May cause genetic defects"),
            new("H350", "May cause cancer"),
            new("H360FD", "May damage fertility. May damage the unborn child"),
            new("H372", "Causes damage to organs through prolonged or repeated exposure"),
            new("H410", "Very toxic to aquatic life with long lasting effects"),
        ],
        PrecautionaryStatements =
        [
            new("P201", "Obtain special instructions before use."),
            new("P260", "Do not breathe dust/fume/gas/mist/vapours/spray."),
            new("P280", "Wear protective gloves/protective clothing/eye protection/face protection."),
            new("P303+P361+P353", "IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water."),
            new("P304+P340", "IF INHALED: Remove person to fresh air and keep comfortable for breathing."),
            new("P305+P351+P338", "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing."),
        ],
        Details = [new("Amount", "100 g"), new("Received", "2027-01-08"), new("Place", "Prep room, poison cupboard"), new("Keeper", "A. Larsen")],
        Footnotes = ["Classified by Regulation (EC) No 1272/2008, Annex VI as of the 21st adaptation"],
    };

    public static LabelText SampleOfWarning { get; } = new()
    {
        Title = "Copper(II) sulfate pentahydrate",
        TitleNote = "CuSO4·5H2O",
        SignalWord = "Warning",
        Pictograms = ["GHS07", "GHS09"],
        HazardStatements =
        [
            new("H302", "Harmful if swallowed"),
            new("H319", "Causes serious eye irritation"),
            new("H410", "Very toxic to aquatic life with long lasting effects"),
        ],
        PrecautionaryStatements = [new("P273", "Avoid release to the environment."), new("P391", "Collect spillage.")],
    };

    public static LabelText LongName { get; } = NitricAcid with
    {
        Id = "L5NG-3M",
        Title = LongTitle(),
        TitleNote = null,
    };

    public static IReadOnlyList<LabelText> All { get; } =
        [NitricAcid, Ether, UraniumMetal, Unknown, Gold, Chromate, SampleOfWarning, LongName];

    /// <summary>An invented systematic name of exactly 200 characters.</summary>
    private static string LongTitle()
    {
        const string Name = "2-[4-(2-hydroxy-3-methoxybenzylideneamino)phenylsulfonylamino]-N-(4,6-dimethylpyrimidin-2-yl)benzenesulfonamide "
            + "bis(tetrabutylammonium) hexafluorophosphate dihydrate, α-modification, recrystallised";
        return Name.PadRight(200, 'x')[..200];
    }
}
