using System.Text.Json;
using Stockroom.Book.Entries;
using Stockroom.Imports;
using Stockroom.Storage.Exports;

namespace Stockroom.Verbs;

/// <summary>Says what an import did, would do, or refuses: plain lines, or one JSON document {file, rows, booked, refused, ...}.</summary>
internal sealed class ImportAnswer(Surroundings around, string path, bool isDry, bool isJson)
{
    private const int ShownColumns = 12;

    public bool IsDry => isDry;

    /// <summary>Of a list; what was booked is null where nothing was.</summary>
    public int Give(CsvOutcome outcome, IReadOnlyList<Entry>? booked)
    {
        if (isJson)
            Document(outcome.Rows, booked is null ? 0 : outcome.Bookable.Count, outcome.Refused, w => Write(w, outcome, booked));
        else
            Print(outcome, booked);
        return Refuse(outcome.Refused, outcome.Rows);
    }

    /// <summary>Of a whole book.</summary>
    public int Give(ExportedBook book, ImportEnd end, string folder)
    {
        var made = end == ImportEnd.Made && !isDry;
        var (entries, missing) = (book.Ledger.Entries.Count, book.MissingAttachments);
        if (isJson)
        {
            Document(entries, made ? entries : 0, [], w =>
            {
                w.WriteString("book", folder);
                w.WriteString("head", book.Ledger.HeadHash);
                w.WriteBoolean("already_there", end == ImportEnd.AlreadyThere);
                w.Texts("missing_attachments", missing);
            });
        }
        else
        {
            around.Out.WriteLine(end == ImportEnd.AlreadyThere
                ? $"'{folder}' is already this book, up to the same entry; nothing was done"
                : $"{entries} entries in {book.Ledger.LastTransaction} transactions, {book.Ledger.State.Present.Count()} containers {(isDry ? $"would make the book '{folder}'; nothing was written" : $"in '{folder}', checked")}; head {book.Ledger.HeadHash}");
            foreach (var hash in missing)
                around.Out.WriteLine($"not in the file: attachment {hash}");
        }

        return missing.Count == 0 ? ExitCodes.Done : ExitCodes.Attention;
    }

    /// <summary>The file as a whole is refused.</summary>
    public int Refuse(IReadOnlyList<DocumentFault> faults)
    {
        if (isJson)
            Document(0, 0, faults, _ => { });
        return Refuse(faults, null);
    }

    private int Refuse(IReadOnlyList<DocumentFault> faults, int? rows)
    {
        if (faults.Count == 0)
            return ExitCodes.Done;
        foreach (var fault in isJson ? [] : faults.Take(faults.Count == 1 ? 0 : faults.Count))
            around.Error.WriteLine($"stockroom: {path}:{fault.Line}: {fault.Because}");
        var of = rows is null ? "" : $" of {rows} rows";
        around.Error.WriteLine(faults.Count == 1
            ? $"stockroom: {path}:{faults[0].Line}: {faults[0].Because}; nothing was booked"
            : $"stockroom: nothing was booked: {faults.Count}{of} of '{path}' are refused");
        return ExitCodes.Refused;
    }

    private void Document(int rows, int booked, IReadOnlyList<DocumentFault> refused, Action<Utf8JsonWriter> rest) => JsonDocumentWriter.Write(around.Out, w =>
    {
        w.WriteString("file", path);
        w.WriteBoolean("dry_run", isDry);
        w.WriteNumber("rows", rows);
        w.WriteNumber("booked", booked);
        w.WriteStartArray("refused");
        foreach (var fault in refused)
        {
            w.WriteStartObject();
            w.WriteNumber("line", fault.Line);
            w.WriteString("because", fault.Because);
            w.WriteEndObject();
        }

        w.WriteEndArray();
        rest(w);
    });

    private void Write(Utf8JsonWriter json, CsvOutcome outcome, IReadOnlyList<Entry>? booked)
    {
        json.WriteNumber("would_book", isDry && outcome.Refused.Count == 0 ? outcome.Bookable.Count : 0);
        json.WriteStartArray("bookable");
        foreach (var row in outcome.Bookable)
        {
            json.WriteStartObject();
            json.WriteNumber("line", row.Line);
            json.WriteString("id", row.Subject);
            json.WriteString("what", row.Words);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Texts("unused_columns", outcome.UnusedColumns);
        json.WriteStartArray("entries");
        foreach (var entry in booked ?? [])
            json.WriteNumberValue(entry.Number);
        json.WriteEndArray();
    }

    private void Print(CsvOutcome outcome, IReadOnlyList<Entry>? booked)
    {
        if (outcome.UnusedColumns.Count > 0)
            around.Error.WriteLine($"stockroom: not used, for no field is known for it: {string.Join(", ", outcome.UnusedColumns.Take(ShownColumns).Select(c => $"'{c}'"))}{(outcome.UnusedColumns.Count > ShownColumns ? $" and {outcome.UnusedColumns.Count - ShownColumns} more" : "")}; say --map \"COLUMN=FIELD\" if it should be");
        if (outcome.Refused.Count > 0)
            return;
        if (isDry)
        {
            foreach (var row in outcome.Bookable)
                around.Out.WriteLine($"line {row.Line}: {row.Subject} would be {row.Words}");
        }

        around.Out.WriteLine(isDry
            ? $"{outcome.Bookable.Count} rows would be booked in {outcome.Entries.Count} entries; nothing was written"
            : $"{outcome.Bookable.Count} rows booked in {booked?.Count ?? 0} entries{(booked is [var first, .., var last] ? $", {first.Number} to {last.Number}" : "")}");
    }
}
