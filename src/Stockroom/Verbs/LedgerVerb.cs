using System.CommandLine;
using System.Text.Json;
using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Verbs;

internal sealed class LedgerVerb : IVerb
{
    public string Name => "ledger";

    public string Summary => "The entries of the book, or of one container";

    public Command Build(Surroundings around)
    {
        var id = new Argument<string?>("ID") { Arity = ArgumentArity.ZeroOrOne, Description = "Container id" };
        var book = BookAccess.BookOption();
        var asOf = BookAccess.AsOfOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { id, book, asOf, json };
        command.SetAction(p =>
        {
            using var open = BookAccess.Read(p.GetValue(book), around);
            var container = p.GetValue(id) is { } typed ? BookAccess.Id(typed) : null;
            if (container is not null)
                open.Ledger.State.ContainerCalled(container);
            var entries = open.Ledger.Entries.Where(new EntryFilter { Container = container, HappenedBy = p.GetValue(asOf) }.Fits);
            if (!p.GetValue(json))
                DamageWords.Mark(around.Out, open);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w =>
                {
                    WriteAll(w, entries);
                    w.Damage(open);
                });
            else
                Print(around.Out, entries);
            return ExitCodes.Done;
        });
        return command;
    }

    private static void WriteAll(Utf8JsonWriter json, IEnumerable<Entry> entries)
    {
        json.WriteStartArray("entries");
        foreach (var entry in entries)
        {
            json.WriteStartObject();
            json.WriteNumber("number", entry.Number);
            json.WriteString("kind", entry.Kind);
            json.TextOrNull("id", entry.Container?.ToString());
            json.TextOrNull("place", entry.Place);
            json.WriteString("happened_at", entry.HappenedAt.Iso());
            json.WriteString("recorded_at", entry.RecordedAt.Iso());
            json.WriteString("by", entry.By);
            json.WriteNumber("transaction", entry.Transaction);
            json.WriteString("previous", entry.Previous);
            json.WritePropertyName("entry");
            json.WriteRawValue(EntryCodec.Encode(entry));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Print(TextWriter to, IEnumerable<Entry> entries)
    {
        foreach (var entry in entries)
            to.WriteLine($"{entry.Number}  {entry.HappenedOn.Iso()}  {entry.Container?.ToString() ?? entry.Place ?? "-"}  {EntryWords.Of(entry)}  by {entry.By}");
    }
}
