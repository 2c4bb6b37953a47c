using System.Diagnostics.CodeAnalysis;

namespace Stockroom.Book;

/// <summary>
/// What was asked cannot be booked. The message is one line: what was wrong, with what value, what would be right.
/// </summary>
[SuppressMessage("Naming", "MA0058", Justification = "A refusal is what the trade calls it; it is thrown and shown, not a fault of the program.")]
[SuppressMessage("Naming", "CA1710", Justification = "As above.")]
public sealed class BookRefusal : Exception
{
    public BookRefusal(string message)
        : base(message)
    {
    }

    public BookRefusal(string message, Exception cause)
        : base(message, cause)
    {
    }
}
