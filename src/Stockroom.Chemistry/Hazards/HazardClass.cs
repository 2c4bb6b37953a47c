namespace Stockroom.Chemistry.Hazards;

/// <summary>
/// One hazard class: its categories and how a mixture comes to have one. A class is one file in Classes, registered
/// in <see cref="HazardClasses"/>, and its limits are rows of the tables.
/// </summary>
public abstract class HazardClass
{
    /// <summary>As label-elements.tsv names it; a class of several chapters gives the first.</summary>
    public abstract string Name { get; }

    /// <summary>Its categories, most severe first.</summary>
    public abstract IReadOnlyList<string> Categories { get; }

    private Dictionary<string, int>? _severities;

    /// <summary>True where a mixture is judged although no ingredient has a category of this class (a pH or a flash point is given).</summary>
    public virtual bool JudgedAlways => false;

    public bool Owns(string category) => Severities.ContainsKey(category);

    /// <summary>0 for the most severe category; above all for one of another class.</summary>
    public int Severity(string category) => Severities.TryGetValue(category, out var severity) ? severity : int.MaxValue;

    /// <summary>Judges a mixture of several ingredients, or a diluted one.</summary>
    public abstract void Judge(Mixture mixture, Findings findings);

    /// <summary>
    /// A single undiluted substance has the categories of its entry, and those that only a concentration limit of the
    /// entry names.
    /// </summary>
    public virtual void JudgePure(Ingredient substance, Mixture mixture, Findings findings)
    {
        var found = false;
        foreach (var category in substance.Categories.Where(c => Owns(c.Category)))
        {
            found = true;
            findings.Add(category.Category, category.Statement, category.Organs, () => Explain.Entry(substance.Name, category), category.Provenance);
        }

        if (found)
            return;
        foreach (var limit in substance.Profile.Limits.Where(l => Owns(l.Category) && l.Contains(substance.Counted)))
            findings.Add(limit.Category, limit.Statement, null, () => Explain.Limit(substance, limit), limit.Provenance);
    }

    /// <summary>Categories of one ingredient that belong to this class.</summary>
    protected IReadOnlyList<AssignedCategory> Own(Ingredient ingredient) => ingredient.CategoriesOf(this);

    /// <summary>Specific limits of one ingredient that belong to this class.</summary>
    protected IReadOnlyList<ConcentrationLimit> OwnLimits(Ingredient ingredient) => ingredient.Profile.Index.LimitsOf(this);

    private Dictionary<string, int> Severities => _severities ??= Categories.Select((c, i) => (c, i)).ToDictionary(p => p.c, p => p.i, StringComparer.Ordinal);
}
