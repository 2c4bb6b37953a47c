namespace Stockroom.Themes;

/// <summary>What a piece of text is, so that a theme can say how it looks. The words say the same without it.</summary>
internal enum Tone
{
    Plain = 0,
    Quiet,
    Heading,
    Chosen,
    Danger,
    Warning,
    Notice,
    Entry,
}
