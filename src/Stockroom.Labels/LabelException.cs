namespace Stockroom.Labels;

/// <summary>A label, stock or output that cannot be as asked; the message is one line for the keeper.</summary>
public sealed class LabelException : Exception
{
    public LabelException(string message)
        : base(message)
    {
    }

    public LabelException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
