using CsCheck;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Pictograms;

namespace Stockroom.Labels.Tests;

/// <summary>Labels of every kind, put together at random from real statements; CsCheck prints the seed of a failure.</summary>
internal static class RandomLabels
{
    private static readonly Gen<string> Names = Gen.OneOf(
        OneOf<string>("Iodine", "Sodium hydroxide 1 M", "Bromine", "Contents unknown", "Hydrofluoric acid 40 %", "Phosphorus, white"),
        Gen.Char["abcdefghijklmnopqrstuvwxyzαβ0123456789-,()[] \u0007\u200b\u6c34"].Array[1, 200].Select(c => "N" + new string(c)));

    private static Gen<T> OneOf<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    private static readonly Gen<Statement[]> Hazards =
        Gen.Shuffle(Samples.Chromate.HazardStatements.Concat(Samples.Ether.HazardStatements).Distinct().ToArray(), 0, 9);

    private static readonly Gen<Statement[]> Precautions =
        Gen.Shuffle(Samples.NitricAcid.PrecautionaryStatements.Concat(Samples.UraniumMetal.PrecautionaryStatements).ToArray(), 0, 7);

    public static Gen<LabelText> Any { get; } =
        from id in OneOf<string?>("K7F2-9T", "22", "ABCDE-FGHJK", null)
        from name in Names
        from note in OneOf<string?>(null, "Br2", "mixture of sodium hypochlorite (5 % active chlorine), sodium hydroxide 1 % and water")
        from pictograms in Gen.Shuffle(Pictogram.Codes.ToArray(), 0, 5)
        from hazards in Hazards
        from precautions in Precautions
        from extra in Gen.Shuffle(new[] { "RADIOACTIVE", "HANDS OFF", "GLASS UNDER PRESSURE" }, 0, 3)
        from details in Gen.Shuffle(Samples.NitricAcid.Details.Concat(Samples.UraniumMetal.Details).ToArray(), 0, 8)
        from small in Gen.Bool
        select new LabelText
        {
            Id = id,
            Title = name,
            TitleNote = note,
            SignalWord = pictograms.Length == 0 ? null : pictograms.Length > 1 ? "Danger" : "Warning",
            Pictograms = pictograms,
            HazardStatements = hazards,
            PrecautionaryStatements = precautions,
            Extra = extra,
            Details = details,
            Footnotes = small ? Samples.NitricAcid.Footnotes : [],
        };
}
