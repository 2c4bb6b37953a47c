namespace Stockroom.Screens;

/// <summary>The text of a label's code: "STOCKROOM:" and the container id, then perhaps a line end and plain words.</summary>
internal static class ScannedCode
{
    private const string Prefix = "STOCKROOM:";

    public static bool TryId(string text, out string id)
    {
        id = "";
        string first = text.TrimStart().Split('\r', '\n')[0].Trim();
        if (!first.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase)) return false;
        id = first[Prefix.Length..].Trim();
        return id.Length > 0;
    }
}
