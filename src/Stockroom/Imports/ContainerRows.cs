using System.Globalization;
using Stockroom.Assessment.Intake;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Verbs;

namespace Stockroom.Imports;

/// <summary>Turns one row of a list of containers into the entries that bring it into the book.</summary>
internal sealed class ContainerRows(TimeProvider clock, DateOnly today, string? quantityUnit)
{
    private const string OrphanPrefix = "orphan:";
    private const string OwnList = "the imported list";
    private const string Unknown = "unknown";

    /// <summary>The entries, the receipt first.</summary>
    /// <exception cref="BookRefusal">A cell is wrong or not known, in one line.</exception>
    public IReadOnlyList<Entry> Read(ImportRow row, BookState state, IEnumerable<ContainerId> taken, Place place)
    {
        row.CheckWidth();
        var id = row.Text("id") is { } typed ? BookAccess.Id(typed) : state.NewId(taken);
        var received = row.Day("received") ?? today;
        var catalogue = state.OwnSubstances.Count > 0 ? state.Catalogue() : SubstanceCatalogue.Default;
        var receipt = Receipt(row, id, received, place.Id, catalogue);
        var happenings = Happenings(row, receipt, received).OrderBy(e => e.HappenedOn).ToList();
        return [WithCover(row, receipt, received), .. happenings];
    }

    private Received Receipt(ImportRow row, ContainerId id, DateOnly on, string place, SubstanceCatalogue catalogue)
    {
        var (orphan, seen) = Orphan(row);
        var parts = orphan ? null : ExactParts(row, catalogue);
        var amount = Amount(row);
        var request = new IntakeRequest
        {
            Content = orphan ? "orphan" : row.Required("content"),
            Seen = orphan ? seen : null,
            FoundBy = row.Text("found_by"),
            Mix = row.Text("composition"),
            Amount = amount.Typed,
            Vessel = row.Text("vessel"),
            Closure = row.Text("closure"),
            Cover = row.Text("cover"),
            Packing = row.Text("packing"),
            Place = place,
            GrossGrams = row.Number("gross_g"),
            TareGrams = row.Number("tare_g"),
            Note = row.Text("note"),
        };
        var receipt = new IntakeDesk(PropertyFacts.Default, WareCatalogue.Default, catalogue).Receive(request, id, Dates.MomentOf(on, clock));
        return receipt with
        {
            Content = orphan ? row.Text("seen") is null ? receipt.Content : row.Text("content") ?? receipt.Content : receipt.Content,
            Parts = parts ?? receipt.Parts,
            State = StateOf(row) ?? receipt.State,
            Lot = LotOf(row, orphan, request.Mix is not null),
            Quantity = amount.Quantity,
            NetGrams = amount.NetGrams ?? receipt.NetGrams,
            Density = amount.Density ?? receipt.Density,
        };
    }

    private static (bool IsOrphan, string? Seen) Orphan(ImportRow row)
    {
        var content = row.Text("content");
        var isPrefixed = content?.StartsWith(OrphanPrefix, StringComparison.OrdinalIgnoreCase) == true;
        var isOrphan = row.YesNo("orphan") == true || isPrefixed || string.Equals(content?.Trim(), "orphan", StringComparison.OrdinalIgnoreCase);
        return (isOrphan, row.Text("seen") ?? (isPrefixed ? content![OrphanPrefix.Length..].Trim() : row.YesNo("orphan") == true ? content : null));
    }

    // What is typed in the cell is booked as it would be by hand; a net mass beside it wins.
    private (string? Typed, string? Quantity, decimal? NetGrams, BookedDensity? Density) Amount(ImportRow row)
    {
        var quantity = row.Text("quantity");
        if (quantity is not null && quantityUnit is not null && decimal.TryParse(quantity.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _))
            quantity = $"{quantity.Trim()} {quantityUnit}";
        var density = row.Number("density_g_ml") is { } figure ? new BookedDensity(figure, row.Text("density_source") ?? OwnList) : null;
        if (string.Equals(row.Text("net_g")?.Trim(), Unknown, StringComparison.OrdinalIgnoreCase))
            return (null, quantity, null, density);
        if (row.Number("net_g") is { } net)
            return (null, quantity ?? $"{net.ToString(CultureInfo.InvariantCulture)} g", net != 0 ? net : GramsOf(row, quantity, density), density);
        if (density is not null && quantity is not null && TypedAmount.TryParse(quantity, out var amount, out _) && amount.IsVolume)
            return (null, quantity, amount.Value * density.GramsPerMillilitre, density);
        if (quantity is not null && !TypedAmount.TryParse(quantity, out _, out var problem))
            throw row.Wrong("quantity", problem + (quantity.Contains(',', StringComparison.Ordinal) ? "; the decimal sign is a point: 1.5 kg" : ""));
        return (quantity, quantity, null, null);
    }

    // An emptied container was received with what its quantity says, and all of it was taken.
    private static decimal GramsOf(ImportRow row, string? quantity, BookedDensity? density)
    {
        if (quantity is null || !TypedAmount.TryParse(quantity, out var amount, out _) || (amount.IsVolume && density is null))
            throw row.Wrong("net_g", "0 g is nothing to receive; leave it out if it is not known, or, of a container that was emptied, give the quantity there was, and the density of a volume");
        return amount.IsVolume ? amount.Value * density!.GramsPerMillilitre : amount.Value;
    }

    private static MatterState? StateOf(ImportRow row) => row.Text("state")?.Trim().ToLowerInvariant() switch
    {
        null => null,
        "solid" => MatterState.Solid,
        "liquid" => MatterState.Liquid,
        "gas" => MatterState.Gas,
        Unknown => MatterState.Unknown,
        var other => throw row.Wrong("state", $"'{other}' is not a state of matter; it is solid, liquid, gas or unknown"),
    };

    private static Lot LotOf(ImportRow row, bool orphan, bool mixed) => new()
    {
        How = row.Text("lot") is { } how ? Lot.ParseOrigin(how) : orphan ? LotOrigin.Found : mixed ? LotOrigin.Made : LotOrigin.Bought,
        Origin = row.Text("origin"),
        Supplier = row.Text("supplier"),
        Batch = row.Text("batch"),
        From = row.Text("split_from") is { } from ? BookAccess.Id(from) : null,
        MadeOn = row.Day("made"),
        Note = row.Text("lot_note"),
    };

    // Parts as export writes them stay as they were booked, to the last digit.
    private static IReadOnlyList<PartShare>? ExactParts(ImportRow row, SubstanceCatalogue catalogue)
    {
        if (row.Text("composition") is not { } words)
            return null;
        var parts = new List<PartShare>();
        foreach (var piece in words.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var cut = piece.LastIndexOf('=');
            if (cut < 1 || !piece.EndsWith('%') || !decimal.TryParse(piece[(cut + 1)..^1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent)
                || catalogue.ResolveSubstance(piece[..cut])?.Name != piece[..cut])
                return null;
            parts.Add(new PartShare(piece[..cut], percent));
        }

        return parts;
    }

    // The cover as it was when its depth was last known: put on with the receipt, or on its own day.
    private static Received WithCover(ImportRow row, Received receipt, DateOnly received)
    {
        if (receipt.Cover is null)
            return receipt with { CoverDepthMillimetres = row.Number("cover_mm") };
        if (row.Day("cover_since") is { } since && since != received)
            return receipt with { Cover = null };
        return row.Day("cover_on") is { } measured && measured != received ? receipt : receipt with { CoverDepthMillimetres = row.Number("cover_mm") };
    }

    private IEnumerable<Entry> Happenings(ImportRow row, Received receipt, DateOnly received)
    {
        DateTimeOffset At(DateOnly day) => Dates.MomentOf(day, clock);
        var id = receipt.Container;
        if (row.Text("net_g") is not null && receipt.NetGrams is { } grams && row.Text("net_g") != Unknown && row.Number("net_g") == 0)
            yield return new Drawn { Container = id, HappenedAt = At(received), Quantity = "all of it", Grams = grams, Note = "emptied before this list was imported" };
        if (row.Day("opened") is { } opened)
            yield return new Opened { Container = id, HappenedAt = At(opened) };
        foreach (var covered in Covers(row, receipt, received))
            yield return covered with { Container = id };
        if (row.Day("sealed") is { } closed)
            yield return new Sealed { Container = id, HappenedAt = At(closed), GasCelsius = row.Number("sealed_at_c"), GasBar = row.Number("sealed_pressure_bar") };
        else if ((row.Number("sealed_at_c") ?? row.Number("sealed_pressure_bar")) is not null)
            throw row.Wrong("sealed", "is missing: sealed_at_c and sealed_pressure_bar say how it was sealed on that day");
        if (row.Day("label_printed") is { } printed)
            yield return new LabelPrinted { Container = id, HappenedAt = At(printed) };
        if (row.Text("pinned") is { } pinned)
            yield return new Marked { Container = id, HappenedAt = At(today), Pinned = true, Reason = pinned };
        if (row.Number("least_strength_percent") is { } least)
            yield return new Marked { Container = id, HappenedAt = At(today), LeastPercent = least };
        if (row.Text("hands_off") is { } reason)
            yield return new Marked { Container = id, HappenedAt = At(today), HandsOff = true, Reason = reason };
    }

    private IEnumerable<Covered> Covers(ImportRow row, Received receipt, DateOnly received)
    {
        var (since, measured, depth) = (row.Day("cover_since"), row.Day("cover_on"), row.Number("cover_mm"));
        if (receipt.Cover is not { } name)
            yield break;
        var isLater = measured is not null && measured != (since ?? received);
        if (since is { } day && day != received)
            yield return new Covered { HappenedAt = Dates.MomentOf(day, clock), Act = CoverAct.PutOn, Cover = name, DepthMillimetres = isLater ? null : depth };
        if (isLater && depth is not null)
            yield return new Covered { HappenedAt = Dates.MomentOf(measured, clock), Act = CoverAct.Measured, DepthMillimetres = depth };
    }
}
