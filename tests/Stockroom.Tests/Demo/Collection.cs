using Stockroom.Tests.Verbs;

namespace Stockroom.Tests.Demo;

/// <summary>An invented collection in the demo's files: a school's prep room with trouble of its own.</summary>
internal sealed class Collection(Keeper keeper)
{
    private const string PlacesHead = "place	name	kind	inside	order	height_m	tray	mean_c	min_c	max_c	daily_swing_k";
    private const string ContainersHead = "container	content	amount	vessel	closure	cover	cover_mm	packing	place	how	origin	received	opened	sealed	gross_g	note";
    private const string HistoryHead = "when	container	what	value	detail	by";

    public List<string> Places { get; } =
    [
        "# a school", PlacesHead,
        "lab	laboratory	room					21	15	28	5",
        "north	north cabinet	cabinet	lab	1",
        "north-top	top shelf	shelf	north		1.5",
        "north-low	low shelf	shelf	north		0.4",
        "south	south cabinet	acid cabinet	lab	5",
        "south-low	lower shelf of the south cabinet	shelf	south		0.4",
    ];

    public List<string> Containers { get; } =
    [
        ContainersHead,
        "acid	nitric acid 65%	400 mL	glass reagent bottle 500 mL	screw cap, PTFE-faced liner				north-top	bought		6 months ago	5 months ago",
        "spirit	acetone	400 mL	glass reagent bottle 500 mL	screw cap, PTFE-faced liner				north-low	bought		2025-12-01	today",
        "salt	sodium chloride	500 g	HDPE bottle 500 mL	HDPE screw cap				south-low	bought		1 week ago",
        "thf	tetrahydrofuran	200 mL	glass reagent bottle 250 mL	screw cap, PTFE-faced liner				north-low	bought		2 years ago	13 months ago",
    ];

    public List<string> History { get; } =
    [
        HistoryHead,
        "3 days ago	acid	tested	in order	round	Ada",
        "3 days ago	thf	tested	in order	round	Ada",
        "yesterday	spirit	weighed	560.1	0.1	Ada",
    ];

    public string Folder => Path.Combine(keeper.Folder, "collection");

    /// <summary>Puts other words into a cell of the row that begins with the key.</summary>
    public static void Put(List<string> lines, string key, int cell, string words)
    {
        var at = lines.FindIndex(l => l.Split('\t').Contains(key, StringComparer.Ordinal));
        var cells = lines[at].Split('\t').ToList();
        while (cells.Count <= cell)
            cells.Add("");
        cells[cell] = words;
        lines[at] = string.Join('\t', cells);
    }

    public Answer Demo(string lineEnd = "\n")
    {
        Directory.CreateDirectory(Folder);
        File.WriteAllText(Path.Combine(Folder, "places.tsv"), string.Join(lineEnd, Places) + lineEnd);
        File.WriteAllText(Path.Combine(Folder, "containers.tsv"), string.Join(lineEnd, Containers) + lineEnd);
        if (History.Count > 0)
            File.WriteAllText(Path.Combine(Folder, "history.tsv"), string.Join(lineEnd, History) + lineEnd);
        return keeper.Run("demo", "--report", "--from", Folder, "--book", keeper.Book);
    }
}
