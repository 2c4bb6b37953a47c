using Stockroom.Assessment.Concerns;
using Stockroom.Book;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>Something that stands where it should not, whatever its neighbours are: one finding a cause and place.</summary>
/// <param name="Rule">The rule in a few words.</param>
/// <param name="Cause">One sentence that a volunteer understands, with what to do.</param>
/// <param name="Would">What could happen, in the words of <see cref="Consequences"/>.</param>
/// <param name="Source">Who says so; from memory or not.</param>
/// <param name="Severity">How bad it is.</param>
/// <param name="PlaceId">The place concerned.</param>
/// <param name="Containers">Whom it concerns.</param>
public sealed record PlaceFinding(
    string Rule, string Cause, IReadOnlyList<string> Would, string Source, Severity Severity, string PlaceId, IReadOnlyList<ContainerId> Containers);
