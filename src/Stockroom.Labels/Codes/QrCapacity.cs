using System.Buffers;

namespace Stockroom.Labels.Codes;

/// <summary>
/// How large a code must be for a text: characters held by versions 1 to 10 (ISO/IEC 18004:2015, Table 7, from memory, checked in
/// the tests against the generator). A label has no room for larger ones.
/// </summary>
internal static class QrCapacity
{
    private static readonly SearchValues<char> AlphanumericMode = SearchValues.Create("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:");

    private static readonly int[] BytesL = [17, 32, 53, 78, 106, 134, 154, 192, 230, 271];
    private static readonly int[] BytesM = [14, 26, 42, 62, 84, 106, 122, 152, 180, 213];
    private static readonly int[] BytesQ = [11, 20, 32, 46, 60, 74, 86, 108, 130, 151];
    private static readonly int[] BytesH = [7, 14, 24, 34, 44, 58, 64, 84, 98, 119];
    private static readonly int[] AlphanumericL = [25, 47, 77, 114, 154, 195, 224, 279, 335, 395];
    private static readonly int[] AlphanumericM = [20, 38, 61, 90, 122, 154, 178, 221, 262, 311];
    private static readonly int[] AlphanumericQ = [16, 29, 47, 67, 87, 108, 125, 157, 189, 221];
    private static readonly int[] AlphanumericH = [10, 20, 35, 50, 64, 84, 93, 122, 143, 174];

    /// <summary>Modules along one edge, without quiet zone; null where version 10 is too small.</summary>
    /// <param name="text">ASCII.</param>
    /// <param name="level">L, M, Q or H.</param>
    public static int? ModulesFor(string text, char level)
    {
        var alphanumeric = !text.AsSpan().ContainsAnyExcept(AlphanumericMode);
        var capacities = (level, alphanumeric) switch
        {
            ('L', true) => AlphanumericL,
            ('L', false) => BytesL,
            ('M', true) => AlphanumericM,
            ('M', false) => BytesM,
            ('Q', true) => AlphanumericQ,
            ('Q', false) => BytesQ,
            (_, true) => AlphanumericH,
            _ => BytesH,
        };
        var version = Array.FindIndex(capacities, c => c >= text.Length);
        return version < 0 ? null : 21 + (4 * version);
    }
}
