using System.Text;

namespace Stockroom.Book.Places;

/// <summary>The short names of places.</summary>
public static class PlaceIds
{
    private const int Longest = 60;

    /// <summary>A free id made from a name: "Fire cabinet, upper" becomes "fire-cabinet-upper".</summary>
    public static string For(string name, BookState state)
    {
        var slug = new StringBuilder();
        foreach (var c in name.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
                slug.Append(c);
            else if (slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }

        var stem = slug.ToString().Trim('-');
        stem = stem.Length == 0 ? "place" : stem[..Math.Min(stem.Length, Longest - 6)].Trim('-');
        var id = stem;
        for (var n = 2; state.Places.ContainsKey(id); n++)
            id = $"{stem}-{n}";
        return id;
    }

    internal static void Check(string? id)
    {
        if (string.IsNullOrEmpty(id) || id.Length > Longest || id.Any(c => !char.IsAsciiLetterLower(c) && !char.IsAsciiDigit(c) && c is not ('-' or '.' or '/' or '_')))
            throw new BookRefusal($"'{id}' cannot be a place's id; it has 1 to {Longest} characters out of a-z, 0-9 and - . / _");
    }
}
