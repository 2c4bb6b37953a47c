using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours;

/// <summary>Reads the contact tables and checks them against each other and the catalogue.</summary>
internal sealed class ContactTables
{
    private const string FamilyPrefix = "family:";
    private const string AnythingWord = "anything";

    private static readonly Dictionary<string, MatterState> States = new(StringComparer.Ordinal)
    {
        ["solid"] = MatterState.Solid,
        ["liquid"] = MatterState.Liquid,
        ["gas"] = MatterState.Gas,
    };

    private static readonly Dictionary<string, Separation> Separations = new(StringComparer.Ordinal)
    {
        ["own tray"] = Separation.OwnTray,
        ["own cabinet"] = Separation.OwnCabinet,
        ["far apart"] = Separation.FarApart,
    };

    private readonly List<ContactFamily> _families = [];
    private readonly List<ContactTerm> _terms = [];
    private readonly Dictionary<string, ContactTerm> _familyTerms = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _groups = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Substance, decimal FromPercent), ContactTerm> _substanceTerms = [];
    private readonly Dictionary<string, List<(decimal FromPercent, int Term)>> _termsOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<SubstanceFamily>> _bySubstance = new(StringComparer.Ordinal);
    private readonly List<ContactRule> _rules = [];

    public static ContactFacts ReadEmbedded()
    {
        var tables = new ContactTables();
        tables.ReadFamilies();
        tables.ReadGroups();
        tables.ReadSubstances();
        tables.ReadPairs();
        tables.ReadNamedPairs();
        tables.ReadVapours();
        return new ContactFacts(tables._families, tables._bySubstance, tables._termsOf, tables._rules, tables._terms.Count);
    }

    private void ReadFamilies()
    {
        foreach (var row in EmbeddedTables.Facts("contact-families.tsv", "family", "plain_name", "statements", "orphan").Rows)
        {
            var states = row.List("orphan").Select(s => States.TryGetValue(s, out var state) ? state : throw row.Wrong("orphan", $"'{s}' must be solid, liquid or gas"));
            var family = new ContactFamily(row.Text("family"), row.Text("plain_name"), row.List("statements"), [.. states], row.Provenance);
            if (_familyTerms.ContainsKey(family.Key))
                throw row.Wrong("family", $"'{family.Key}' stands twice");
            _families.Add(family);
            _familyTerms[family.Key] = NewTerm(family.PlainName);
        }

        _familyTerms[AnythingWord] = NewTerm(AnythingWord);
    }

    private void ReadGroups()
    {
        foreach (var row in EmbeddedTables.Facts("contact-family-groups.tsv", "group_key", "plain_name", "family").Rows)
        {
            var key = row.Text("group_key");
            if (_familyTerms.ContainsKey(key))
                throw row.Wrong("group_key", $"'{key}' is already the name of a family");
            _ = Family(row, "family", row.Text("family"));
            if (!_groups.TryGetValue(key, out var members))
                _groups[key] = members = [];
            members.Add(row.Text("family"));
        }
    }

    private void ReadSubstances()
    {
        foreach (var row in EmbeddedTables.Facts("substance-families.tsv", "substance", "family", "from_percent", "carries").Rows)
        {
            var substance = Substance(row, "substance", row.Text("substance"));
            var family = _families[Family(row, "family", row.Text("family")).Index];
            if (!_bySubstance.TryGetValue(substance, out var list))
                _bySubstance[substance] = list = [];
            if (list.Exists(f => f.Family.Key == family.Key))
                throw row.Wrong("family", $"'{family.Key}' stands twice for {substance}");
            list.Add(new SubstanceFamily(family, Percent(row, "from_percent"), row.YesNo("carries"), row.Provenance));
        }
    }

    private void ReadPairs()
    {
        foreach (var row in EmbeddedTables.Facts("contact-pairs.tsv", "a", "b", "separation", "would", "product", "only_if", "cause", "verified").Rows)
        {
            foreach (var a in Members(row, "a"))
            {
                foreach (var b in Members(row, "b"))
                    AddRule(row, a, b);
            }
        }
    }

    private void ReadNamedPairs()
    {
        string[] columns = ["a", "a_from_percent", "b", "b_from_percent", "separation", "would", "product", "only_if", "cause", "verified"];
        foreach (var row in EmbeddedTables.Facts("named-pairs.tsv", columns).Rows)
            AddRule(row, Term(row, "a", "a_from_percent"), Term(row, "b", "b_from_percent"));
    }

    private void ReadVapours()
    {
        string[] columns = ["breathes", "breathes_from_percent", "harms", "harms_from_percent", "would", "effect", "cause", "verified"];
        foreach (var row in EmbeddedTables.Facts("vapour-neighbours.tsv", columns).Rows)
        {
            var breathes = Term(row, "breathes", "breathes_from_percent");
            var harms = Term(row, "harms", "harms_from_percent");
            _rules.Add(new ContactRule(
                _rules.Count, breathes, harms, Separation.OwnCabinet, ByAir: true, Would(row), row.Text("effect"), null, row.Text("cause"),
                row.YesNo("verified"), row.Provenance));
        }
    }

    private void AddRule(TableRow row, ContactTerm a, ContactTerm b) =>
        _rules.Add(new ContactRule(
            _rules.Count, a, b, row.OneOf("separation", Separations), ByAir: false, Would(row), row.TextOrNull("product"),
            row.TextOrNull("only_if"), row.Text("cause"), row.YesNo("verified"), row.Provenance));

    private static IReadOnlyList<string> Would(TableRow row)
    {
        var words = row.List("would");
        foreach (var word in words)
        {
            if (!Consequences.All.Contains(word))
                throw row.Wrong("would", $"'{word}' must be one of {string.Join(", ", Consequences.All)}");
        }

        return words.Count > 0 ? [.. words.OrderBy(Consequences.Rank)] : throw row.Wrong("would", "is empty");
    }

    private IEnumerable<ContactTerm> Members(TableRow row, string column)
    {
        var name = row.Text(column);
        return _groups.TryGetValue(name, out var members) ? members.Select(m => _familyTerms[m]) : [Family(row, column, name)];
    }

    private ContactTerm Term(TableRow row, string column, string percentColumn)
    {
        var name = row.Text(column);
        if (name.StartsWith(FamilyPrefix, StringComparison.Ordinal))
            return Family(row, column, name[FamilyPrefix.Length..]);
        var key = (Substance(row, column, name), Percent(row, percentColumn));
        if (!_substanceTerms.TryGetValue(key, out var term))
        {
            _substanceTerms[key] = term = NewTerm(name);
            if (!_termsOf.TryGetValue(name, out var terms))
                _termsOf[name] = terms = [];
            terms.Add((key.Item2, term.Index));
        }

        return term;
    }

    private ContactTerm Family(TableRow row, string column, string key) =>
        _familyTerms.TryGetValue(key, out var term) ? term : throw row.Wrong(column, $"'{key}' is not a family of contact-families.tsv");

    private static string Substance(TableRow row, string column, string name) =>
        SubstanceCatalogue.Default.Find(name)?.Name ?? throw row.Wrong(column, $"'{name}' is not a substance of substances.tsv");

    private static decimal Percent(TableRow row, string column)
    {
        var percent = row.DecimalOrNull(column) ?? 0m;
        return percent is >= 0m and <= 100m ? percent : throw row.Wrong(column, $"{percent} must lie between 0 and 100");
    }

    private ContactTerm NewTerm(string plainName)
    {
        var term = new ContactTerm(_terms.Count, plainName);
        _terms.Add(term);
        return term;
    }
}
