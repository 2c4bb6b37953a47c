using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>Ingredients that would not stand side by side in one vessel, from reacting-roles.tsv and reacting-pairs.tsv.</summary>
public sealed class ReactingIngredients
{
    private readonly Dictionary<string, List<string>> _roles = new(StringComparer.Ordinal);
    private readonly List<(string Role, string Other, string What)> _pairs;

    private ReactingIngredients(Table roles, Table pairs)
    {
        foreach (var row in roles.Rows)
        {
            if (!_roles.TryGetValue(row.Text("substance"), out var list))
                _roles[row.Text("substance")] = list = [];
            list.Add(row.Text("role"));
        }

        _pairs = [.. pairs.Rows.Select(r => (r.Text("role"), r.Text("other_role"), r.Text("what")))];
    }

    internal static ReactingIngredients Read() => new(
        EmbeddedTables.Facts("reacting-roles.tsv", "substance", "role"),
        EmbeddedTables.Facts("reacting-pairs.tsv", "role", "other_role", "what"));

    /// <summary>One sentence for each pair of ingredients that would react with each other.</summary>
    public IEnumerable<string> Among(IReadOnlyList<string> ingredients) => PairsAmong(ingredients).Select(p => p.Sentence);

    /// <summary>The pairs that would react, with the sentence that says what would form.</summary>
    public IEnumerable<(string A, string B, string Sentence)> PairsAmong(IReadOnlyList<string> ingredients)
    {
        var playing = ingredients.Where(_roles.ContainsKey).ToList();
        if (playing.Count < 2)
            yield break;
        foreach (var (role, other, what) in _pairs)
        {
            foreach (var a in playing.Where(n => Plays(n, role)))
            {
                foreach (var b in playing.Where(n => n != a && Plays(n, other)))
                    yield return (a, b, $"not judged: ingredients would react: {a} and {b} {what}; the classification takes them as if they stood side by side");
            }
        }
    }

    private bool Plays(string name, string role) => _roles.TryGetValue(name, out var roles) && roles.Contains(role);
}
