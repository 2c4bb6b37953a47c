using System.CommandLine;
using System.Text.Json;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Verbs;

/// <summary>Lists what can be named: vessels, closures or covers.</summary>
internal sealed class WaresVerb : IVerb
{
    private readonly Func<WareCatalogue, IEnumerable<(string Name, string Words)>> _of;

    private WaresVerb(string name, string summary, Func<WareCatalogue, IEnumerable<(string Name, string Words)>> of)
    {
        Name = name;
        Summary = summary;
        _of = of;
    }

    public string Name { get; }

    public string Summary { get; }

    public static WaresVerb Vessels() => new("vessels", "Vessels that can be named", w => w.Vessels.Select(v =>
        (v.Name, $"{v.Kind} of {v.Material}, {v.Volume.Millilitres:0.#} mL, wall {v.Wall.Millimetres:0.##} mm, neck {v.NeckBore.Millimetres:0.#} mm")));

    public static WaresVerb Closures() => new("closures", "Closures that can be named", w => w.Closures.Select(c =>
        (c.Name, $"{(c.Liner is null ? "" : $"liner {c.Liner}; ")}touches {(c.Wetted.Count == 0 ? "nothing" : string.Join(", ", c.Wetted))}{(c.Remark is null ? "" : $"; {c.Remark}")}")));

    public static WaresVerb Covers() => new("covers", "Covers that can be named", w => w.Covers.Select(c =>
        (c.Name, $"{c.Serves}{(c.Remark is null ? "" : $"; {c.Remark}")}")));

    public Command Build(Surroundings around)
    {
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { json };
        command.SetAction(p =>
        {
            var wares = _of(WareCatalogue.Default).ToList();
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w => WriteAll(w, wares));
            else
                wares.ForEach(x => around.Out.WriteLine($"{x.Name}: {x.Words}"));
            return ExitCodes.Done;
        });
        return command;
    }

    private void WriteAll(Utf8JsonWriter json, List<(string Name, string Words)> wares)
    {
        json.WriteStartArray(Name);
        foreach (var (name, words) in wares)
        {
            json.WriteStartObject();
            json.WriteString("name", name);
            json.WriteString("description", words);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
