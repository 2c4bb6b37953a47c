namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>What a plan could not know, so that nobody takes silence for room.</summary>
internal static class PlanNotes
{
    public static IEnumerable<string> Of(Shelving shelving)
    {
        var offered = shelving.Spots.Where(s => s.IsOffered).ToList();
        var bounded = shelving.Limits.Where(l => !l.IsCustomary).Select(l => l.Place).ToHashSet(StringComparer.Ordinal);
        var open = offered.Count(s => !s.Within.Any(bounded.Contains));
        if (open > 0 && shelving.Things.Count > 0)
            yield return $"for {open} of {offered.Count} places nothing is said of what they can take; they are taken as having room";
        foreach (var measure in shelving.Limits.Where(l => !l.IsCustomary).Select(l => l.Measure).Distinct().Order())
        {
            var unknown = shelving.Things.Where(t => t.Burden.Of(measure) is null).Select(t => t.Key).ToList();
            if (unknown.Count > 0)
                yield return $"{Word(measure)} of {Lists.Few(unknown)} is not known and counts as nothing against the limits";
        }
    }

    private static string Word(Measure measure) => measure switch
    {
        Measure.Milligrams => "the weight",
        Measure.Microlitres => "the volume",
        _ => "the volume of flammable liquid",
    };
}
