using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Intake;

/// <summary>
/// Turns what a keeper says into an entry of the ledger, or refuses it with one line. Names are looked up in the book's
/// catalogue, where one is given, so that the keeper's own substances count.
/// </summary>
public sealed class IntakeDesk(PropertyFacts facts, WareCatalogue wares, SubstanceCatalogue? catalogue = null)
{
    private readonly SubstanceCatalogue _catalogue = catalogue ?? facts.Catalogue;

    private static readonly string[] StateWords = ["liquid", "solid", "gas", "powder", "crystals", "metal"];

    /// <summary>The entry that brings a container into the book.</summary>
    /// <exception cref="BookRefusal">Something said is not known or cannot be, in one line.</exception>
    public Received Receive(IntakeRequest request, ContainerId id, DateTimeOffset happenedAt)
    {
        var orphan = request.Content.Trim().Equals("orphan", StringComparison.OrdinalIgnoreCase);
        var content = orphan ? Orphan(request) : ContentOf(request);
        var vessel = Ware("vessel", request.Vessel, wares.Vessels.Select(v => v.Name));
        var booked = Book(request, content, vessel);
        return new Received
        {
            Container = id,
            HappenedAt = happenedAt,
            Content = content.Name,
            Parts = request.Mix is null ? null : [.. content.Parts.Select(p => new PartShare(p.Substance.Name, p.Percent))],
            State = orphan || request.Mix is not null ? content.State : null,
            IsOrphan = orphan,
            Seen = orphan ? request.Seen : null,
            FoundBy = request.FoundBy,
            Lot = new Lot { How = orphan ? LotOrigin.Found : request.How, Origin = request.Origin },
            Vessel = vessel,
            Closure = Ware("closure", request.Closure, wares.Closures.Select(c => c.Name)),
            Cover = CoverThatFits(request, vessel),
            CoverDepthMillimetres = request.CoverDepthMillimetres,
            Packing = request.Packing,
            To = request.Place,
            Quantity = request.Amount,
            NetGrams = booked?.Grams,
            Density = booked?.Density,
            TareGrams = request.TareGrams,
            GrossGrams = request.GrossGrams,
            Note = request.Note,
        };
    }

    /// <summary>A content by the keeper's words; a composition makes it a home-made mixture of that name.</summary>
    /// <exception cref="BookRefusal">It is not in the catalogue; the line offers the nearest.</exception>
    public Content ContentOf(IntakeRequest request)
    {
        if (request.Mix is { } mix)
            return MixtureWords.Read(request.Content, mix, _catalogue);
        var resolution = _catalogue.Resolve(request.Content);
        return resolution.Content ?? throw new BookRefusal(resolution.Problem!
            + "; something unknown is booked with the word 'orphan' and what is seen on it");
    }

    /// <summary>What a field of a receipt is corrected to, looked up as on the way in.</summary>
    /// <returns>The value as it is booked; as it was given, where the field is not one of those.</returns>
    /// <exception cref="BookRefusal">It is not known or cannot be, in one line.</exception>
    public string Corrected(Received receipt, string field, string value) => field switch
    {
        // What an orphan or a home-made mixture is called is the keeper's own affair.
        "content" when !receipt.IsOrphan && receipt.Parts is null => ContentOf(new IntakeRequest { Content = value, Place = receipt.To }).Name,
        "vessel" => Ware("vessel", value, wares.Vessels.Select(v => v.Name))!,
        "closure" => Ware("closure", value, wares.Closures.Select(c => c.Name))!,
        "cover" => CoverOf(value) ?? throw new BookRefusal("to take a cover away, write cover= with nothing behind it"),
        "quantity" when !TypedAmount.TryParse(value, out _, out var problem) => throw new BookRefusal(problem),
        _ => value,
    };

    private static Content Orphan(IntakeRequest request)
    {
        if (string.IsNullOrWhiteSpace(request.Seen))
            throw new BookRefusal("an orphan needs what is seen on it, for example \"unknown corrosive liquid\"");
        if (request.Mix is not null)
            throw new BookRefusal("an orphan has no known composition");
        return Content.Orphan(request.Seen.Trim(), StateIn(request.Seen));
    }

    // Only a state that was seen; where none was said it stays unknown and counts as the worst.
    private static MatterState StateIn(string seen)
    {
        var words = seen.ToLowerInvariant().Split([' ', ',', ';', '.'], StringSplitOptions.RemoveEmptyEntries);
        return StateWords.FirstOrDefault(w => words.Contains(w)) switch
        {
            "liquid" => MatterState.Liquid,
            "gas" => MatterState.Gas,
            null => MatterState.Unknown,
            _ => MatterState.Solid,
        };
    }

    private AmountBooked? Book(IntakeRequest request, Content content, string? vessel)
    {
        if (request.Amount is not { } words)
            return null;
        if (!TypedAmount.TryParse(words, out var amount, out var problem))
            throw new BookRefusal(problem);
        var booked = AmountBooking.Of(amount, content, facts);
        if (booked.Problem is { } unbookable)
            throw new BookRefusal(unbookable);
        CheckFits(amount, booked, content, vessel);
        return booked;
    }

    // What is more than its vessel holds was mistyped; a powder takes more room still than its density says.
    private void CheckFits(TypedAmount amount, AmountBooked booked, Content content, string? vessel)
    {
        if (vessel is null || content.State == MatterState.Gas || wares.Vessels.First(v => v.Name == vessel) is not { } ware)
            return;
        var millilitres = amount.IsVolume ? (double)amount.Value : VolumeOf(booked, content);
        if (millilitres > ware.Volume.Millilitres * 1.25)
            throw new BookRefusal($"{amount} of {content.Name} is about {millilitres:0} mL, more than one {ware.Name} holds");
    }

    private double VolumeOf(AmountBooked booked, Content content)
    {
        var density = content.Pure is { } pure ? facts.Density(pure, Temperature.FromCelsius(20)).Value : content.Density;
        return density is { } known ? (double)booked.Grams!.Value / known.GramsPerMillilitre : 0;
    }

    private string? CoverThatFits(IntakeRequest request, string? vessel)
    {
        var name = CoverOf(request.Cover);
        if (vessel is null || request.CoverDepthMillimetres is not { } depth || wares.FindCover(name ?? "") is not { Kind: CoverKind.Liquid } cover || wares.FindVessel(vessel) is not { } ware)
            return name;
        var millilitres = (double)depth / 1000 * ware.CrossSection.SquareMetres * 1e6;
        return millilitres <= ware.Volume.Millilitres * 1.25
            ? name
            : throw new BookRefusal($"{depth} mm of {cover.Name} are about {millilitres:0} mL, more than one {ware.Name} holds");
    }

    private string? CoverOf(string? words)
    {
        if (words is null || words.Trim().Equals("none", StringComparison.OrdinalIgnoreCase))
            return null;
        return Ware("cover", facts.Catalogue.Resolve(words).Content?.Name is { } name && wares.Covers.Any(c => c.Name == name) ? name : words, wares.Covers.Select(c => c.Name));
    }

    private static string? Ware(string sort, string? words, IEnumerable<string> names)
    {
        if (words is null)
            return null;
        var all = names.ToList();
        if (all.Find(n => string.Equals(n, words.Trim(), StringComparison.OrdinalIgnoreCase)) is { } exact)
            return exact;
        var nearest = NearestNames.To(words, all);
        var offer = nearest.Count > 0 ? $"nearest: {string.Join("; ", nearest)}" : $"'stockroom {sort}s' lists them";
        throw new BookRefusal($"'{words}' is not a {sort} that can be named; {offer}");
    }
}
