using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Book.Entries;

/// <summary>States of matter as the ledger writes them.</summary>
internal static class MatterWords
{
    public static string Of(MatterState state) => state switch
    {
        MatterState.Solid => "solid",
        MatterState.Liquid => "liquid",
        MatterState.Gas => "gas",
        _ => "unknown",
    };

    public static MatterState Parse(string word) => word switch
    {
        "solid" => MatterState.Solid,
        "liquid" => MatterState.Liquid,
        "gas" => MatterState.Gas,
        "unknown" => MatterState.Unknown,
        _ => throw new BookRefusal($"'{word}' is not a state of matter; it is solid, liquid, gas or unknown"),
    };
}
