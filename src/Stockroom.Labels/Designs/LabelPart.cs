namespace Stockroom.Labels.Designs;

/// <summary>What a label can show.</summary>
public enum LabelPart
{
    Id,
    Code,

    /// <summary>The first characters of the name, or "Contents unknown".</summary>
    Name,

    /// <summary>The end of a name that is too long.</summary>
    RestOfName,

    /// <summary>Formula or composition.</summary>
    Formula,

    /// <summary>Radioactive, hands off and other warnings beside those of the GHS.</summary>
    Warnings,
    Pictograms,
    SignalWord,
    HazardStatements,
    PrecautionaryStatements,
    Amount,

    /// <summary>Received, made, opened, sealed.</summary>
    Dates,
    Cover,
    Lot,
    Keeper,
    Place,

    /// <summary>Particulars of any other kind, such as what an orphan looks like.</summary>
    Other,
    SmallPrint,
}

/// <summary>The words by which design files name the parts.</summary>
internal static class LabelParts
{
    public static IReadOnlyDictionary<string, LabelPart> Words { get; } = new Dictionary<string, LabelPart>(StringComparer.Ordinal)
    {
        ["id"] = LabelPart.Id,
        ["code"] = LabelPart.Code,
        ["name"] = LabelPart.Name,
        ["rest of name"] = LabelPart.RestOfName,
        ["formula"] = LabelPart.Formula,
        ["warnings"] = LabelPart.Warnings,
        ["pictograms"] = LabelPart.Pictograms,
        ["signal word"] = LabelPart.SignalWord,
        ["hazard statements"] = LabelPart.HazardStatements,
        ["precautionary statements"] = LabelPart.PrecautionaryStatements,
        ["amount"] = LabelPart.Amount,
        ["dates"] = LabelPart.Dates,
        ["cover"] = LabelPart.Cover,
        ["lot"] = LabelPart.Lot,
        ["keeper"] = LabelPart.Keeper,
        ["place"] = LabelPart.Place,
        ["other"] = LabelPart.Other,
        ["small print"] = LabelPart.SmallPrint,
    };

    public static string WordOf(LabelPart part) => Words.First(w => w.Value == part).Key;

    /// <summary>Particulars of the container, which stand at the foot.</summary>
    public static bool IsDetail(LabelPart part) => part is >= LabelPart.Amount and <= LabelPart.Other;
}
