namespace Stockroom.Views;

/// <summary>One line that stands on every screen.</summary>
public sealed record Standing(Attention Weight, string Text);
