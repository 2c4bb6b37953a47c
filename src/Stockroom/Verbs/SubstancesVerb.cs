using System.CommandLine;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Verbs;

/// <summary>
/// The keeper's own substances. The table of an import: UTF-8, columns parted by tabs, the first line naming them:
/// name, formula, cas, state (solid, liquid, gas, unknown), synonyms (parted by "; "), hazards ("Flam. Liq. 2 H225; EUH066",
/// "none" where a source says that none apply, empty where nothing is known), source, as_of. All rows are taken or none.
/// </summary>
internal sealed class SubstancesVerb : IVerb
{
    private static readonly string[] Columns = ["name", "formula", "cas", "state", "synonyms", "hazards", "source", "as_of"];

    public string Name => "substances";

    public string Summary => "Substances of your own, or corrections of the catalogue's, kept in the book";

    public Command Build(Surroundings around)
    {
        var command = new Command(Name, Summary);
        command.Subcommands.Add(BuildImport(around));
        command.Subcommands.Add(BuildAdd(around));
        command.Subcommands.Add(BuildList(around));
        return command;
    }

    private static Command BuildImport(Surroundings around)
    {
        var file = new Argument<string>("FILE") { Description = $"A table with tabs between the columns {string.Join(", ", Columns)}; hazards such as \"Skin Corr. 1B H314; EUH071\", none, or empty where unknown" };
        var options = new WritingOptions();
        var command = new Command("import", "Take a table of substances, every row or none") { file };
        options.AddTo(command);
        command.SetAction(p =>
        {
            var path = p.GetRequiredValue(file);
            if (!File.Exists(path))
                throw RefusedException.Input($"there is no file '{path}'");
            var at = Dates.MomentOf(p.GetValue(options.On), around.Clock);
            var note = p.GetValue(options.Note);
            var entries = ReadFile(path).Select(w => (Entry)(SubstanceStated.Of(w) with { HappenedAt = at, Note = note })).ToList();
            using var book = BookAccess.Write(p.GetValue(options.Book), around);
            LineMode.Acknowledge(around, book.Append(new Transaction(options.Keeper(p, around), entries)), p.GetValue(options.Json), oneLine: false);
            return ExitCodes.Done;
        });
        return command;
    }

    private static Command BuildAdd(Surroundings around)
    {
        var name = new Argument<string>("NAME") { Description = "Preferred name; one of the catalogue's is corrected by it" };
        var formula = new Option<string?>("--formula") { Description = "Such as CuSO4.5H2O", HelpName = "FORMULA" };
        var cas = new Option<string?>("--cas") { Description = "CAS number", HelpName = "NUMBER" };
        var state = new Option<string>("--state") { Description = "solid, liquid, gas or unknown", HelpName = "STATE", Required = true };
        var synonyms = new Option<string?>("--synonyms") { Description = "Other names, parted by \"; \"", HelpName = "NAMES" };
        var hazards = new Option<string?>("--hazards") { Description = "Such as \"Flam. Liq. 2 H225; EUH066\", or none; leave it out where nothing is known", HelpName = "LIST" };
        var source = new Option<string>("--source") { Description = "Who says so, such as a supplier's sheet", HelpName = "WORDS", Required = true };
        var asOf = new Option<string?>("--as-of") { Description = "Date or edition of the source; else today", HelpName = "DATE" };
        var options = new WritingOptions();
        var command = new Command("add", "State one substance") { name, formula, cas, state, synonyms, hazards, source, asOf };
        options.AddTo(command);
        command.SetAction(p =>
        {
            var words = new OwnSubstanceWords(
                p.GetRequiredValue(name), p.GetValue(formula), p.GetValue(cas), p.GetRequiredValue(state), p.GetValue(synonyms), p.GetValue(hazards),
                p.GetRequiredValue(source), p.GetValue(asOf) ?? around.Today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
            if (!OwnSubstance.TryMake(words, out _, out var column, out var problem))
                throw RefusedException.Input($"{column} {problem}");
            var stated = SubstanceStated.Of(words) with { HappenedAt = Dates.MomentOf(p.GetValue(options.On), around.Clock), Note = p.GetValue(options.Note) };
            using var book = BookAccess.Write(p.GetValue(options.Book), around);
            LineMode.Acknowledge(around, book.Append(new Transaction(options.Keeper(p, around), stated)), p.GetValue(options.Json), oneLine: false);
            return ExitCodes.Done;
        });
        return command;
    }

    private static Command BuildList(Surroundings around)
    {
        var book = BookAccess.BookOption();
        var command = new Command("list", "Your own substances and who says so") { book };
        command.SetAction(p =>
        {
            using var open = BookAccess.Read(p.GetValue(book), around);
            var own = open.Ledger.State.OwnSubstances.Values.OrderBy(o => o.Substance.Name, StringComparer.Ordinal).ToList();
            foreach (var o in own)
                around.Out.WriteLine($"{o.Substance.Name}: {o.Words.Hazards ?? "no classification given"} ({o.Substance.Provenance})");
            if (own.Count == 0)
                around.Out.WriteLine("no substances of your own are in the book");
            return ExitCodes.Done;
        });
        return command;
    }

    private static List<OwnSubstanceWords> ReadFile(string path)
    {
        try
        {
            var rows = TableReader.ReadPlain(Path.GetFileName(path), File.ReadAllText(path), Columns).Rows;
            return rows.Count > 0 ? [.. rows.Select(ReadRow)] : throw RefusedException.Input($"'{path}' holds no substances");
        }
        catch (TableException e)
        {
            throw RefusedException.Input(e.Message);
        }
    }

    private static OwnSubstanceWords ReadRow(TableRow row)
    {
        var words = new OwnSubstanceWords(
            row.Text("name"), row.TextOrNull("formula"), row.TextOrNull("cas"), row.Text("state"), row.TextOrNull("synonyms"), row.TextOrNull("hazards"),
            row.Text("source"), row.Text("as_of"));
        return OwnSubstance.TryMake(words, out _, out var column, out var problem) ? words : throw row.Wrong(column, problem);
    }
}
