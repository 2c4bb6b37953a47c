using Stockroom.Assessment.Arrangement;

namespace Stockroom.Verbs;

/// <summary>A plan, and the places for one container, in plain sentences.</summary>
internal static class ArrangeText
{
    private const int UnsafeShown = 5;

    public static void PrintPlan(TextWriter to, Plan plan, Shelving shelving)
    {
        var things = shelving.Things.ToDictionary(t => t.Key, StringComparer.Ordinal);
        var spots = shelving.Spots.ToDictionary(s => s.Id, StringComparer.Ordinal);
        to.WriteLine(Summary(plan));
        foreach (var (move, number) in plan.Moves.Select((m, i) => (m, i + 1)))
        {
            to.WriteLine();
            to.WriteLine($"{number}. {(move.IsParked ? "Park" : "Move")} {things[move.Key]} to {spots[move.To].Path}");
            if (move.From is { } from)
                to.WriteLine($"   from {spots[from].Path}");
            to.WriteLine($"   {move.Because}");
        }

        foreach (var left in plan.Left)
        {
            to.WriteLine();
            to.WriteLine($"No safe place: {things[left.Key]}");
            to.WriteLine($"   {left.Because}");
        }

        foreach (var extra in plan.ExtraPlaces)
        {
            to.WriteLine();
            to.WriteLine($"Would help: {extra.Because}");
        }

        foreach (var untouched in plan.HandsOff)
        {
            to.WriteLine();
            to.WriteLine($"Hands off: {things[untouched.Key]}");
            to.WriteLine($"   {untouched.Because}");
        }

        foreach (var note in plan.Notes)
        {
            to.WriteLine();
            to.WriteLine($"note: {note}");
        }
    }

    public static void PrintPlaces(TextWriter to, Thing thing, IReadOnlyList<PlaceFor> places)
    {
        if (thing.HandsOff is { } reason)
            to.WriteLine($"{thing} is marked hands off ({reason}): do not move it; get help");
        if (thing.Pinned is { } pinned)
            to.WriteLine($"{thing} is pinned to its place ({pinned})");
        var safe = places.Where(p => p.IsSafe).ToList();
        if (safe.Count == 0)
            to.WriteLine($"no place there is would be safe for {thing.Label}");
        foreach (var place in safe)
            to.WriteLine($"{place.Spot.Path} (id {place.Spot.Id}): {place.Because}");
        foreach (var place in places.Where(p => !p.IsSafe).Take(UnsafeShown))
            to.WriteLine($"not {place.Spot.Path}: {place.Because}");
        if (places.Count - safe.Count > UnsafeShown)
            to.WriteLine($"nor {places.Count - safe.Count - UnsafeShown} places more");
    }

    private static string Summary(Plan plan)
    {
        if (plan.Moves.Count == 0 && plan.Left.Count == 0)
            return "everything stands as it should; nothing is to be moved";
        var parked = plan.Moves.Count(m => m.IsParked);
        var moves = plan.Moves.Count switch
        {
            0 => "nothing that could be moved would help",
            1 => "one move, in which nothing gets worse on the way",
            _ => $"{plan.Moves.Count} moves{(parked > 0 ? $", {parked} of them to wait on the way" : "")}, in an order in which no step makes anything worse",
        };
        var left = plan.Left.Count == 0 ? "then everything stands as it should" : $"{plan.Left.Count} without a safe place";
        return $"{moves}; {left}{(plan.IsProven && plan.Moves.Count > 0 ? "; fewer moves cannot do" : "")}";
    }
}
