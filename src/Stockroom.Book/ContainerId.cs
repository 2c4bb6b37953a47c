using Stockroom.Book.Identity;

namespace Stockroom.Book;

/// <summary>
/// A container's id, short enough to read aloud: four characters (five or six in a very large book), the first a letter,
/// and a check character by ISO/IEC 7064 MOD 37,36. None of its letters looks like a digit. Written in capitals without spaces.
/// </summary>
public sealed record ContainerId : IComparable<ContainerId>
{
    private readonly string _text;

    private ContainerId(string text) => _text = text;

    /// <summary>Place in the fixed order in which ids are given out, from 0.</summary>
    public long Serial
    {
        get
        {
            var before = IdSpace.All.Where(s => s.Length < _text.Length - 1).Sum(s => s.Size);
            return before + IdSpace.All.First(s => s.Length == _text.Length - 1).Serial(_text[..^1]);
        }
    }

    /// <summary>The first id at or after a serial; serials whose check character would fall outside the alphabet are skipped.</summary>
    /// <exception cref="BookRefusal">All ids are used up (more than 100 million).</exception>
    public static ContainerId AtOrAfter(long serial)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(serial);
        foreach (var space in IdSpace.All)
        {
            for (; serial < space.Size; serial++)
            {
                var body = space.Body(serial);
                var text = body + CheckCharacter.For(body);
                if (IsUsable(text))
                    return new ContainerId(text);
            }

            serial -= space.Size;
        }

        throw new BookRefusal("every container id has been given out; start another book");
    }

    /// <summary>Reads an id as a keeper types it: lower case, spaces and hyphens are accepted.</summary>
    /// <exception cref="BookRefusal">It is not an id; the message says which kind of mistake it is.</exception>
    public static ContainerId Parse(string text) =>
        TryParse(text, out var id) is { } mistake && mistake == IdMistake.None ? id! : throw new BookRefusal(Explain(text, mistake));

    public static IdMistake TryParse(string? text, out ContainerId? id)
    {
        id = null;
        var plain = Plain(text ?? "");
        if (plain.Length == 0)
            return IdMistake.Empty;
        if (plain.Any(c => !IdSpace.Alphabet.Contains(c, StringComparison.Ordinal)))
            return IdMistake.Character;
        if (!IdSpace.All.Any(s => s.Length == plain.Length - 1))
            return IdMistake.Length;
        if (!IdSpace.Letters.Contains(plain[0], StringComparison.Ordinal))
            return IdMistake.FirstCharacter;
        if (!CheckCharacter.Holds(plain))
            return IdMistake.CheckCharacter;
        id = new ContainerId(plain);
        return IdMistake.None;
    }

    public int CompareTo(ContainerId? other) => string.CompareOrdinal(_text, other?._text);

    public override string ToString() => _text;

    private static string Explain(string text, IdMistake mistake) => mistake switch
    {
        IdMistake.Empty => "a container's id is missing; it looks like K4T7X",
        IdMistake.Character => $"'{text}' is not a container's id: '{Plain(text).First(c => !IdSpace.Alphabet.Contains(c, StringComparison.Ordinal))}' never stands in one (only digits and {IdSpace.Letters})",
        IdMistake.Length => $"'{text}' is not a container's id: it has {Plain(text).Length} characters, an id has 5 (the last a check character)",
        IdMistake.FirstCharacter => $"'{text}' is not a container's id: the first character is always a letter",
        _ => $"'{text}' is a mistyped container's id: its check character does not fit; compare it with the label",
    };

    private static string Plain(string text) =>
        string.Concat(text.Where(c => c is not (' ' or '-'))).ToUpperInvariant();

    // An id that turns into another id when two neighbouring characters are swapped is not given out.
    private static bool IsUsable(string text)
    {
        if (!IdSpace.Alphabet.Contains(text[^1], StringComparison.Ordinal))
            return false;
        for (var i = 1; i < text.Length; i++)
        {
            if (text[i] == text[i - 1])
                continue;
            var swapped = text[..(i - 1)] + text[i] + text[i - 1] + text[(i + 1)..];
            if (IdSpace.Letters.Contains(swapped[0], StringComparison.Ordinal) && CheckCharacter.Holds(swapped))
                return false;
        }

        return true;
    }
}
