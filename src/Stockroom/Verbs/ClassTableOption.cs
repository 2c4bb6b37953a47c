using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>The option that names a class table, and how its answer is written.</summary>
internal static class ClassTableOption
{
    public static Option<string?> Make() => new("--table") { Description = "A class table on top of contact: none, road, sea or storage; else the one chosen for the book", HelpName = "TABLE" };

    /// <summary>Null where no table was named.</summary>
    public static ClassTable? Read(string? words)
    {
        if (words is null)
            return null;
        return ClassTableWords.TryParse(words, out var table)
            ? table
            : throw RefusedException.Words($"'{words}' is not a class table; it is one of: {string.Join(", ", ClassTableWords.All)}");
    }

    /// <summary>The table chosen for a book; none without a book.</summary>
    public static ClassTable OfBook(string? named, Surroundings around)
    {
        var folder = named ?? around.Variable(BookAccess.Variable);
        if (folder is null || (named is null && !StockBookFolder.IsBook(folder)))
            return ClassTable.None;
        using var book = BookAccess.Read(folder, around);
        return ClassTableWords.TryParse(book.Ledger.State.ClassTable, out var table) ? table.Value : ClassTable.None;
    }

    public static void Write(Utf8JsonWriter json, PairJudgement pair)
    {
        if (pair.ClassTable is not { } judgement)
        {
            json.WriteNull("class_table");
            return;
        }

        json.WriteStartObject("class_table");
        json.WriteString("table", ClassTableWords.Of(judgement.Table));
        json.WriteStartArray("classes");
        json.WriteStringValue(judgement.ClassA);
        json.WriteStringValue(judgement.ClassB);
        json.WriteEndArray();
        json.TextOrNull("code", judgement.Code);
        json.WriteString("meaning", judgement.Meaning);
        json.WriteString("clause", judgement.Clause);
        json.TextOrNull("separation", judgement.Separation is { } separation ? SeparationWords.Of(separation) : null);
        json.WriteStartArray("rows");
        json.WriteStringValue(judgement.RowA);
        json.WriteStringValue(judgement.RowB);
        json.WriteEndArray();
        json.Texts("because", [judgement.BecauseA, judgement.BecauseB]);
        json.WriteBoolean("verified", judgement.Verified);
        json.TextOrNull("source", judgement.Source);
        json.WriteString("analogy", Analogy(judgement.Table));
        json.WriteEndObject();
    }

    public static void Print(TextWriter to, PairJudgement pair)
    {
        if (pair.ClassTable is not { } judgement)
            return;
        var code = judgement.Code switch { null => "unknown", "" => "blank", var printed => printed };
        var rows = judgement.RowA is null ? "" : $", rows {judgement.RowA} and {judgement.RowB}";
        to.WriteLine($"{ClassTableWords.Title(judgement.Table)}: {judgement.ClassA ?? "class not known"} and {judgement.ClassB ?? "class not known"}{rows}: {code}, {judgement.Meaning} ({judgement.Clause})");
        to.WriteLine($"  {pair.A}: {judgement.BecauseA}");
        to.WriteLine($"  {pair.B}: {judgement.BecauseB}");
        if (judgement.Source is { } source)
            to.WriteLine($"  source: {source}{(judgement.Verified ? "" : " (this cell was not read again)")}; {Analogy(judgement.Table)}");
        to.WriteLine($"spoke: {pair.Spoke}");
    }

    private static string Analogy(ClassTable table) => table switch
    {
        ClassTable.Road => "the table is written for vehicles; its distance on a shelf is an analogy",
        ClassTable.Sea => "the table is written for ships; its distance on a shelf is an analogy",
        _ => "the table is written for stores and their fire compartments, and does not bind below 200 kg; its distance on a shelf is an analogy",
    };
}
