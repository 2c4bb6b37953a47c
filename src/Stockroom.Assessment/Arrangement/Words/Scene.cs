using Stockroom.Assessment.Arrangement.Search;
using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>A proposal that can be asked who stands against whom, before and after.</summary>
internal sealed class Scene
{
    private readonly PairJudge _judge;
    private readonly int[] _end;

    public Scene(Proposal proposal, PairJudge judge)
    {
        Proposal = proposal;
        _judge = judge;
        _end = [.. proposal.At.Select((q, i) => q == Layout.Nowhere ? proposal.Layout.Home[i] : q)];
    }

    public Proposal Proposal { get; }

    public Layout Plan => Proposal.Layout;

    public Thing Thing(int index) => Plan.Shelving.Things[index];

    public Spot Spot(int index) => Plan.Shelving.Spots[index];

    /// <summary>Of each thing: where it stands in the end; what is left stands at home.</summary>
    public IReadOnlyList<int> End => _end;

    public bool IsLeft(int thing) => Proposal.At[thing] == Layout.Nowhere;

    public bool IsMoved(int thing) => !IsLeft(thing) && Proposal.At[thing] != Plan.Home[thing];

    /// <summary>What would stand against a thing at a spot, all others being as they are now.</summary>
    public IReadOnlyList<Discord> Before(int thing, int spot) => Against(thing, spot, Plan.Home);

    /// <summary>What would stand against a thing at a spot, all others being as they are in the end.</summary>
    public IReadOnlyList<Discord> After(int thing, int spot) => Against(thing, spot, _end);

    /// <summary>What would stand against a thing at some stand that is not there yet, in the end.</summary>
    public IReadOnlyList<Discord> At(int thing, Stand stand) =>
        [.. Enumerable.Range(0, Plan.Things)
            .Where(j => j != thing && _end[j] >= 0)
            .Select(j => Discord.Between(Thing(thing), stand, Thing(j), Spot(_end[j]).Stand, _judge))
            .OfType<Discord>()];

    /// <summary>What one thing at a spot has against another at a spot.</summary>
    public Discord? Between(int one, int spot, int other, int otherSpot) =>
        Discord.Between(Thing(one), Spot(spot).Stand, Thing(other), Spot(otherSpot).Stand, _judge);

    private List<Discord> Against(int thing, int spot, IReadOnlyList<int> where)
    {
        var g = Plan.Group[thing];
        var discords = new List<Discord>();
        for (var j = 0; spot >= 0 && j < Plan.Things; j++)
        {
            if (j != thing && where[j] >= 0 && Plan.Clashes(g, spot, Plan.Group[j], where[j]) && Between(thing, spot, j, where[j]) is { } discord)
                discords.Add(discord);
        }

        return discords;
    }
}
