using System.CommandLine;
using System.Globalization;
using Stockroom.Chemistry.Hazards;
using Stockroom.Desk;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Output;

namespace Stockroom.Verbs;

/// <summary>How labels are to look and by which rules, as typed.</summary>
internal sealed class LabelOptions
{
    private const string KeeperVariable = "STOCKROOM_KEEPER";

    private readonly Option<string?> _skip = new("--skip") { Description = "Labels already used on the first sheet", HelpName = "N" };
    private readonly Option<string?> _offset = new("--offset") { Description = "Moves the print right and down, in mm (see --calibrate)", HelpName = "X,Y" };
    private readonly Option<string?> _dpi = new("--dpi") { Description = $"Dots to the inch of a PNG; else {PageFiles.UsualDpi}", HelpName = "N" };
    private readonly Option<string?> _rules = new("--rules") { Description = "Edition of the statements: eu (the rule), un or us", HelpName = "RULES" };
    private readonly Option<string?> _formatting = new("--formatting") { Description = "2024: letter heights and looks of Regulation (EU) 2024/2865; check the date it applies", HelpName = "2024" };
    private readonly Option<string?> _volume = new("--volume") { Description = "Capacity of the package in mL; else that of the vessel", HelpName = "ML" };
    private readonly Option<bool> _outer = new("--outer") { Description = "The full label is on the outer packing or a tag: a small one may leave off what its rules allow" };
    private readonly Option<bool> _black = new("--black") { Description = "The printer has no red: black frames, and the label says what is wrong with them" };
    private readonly Option<bool> _inside = new("--inside") { Description = "My authority allows black frames for use inside the place" };
    private readonly Option<string?> _keeper = new("--keeper") { Description = $"Name and telephone for the label; else {KeeperVariable}", HelpName = "TEXT" };
    private readonly Option<string?> _language = new("--language") { Description = "en", HelpName = "LANGUAGE" };

    public IEnumerable<Option> All => [_skip, _offset, _dpi, _rules, _formatting, _volume, _outer, _black, _inside, _keeper, _language];

    public int Skip(ParseResult p) => p.GetValue(_skip) is not { } text ? 0
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var skip) ? skip
        : throw RefusedException.Words($"'{text}' is not a number of labels to skip");

    public int Dpi(ParseResult p) => p.GetValue(_dpi) is not { } text ? PageFiles.UsualDpi
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var dpi) && dpi is >= PngRenderer.LeastDpi and <= PngRenderer.MostDpi ? dpi
        : throw RefusedException.Words($"'{text}' is not a resolution; give {PngRenderer.LeastDpi} to {PngRenderer.MostDpi} dots to the inch");

    public Position Offset(ParseResult p)
    {
        if (p.GetValue(_offset) is not { } text)
            return default;
        var parts = text.Split(',');
        return parts.Length == 2 && Number(parts[0]) is { } x && Number(parts[1]) is { } y
            ? new Position((double)x, (double)y)
            : throw RefusedException.Words($"'{text}' is not an offset; give millimetres to the right and down, such as 1.5,-0.5");
    }

    public LabelWishes Wishes(ParseResult p, Surroundings around)
    {
        if (p.GetValue(_language) is { } language and not "en")
            throw RefusedException.Words($"statements in '{language}' are not in the tables; only en is");
        var rules = p.GetValue(_rules) is { } words ? Rules(words) : RuleSet.Eu;
        if (p.GetValue(_formatting) is { } formatting && (formatting != "2024" || rules != RuleSet.Eu))
            throw RefusedException.Words(formatting != "2024" ? $"'{formatting}' is not a set of formatting rules; only 2024 is" : "--formatting 2024 is of the European Union; it goes with --rules eu");
        if (p.GetValue(_inside) && !p.GetValue(_black))
            throw RefusedException.Words("--inside allows black frames; it goes with --black");
        return new LabelWishes
        {
            Rules = rules,
            Formatting2024 = p.GetValue(_formatting) is not null,
            PackageMillilitres = p.GetValue(_volume) is { } volume ? Volume(volume) : null,
            FullLabelElsewhere = p.GetValue(_outer),
            Black = p.GetValue(_black),
            Inside = p.GetValue(_inside),
            Keeper = Contact(p.GetValue(_keeper) ?? around.Variable(KeeperVariable)),
        };
    }

    private static string? Contact(string? text) => string.IsNullOrWhiteSpace(text) ? null
        : text.Length <= 200 ? text.Trim()
        : throw RefusedException.Words($"the keeper's name and telephone have {text.Length} characters; at most 200");

    private static RuleSet Rules(string words) => RuleSets.Words.TryGetValue(words.Trim().ToLowerInvariant(), out var rules)
        ? rules
        : throw RefusedException.Words($"'{words}' is not an edition; it is one of {string.Join(", ", RuleSets.Words.Keys)}");

    private static decimal Volume(string text) => Number(text) is { } ml and > 0 and <= 10_000_000
        ? ml
        : throw RefusedException.Words($"'{text}' is not a capacity in mL; give a number above 0 up to 10000000, such as 25");

    private static decimal? Number(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) ? number : null;
}
