namespace Stockroom.Chemistry.Catalogue;

/// <summary>Offers the names nearest to one that was not found, by the fewest letters changed (Damerau 1964).</summary>
public static class NearestNames
{
    public static IReadOnlyList<string> To(string text, IEnumerable<string> names, int count = 3)
    {
        var key = NameKey.Of(text);
        var limit = Math.Max(2, key.Length / 3);
        return [.. names
            .Select(n => (Name: n, Distance: Score(key, NameKey.Of(n))))
            .Where(n => n.Distance <= limit)
            .OrderBy(n => n.Distance)
            .ThenBy(n => n.Name, StringComparer.Ordinal)
            .Select(n => n.Name)
            .Distinct()
            .Take(count)];
    }

    // A name that begins with the whole of what was typed is near, however much longer it is.
    private static int Score(string typed, string name) =>
        typed.Length >= 4 && name.StartsWith(typed, StringComparison.Ordinal) ? 1 : Distance(typed, name);

    private static int Distance(string a, string b)
    {
        var before = new int[b.Length + 1];
        var previous = new int[b.Length + 1];
        var current = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
            previous[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                current[j] = Math.Min(Math.Min(previous[j] + 1, current[j - 1] + 1), previous[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    current[j] = Math.Min(current[j], before[j - 2] + 1);
            }

            (before, previous, current) = (previous, current, before);
        }

        return previous[b.Length];
    }
}
