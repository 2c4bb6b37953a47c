using System.Diagnostics.CodeAnalysis;

namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>A published table of classes that is laid over the contact rules.</summary>
public enum ClassTable
{
    /// <summary>Contact rules alone.</summary>
    None = 0,

    /// <summary>US road: 49 CFR 177.848.</summary>
    Road,

    /// <summary>Sea: IMDG Code 7.2.4, 49 CFR 176.83.</summary>
    Sea,

    /// <summary>German storage classes: TRGS 510.</summary>
    Storage,
}

/// <summary>The words for the tables.</summary>
public static class ClassTableWords
{
    public static IReadOnlyList<string> All { get; } = ["none", "road", "sea", "storage"];

    public static string Of(ClassTable table) => All[(int)table];

    /// <summary>The name a reader knows it by.</summary>
    public static string Title(ClassTable table) => table switch
    {
        ClassTable.Road => "US road table, 49 CFR 177.848",
        ClassTable.Sea => "sea table, IMDG Code 7.2.4 and 49 CFR 176.83",
        ClassTable.Storage => "German storage classes, TRGS 510",
        _ => "no class table",
    };

    public static bool TryParse(string words, [NotNullWhen(true)] out ClassTable? table)
    {
        for (var i = 0; i < All.Count; i++)
        {
            if (string.Equals(All[i], words.Trim(), StringComparison.OrdinalIgnoreCase))
            {
                table = (ClassTable)i;
                return true;
            }
        }

        table = null;
        return false;
    }
}
