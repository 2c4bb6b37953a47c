namespace Stockroom.Book.Identity;

/// <summary>What is wrong with a text that should be a container's id.</summary>
public enum IdMistake
{
    None = 0,
    Empty,
    Length,
    Character,
    FirstCharacter,
    CheckCharacter,
}
