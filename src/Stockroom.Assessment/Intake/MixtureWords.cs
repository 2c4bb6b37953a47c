using System.Globalization;
using Stockroom.Book;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Intake;

/// <summary>
/// Reads a composition as typed: "sodium hydroxide=10%; water=90%". Per cent is always mass of the pure substance in
/// 100 g; any other basis is refused.
/// </summary>
public static class MixtureWords
{
    /// <summary>The mixture under the name given.</summary>
    /// <exception cref="BookRefusal">A part is not known, a share is no per cent by mass, or they do not add up.</exception>
    public static Content Read(string name, string mix, SubstanceCatalogue catalogue)
    {
        var parts = new List<Part>();
        foreach (var piece in mix.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var cut = piece.LastIndexOf('=');
            if (cut <= 0)
                throw new BookRefusal($"'{piece}' is not a part; write for example sodium hydroxide=10%");
            var words = piece[..cut].Trim();
            var share = piece[(cut + 1)..].Trim();
            var number = share.EndsWith('%') ? share[..^1].TrimEnd() : share;
            if (!decimal.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) || percent is <= 0 or > 100)
                throw new BookRefusal($"'{share}' of {words} is not per cent by mass of the pure substance; write a number above 0 and up to 100");
            if (catalogue.ResolveSubstance(words) is not { } substance)
            {
                var nearest = catalogue.Resolve(words);
                throw new BookRefusal(nearest.Problem ?? $"'{words}' is itself a preparation; name the substances in it");
            }

            parts.Add(new Part(substance, percent));
        }

        if (parts.Count == 0)
            throw new BookRefusal("a mixture needs at least one part");
        var total = parts.Sum(p => p.Percent);
        if (total > 100m)
            throw new BookRefusal($"the parts of {name} add up to {total} % by mass, more than 100 %");
        return new Content
        {
            Name = name,
            State = parts.Exists(p => p.Substance.State == MatterState.Liquid) ? MatterState.Liquid : parts[0].Substance.State,
            Parts = parts,
            Notes = total < 100m ? [$"{100m - total} % by mass was not named and is unknown"] : [],
        };
    }
}
