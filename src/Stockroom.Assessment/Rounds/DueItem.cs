using Stockroom.Book;

namespace Stockroom.Assessment.Rounds;

/// <summary>Something that is to be done to a container, and since when.</summary>
public sealed record DueItem(ContainerId Container, string What, DateOnly Since, string Because, string Source);
