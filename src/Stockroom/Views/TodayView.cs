namespace Stockroom.Views;

/// <summary>What is wrong and what is due on a day, worst and oldest first.</summary>
public sealed record TodayView(DateOnly Date, string BookName, int Containers, IReadOnlyList<WrongLine> Wrong, IReadOnlyList<DueLine> Due);

/// <summary>Something that is wrong now.</summary>
/// <param name="Weight">Danger or Warning or Notice.</param>
/// <param name="Title">One sentence that a volunteer understands.</param>
/// <param name="Because">The reason with its figures.</param>
/// <param name="Source">Which rule, table or measurement says so.</param>
/// <param name="Containers">Ids of those it concerns, the first one the one to act on.</param>
public sealed record WrongLine(Attention Weight, string Title, string Because, string Source, IReadOnlyList<string> Containers);

/// <summary>Something that is due.</summary>
public sealed record DueLine(string Container, string Content, string Place, string What, DateOnly Since, string Because, string Source);
