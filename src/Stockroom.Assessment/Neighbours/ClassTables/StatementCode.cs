namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>GHS statement codes without the letters that name a route or an effect: H360FD and H361d are H360 and H361.</summary>
internal static class StatementCode
{
    public static string Bare(string code)
    {
        var end = code.Length;
        while (end > 0 && !char.IsAsciiDigit(code[end - 1]))
            end--;
        return code[..end];
    }
}
