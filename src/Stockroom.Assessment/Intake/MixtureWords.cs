using Stockroom.Assessment.Recipes;
using Stockroom.Book;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Intake;

/// <summary>
/// Reads a composition as typed: "sodium hydroxide=10%; water=90%". Per cent is always mass of the pure substance in
/// 100 g; another basis is converted where stoichiometry allows it, and said, or refused.
/// </summary>
public static class MixtureWords
{
    /// <summary>The mixture under the name given.</summary>
    /// <exception cref="BookRefusal">A part is not known, a share is no per cent by mass, or they do not add up.</exception>
    public static Content Read(string name, string mix, SubstanceCatalogue catalogue)
    {
        var notes = new List<string>();
        var bases = new ShareBasis(catalogue);
        var shares = new List<OpenShare>();
        foreach (var piece in mix.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var (words, share) = Cut(piece);
            shares.AddRange(PartsOf(words, TypedShare.Read(share, words), catalogue, bases, notes));
        }

        if (shares.Count == 0)
            throw new BookRefusal("a mixture needs at least one part");
        var parts = OpenShares.Settle(name, shares, notes);
        var total = parts.Sum(p => p.Percent);
        if (total < 100m)
            notes.Add($"{100m - total:0.####} % by mass was not named and is unknown");
        return new Content { Name = name, State = StateOf(parts), Parts = parts, Notes = notes };
    }

    // Words before '=', the share behind; '>' and '<' may stand without it.
    private static (string Words, string Share) Cut(string piece)
    {
        var cut = piece.IndexOf('=', StringComparison.Ordinal);
        if (cut > 0 && piece[cut - 1] is not ('<' or '>'))
            return (piece[..cut].Trim(), piece[(cut + 1)..].Trim());
        var open = piece.LastIndexOfAny(['<', '>']);
        return open > 0
            ? (piece[..open].Trim(), piece[open..].Trim())
            : throw new BookRefusal($"'{piece}' is not a part; write for example sodium hydroxide=10%");
    }

    private static IEnumerable<OpenShare> PartsOf(string words, TypedShare share, SubstanceCatalogue catalogue, ShareBasis bases, List<string> notes)
    {
        if (catalogue.ResolveSubstance(words) is { } substance)
            return [OnPureSubstance(substance, share, bases, notes)];
        var resolution = catalogue.Resolve(words);
        if (resolution.Content is not { } preparation)
            throw new BookRefusal(resolution.Problem ?? $"'{words}' is not in the catalogue");
        if (share.Basis.Length > 0)
            throw new BookRefusal($"'{share.Text}' of {words}: a preparation is taken in per cent of itself; write for example {words}=10%");
        notes.Add($"{preparation.Name} is itself a mixture; its parts were counted");
        return preparation.Parts.Select(p => new OpenShare(p.Substance, share.Low * p.Percent / 100m, share.High * p.Percent / 100m, $"in {words} {share.Text}"));
    }

    private static OpenShare OnPureSubstance(Substance substance, TypedShare share, ShareBasis bases, List<string> notes)
    {
        if (share.Basis.Length == 0)
            return new OpenShare(substance, share.Low, share.High, share.Text);
        if (bases.Of(substance, share.Basis) is not { } conversion)
        {
            var known = bases.KnownFor(substance).ToList();
            throw new BookRefusal(TypedShare.NotByMass(share.Text, substance.Name)
                + (known.Count == 0 ? "" : $"; a basis that is converted: {string.Join(", ", known)}"));
        }

        var low = Math.Round(share.Low * conversion.Factor, 4);
        var high = share.High is { } h ? Math.Round(h * conversion.Factor, 4) : (decimal?)null;
        if (high > 100m || low > 100m)
            throw new BookRefusal($"'{share.Text}' of {substance.Name} would be {Math.Max(low, high ?? 0):0.####} % by mass of the pure substance, more than 100 %");
        notes.Add($"{substance.Name} {share.Text} was converted to {high ?? low:0.####} % by mass ({conversion.Because})");
        return new OpenShare(substance, low, high, share.Text);
    }

    // One liquid makes the whole a liquid; gases alone stay a gas.
    private static MatterState StateOf(IReadOnlyList<Part> parts)
    {
        foreach (var state in (MatterState[])[MatterState.Liquid, MatterState.Unknown, MatterState.Solid])
        {
            if (parts.Any(p => p.Substance.State == state))
                return state;
        }

        return MatterState.Gas;
    }
}
