namespace Stockroom.Labels.Layout;

/// <summary>Search by halving in a list that is ordered from the most demanding to the least.</summary>
internal static class Halving
{
    /// <summary>
    /// The first of <paramref name="count"/> trials that succeeds, where all behind a success succeed too; -1 where even the last
    /// one fails. Where that order has exceptions, it is a success whose forerunner fails.
    /// </summary>
    public static (int Index, T? Result) First<T>(int count, Func<int, T?> trial)
        where T : class
    {
        // The first of all is the usual case.
        if (count > 0 && trial(0) is { } all)
        {
            return (0, all);
        }

        if (count < 2 || trial(count - 1) is not { } result)
        {
            return (-1, null);
        }

        var (fails, succeeds) = (0, count - 1);
        while (succeeds - fails > 1)
        {
            var middle = fails + ((succeeds - fails) / 2);
            if (trial(middle) is { } better)
            {
                (succeeds, result) = (middle, better);
            }
            else
            {
                fails = middle;
            }
        }

        return (succeeds, result);
    }
}
