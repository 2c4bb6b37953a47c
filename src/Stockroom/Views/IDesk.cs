namespace Stockroom.Views;

/// <summary>
/// What the keeper can ask of an open stock book; the screens and the plain-line verbs ask the same desk.
/// Every answer is computed from the book and the facts on the date of the desk's clock.
/// </summary>
public interface IDesk
{
    /// <summary>Name of the book's folder.</summary>
    string BookName { get; }

    /// <summary>Counts up with every change, so that a screen knows when to ask again.</summary>
    long Version { get; }

    /// <summary>What stands on every screen, such as that the book is damaged; null where all is well.</summary>
    Standing? Standing => null;

    /// <summary>Ends when what is shown was verified; the screens ask again then.</summary>
    Task Verified => Task.CompletedTask;

    TodayView Today();

    IReadOnlyList<HoldingRow> Holdings();

    /// <summary>What, how much, where, loss band, hazards, neighbours, history of one container.</summary>
    Card CardOf(string containerId);

    IReadOnlyList<PlaceNode> Places();
}
