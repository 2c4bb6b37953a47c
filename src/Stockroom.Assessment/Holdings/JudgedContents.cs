using System.Globalization;
using System.Text;
using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Holdings;

/// <summary>Classification and contact profile of each content under each cover, made once however many containers hold it.</summary>
internal sealed class JudgedContents(StockFacts facts, RuleSet rules)
{
    private readonly Dictionary<string, JudgedContent> _known = new(StringComparer.Ordinal);

    public JudgedContent Of(Content content, string? cover)
    {
        var key = KeyOf(content, cover);
        if (!_known.TryGetValue(key, out var judged))
            _known[key] = judged = new JudgedContent(content, cover, facts, rules);
        return judged;
    }

    // Everything that a judgement of the content could depend on.
    private static string KeyOf(Content content, string? cover)
    {
        var key = new StringBuilder(content.Name).Append('|').Append(content.State).Append('|').Append(content.IsUnknown).Append('|').Append(cover);
        foreach (var part in content.Parts)
            key.Append('|').Append(part.Substance.Name).Append('=').Append(part.Percent.ToString(CultureInfo.InvariantCulture));
        return key.ToString();
    }
}

/// <summary>One content under one cover, judged when first asked for.</summary>
internal sealed class JudgedContent
{
    private readonly Lazy<Classification> _classification;
    private readonly Lazy<LabelElements> _label;
    private readonly Lazy<ContactProfile> _profile;

    public JudgedContent(Content content, string? cover, StockFacts facts, RuleSet rules)
    {
        _classification = new(() => Classifier.Classify(content, facts.Hazards, rules));
        _label = new(() => LabelElements.Of(Classification, facts.Hazards));
        _profile = new(() => WithCover(ContactProfile.Of(content, Classification, facts.Contacts), cover, facts, rules));
    }

    public Classification Classification => _classification.Value;

    public LabelElements Label => _label.Value;

    public ContactProfile Profile => _profile.Value;

    // What lies over a content leaks with it, and counts among its families.
    private static ContactProfile WithCover(ContactProfile profile, string? cover, StockFacts facts, RuleSet rules)
    {
        if (cover is null || facts.Wares.FindCover(cover)?.Content is not { } name || facts.Catalogue.Resolve(name).Content is not { } over)
            return profile;
        return profile.Under(ContactProfile.Of(over, Classifier.Classify(over, facts.Hazards, rules), facts.Contacts));
    }
}
