using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;

namespace Stockroom.Verbs;

internal sealed class PlaceVerb : IVerb
{
    public string Name => "place";

    public string Summary => "Rooms, cabinets, shelves and trays: add one, list them, say what is known of one";

    public Command Build(Surroundings around)
    {
        var command = new Command(Name, Summary);
        command.Subcommands.Add(BuildAdd(around));
        command.Subcommands.Add(BuildList(around, "list", "The places of the book"));
        command.Subcommands.Add(BuildLimit(around));
        command.Subcommands.Add(BuildTable(around));
        return command;
    }

    /// <summary>The list of places, which has a verb of its own as well.</summary>
    internal static Command BuildList(Surroundings around, string name, string summary)
    {
        var book = BookAccess.BookOption();
        var asOf = BookAccess.AsOfOption();
        var json = BookAccess.JsonOption();
        var command = new Command(name, summary) { book, asOf, json };
        command.SetAction(p =>
        {
            using var open = BookAccess.Read(p.GetValue(book), around);
            var state = open.Ledger.StateOn(p.GetValue(asOf));
            if (!p.GetValue(json))
                DamageWords.Mark(around.Out, open);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w =>
                {
                    WriteAll(w, state);
                    w.Damage(open);
                });
            else
                Print(around.Out, state, null, 0);
            return ExitCodes.Done;
        });
        return command;
    }

    private static Command BuildAdd(Surroundings around)
    {
        var name = new Argument<string>("NAME") { Description = "Such as \"acid cabinet\"" };
        var kind = new Option<string>("--kind") { Description = string.Join(", ", PlaceKind.All.Select(k => k.Word)), HelpName = "KIND", Required = true };
        var inside = new Option<string?>("--inside") { Description = "The place it stands in; none for a room", HelpName = "PLACE" };
        var id = new Option<string?>("--id") { Description = "Short name for commands; else made from the name", HelpName = "ID" };
        var limits = new LimitOptions();
        var options = new WritingOptions();
        var command = new Command("add", "Set up a place") { name, kind, inside, id };
        limits.AddTo(command);
        options.AddTo(command);
        command.SetAction(p =>
        {
            Transaction Made(BookState state) => new(options.Keeper(p, around), new PlaceMade
            {
                Place = p.GetValue(id) ?? PlaceIds.For(p.GetRequiredValue(name), state),
                Name = p.GetRequiredValue(name),
                PlaceKind = PlaceKind.Parse(p.GetRequiredValue(kind)),
                Inside = p.GetValue(inside) is { } outer ? state.FindPlace(outer).Id : null,
                Limits = limits.Read(p),
                HappenedAt = Dates.MomentOf(p.GetValue(options.On), around.Clock),
                Note = p.GetValue(options.Note),
            });
            using var book = BookAccess.WriteOrMake(p.GetValue(options.Book), around, Made);
            LineMode.Acknowledge(around, book.Append(Made(book.Ledger.State)), p.GetValue(options.Json), oneLine: false);
            return ExitCodes.Done;
        });
        return command;
    }

    private static Command BuildLimit(Surroundings around)
    {
        var place = new Argument<string>("PLACE") { Description = "Id, name or path" };
        var limits = new LimitOptions();
        var options = new WritingOptions();
        var command = new Command("limit", "Say what is known of a place: temperatures, height, order, what it may hold") { place };
        limits.AddTo(command);
        options.AddTo(command);
        command.SetAction(p =>
        {
            var said = limits.Read(p);
            if (said == PlaceLimits.Unknown)
                throw RefusedException.Words("nothing is said of the place; say for example --mean 19 or --height 1.2");
            using var book = BookAccess.Write(p.GetValue(options.Book), around);
            var limited = new PlaceLimited
            {
                Place = book.Ledger.State.FindPlace(p.GetRequiredValue(place)).Id,
                Limits = said,
                HappenedAt = Dates.MomentOf(p.GetValue(options.On), around.Clock),
                Note = p.GetValue(options.Note),
            };
            LineMode.Acknowledge(around, book.Append(new Transaction(options.Keeper(p, around), limited)), p.GetValue(options.Json), oneLine: false);
            return ExitCodes.Done;
        });
        return command;
    }

    private static Command BuildTable(Surroundings around)
    {
        var table = new Argument<string>("TABLE") { Description = string.Join(", ", ClassTableWords.All) };
        var options = new WritingOptions();
        var command = new Command("table", "Choose the class table by which the shelves of this book are judged besides contact") { table };
        options.AddTo(command);
        command.SetAction(p =>
        {
            using var book = BookAccess.Write(p.GetValue(options.Book), around);
            var chosen = new ClassTableChosen
            {
                Table = ClassTableWords.Of(ClassTableOption.Read(p.GetRequiredValue(table))!.Value),
                HappenedAt = Dates.MomentOf(p.GetValue(options.On), around.Clock),
                Note = p.GetValue(options.Note),
            };
            LineMode.Acknowledge(around, book.Append(new Transaction(options.Keeper(p, around), chosen)), p.GetValue(options.Json), oneLine: false);
            return ExitCodes.Done;
        });
        return command;
    }

    private static void WriteAll(Utf8JsonWriter json, BookState state)
    {
        json.WriteStartArray("places");
        foreach (var place in state.Places.Values.OrderBy(p => p.Id, StringComparer.Ordinal))
        {
            json.WriteStartObject();
            json.WriteString("id", place.Id);
            json.WriteString("name", place.Name);
            json.WriteString("kind", place.Kind.Word);
            json.TextOrNull("inside", place.Inside);
            json.WriteNumber("containers", state.ContainersIn(place.Id, deep: true).Count());
            var limits = state.LimitsAt(place.Id);
            json.NumberOrNull("order", place.Limits.Position);
            json.NumberOrNull("height_m", limits.HeightMetres);
            json.NumberOrNull("mean_c", limits.MeanCelsius);
            json.NumberOrNull("min_c", limits.MinCelsius);
            json.NumberOrNull("max_c", limits.MaxCelsius);
            json.NumberOrNull("daily_swing_k", limits.SwingKelvin);
            json.NumberOrNull("seasonal_swing_k", limits.SeasonalSwingKelvin);
            json.NumberOrNull("warmest_month", limits.WarmestMonth);
            json.TextOrNull("light", limits.Light is { } light ? PlaceLimits.WordOf(light) : null);
            json.FlagOrNull("leak_tight", place.Limits.LeakTight);
            json.NumberOrNull("max_load_kg", place.Limits.MaxLoadKilograms);
            json.NumberOrNull("max_containers", place.Limits.MaxContainers);
            json.NumberOrNull("max_l", place.Limits.MaxLitres);
            json.NumberOrNull("max_flammable_l", place.Limits.MaxFlammableLitres);
            json.NumberOrNull("air_changes_per_h", limits.AirChangesPerHour);
            json.FlagOrNull("door", limits.HasDoor);
            json.FlagOrNull("locked", limits.IsLocked);
            json.FlagOrNull("wooden", limits.IsWooden);
            json.FlagOrNull("near_heat", limits.IsNearHeat);
            json.FlagOrNull("for_flammables", limits.IsForFlammables);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Print(TextWriter to, BookState state, string? inside, int depth)
    {
        foreach (var place in state.PlacesInside(inside))
        {
            var count = state.ContainersIn(place.Id, deep: true).Count();
            to.WriteLine($"{new string(' ', 2 * depth)}{place.Name} ({place.Kind}), id {place.Id}, {count} container{(count == 1 ? "" : "s")}");
            Print(to, state, place.Id, depth + 1);
        }
    }
}
