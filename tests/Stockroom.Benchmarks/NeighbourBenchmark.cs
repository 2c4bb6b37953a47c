using BenchmarkDotNet.Attributes;
using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Benchmarks;

/// <summary>
/// All pairs of a store checked, the same store every time. Containers are kept by kind, as a sensible keeper does: a hundred to a cabinet, each cabinet
/// for things that get on, and one thing in a thousand that stands wrong.
/// </summary>
[InProcess]
[MemoryDiagnoser]
public class NeighbourBenchmark
{
    private const int PerCabinet = 100;
    private const int ShelvesPerCabinet = 4;
    private const int CabinetsPerRoom = 10;

    private ShelfItem[] _items = [];

    [Params(1_000, 10_000, 20_000, 100_000)]
    public int Containers { get; set; } = 20_000;

    [Params(ClassTable.None, ClassTable.Sea)]
    public ClassTable Table { get; set; }

    /// <summary>True where everything stands everywhere, as on the worst of shelves.</summary>
    [Params(false, true)]
    public bool Mixed { get; set; }

    [GlobalSetup]
    public void MakeStore()
    {
        var random = new Random(20260102);
        var profiles = SubstanceCatalogue.Default.Substances.Select(Content.Of).Concat(SubstanceCatalogue.Default.Preparations)
            .Select(c => ContactProfile.Of(c, Classifier.Classify(c, HazardFacts.Default, RuleSet.Eu)))
            .Where(p => !p.Carries("explosive")).ToArray();
        var judge = new PairJudge(Table);
        _items = new ShelfItem[Containers];
        var kept = new List<ContactProfile>();
        for (var i = 0; i < Containers; i++)
        {
            if (Mixed && i == 0)
                kept = [.. Enumerable.Range(0, 200).Select(_ => profiles[random.Next(profiles.Length)])];
            if (!Mixed && i % PerCabinet == 0)
                kept = Peaceful(profiles, judge, random);
            var profile = random.Next(1000) == 0 ? profiles[random.Next(profiles.Length)] : kept[random.Next(kept.Count)];
            _items[i] = new ShelfItem($"K{i:000000}", profile.Name, profile, StandOf(i));
        }
    }

    /// <summary>Everything anew, as after opening a book: no judgement is kept from the run before.</summary>
    [Benchmark]
    public int FindAll() => new NeighbourFinder(new PairJudge(Table)).Find(_items).Sum(f => f.Pairs.Count);

    // Up to thirty contents that may share a tray.
    private static List<ContactProfile> Peaceful(ContactProfile[] profiles, PairJudge judge, Random random)
    {
        var kept = new List<ContactProfile>();
        for (var tries = 0; tries < 300 && kept.Count < 30; tries++)
        {
            var next = profiles[random.Next(profiles.Length)];
            if (kept.TrueForAll(k => judge.Judge(k, next).IsFree))
                kept.Add(next);
        }

        return kept;
    }

    private static Stand StandOf(int index)
    {
        var cabinet = index / PerCabinet;
        var shelf = index % ShelvesPerCabinet;
        var room = cabinet / CabinetsPerRoom;
        return new Stand
        {
            Room = new PlaceName($"R{room}", $"room {room}"),
            Cabinet = new PlaceName($"C{cabinet}", $"cabinet {cabinet}"),
            Shelf = new PlaceName($"C{cabinet}-{shelf}", $"shelf {shelf}"),
            CabinetOrder = cabinet % CabinetsPerRoom,
            ShelfOrder = shelf,
        };
    }
}
