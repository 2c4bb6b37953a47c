using Stockroom.Assessment.Intake;
using Stockroom.Assessment.Recipes;
using Stockroom.Book;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Verbs;

/// <summary>What was classified, what was found, and its label elements.</summary>
internal sealed record ClassifyAnswer(string Name, Classification Found, LabelElements Label);

/// <summary>One question to the classification, as typed.</summary>
internal sealed record ClassifyQuery
{
    public string? Name { get; init; }

    public string? Mix { get; init; }

    public string? File { get; init; }

    public string? State { get; init; }

    public decimal? FlashPoint { get; init; }

    public decimal? BoilingPoint { get; init; }

    public decimal? Ph { get; init; }

    public decimal? Viscosity { get; init; }

    public string? Rules { get; init; }

    /// <summary>The names that count, the keeper's own among them.</summary>
    public SubstanceCatalogue Catalogue { get; init; } = SubstanceCatalogue.Default;

    /// <summary>The classifications that count, the keeper's own among them.</summary>
    public HazardFacts Facts { get; init; } = HazardFacts.Default;

    /// <summary>The answer.</summary>
    /// <exception cref="RefusedException">The words were wrong, or the file was refused.</exception>
    public ClassifyAnswer Answer(Surroundings around)
    {
        if (new[] { Name, Mix, File }.Count(w => w is not null) != 1)
            throw RefusedException.Words("one of NAME, --mix and --mix-file is needed, for example: classify --mix \"hydrochloric acid=10%; water=90%\"");
        if (Ph is < -2m or > 16m)
            throw RefusedException.Words($"a pH of {Ph} cannot be; it lies from -2 to 16");
        if (Viscosity is <= 0)
            throw RefusedException.Words($"a viscosity of {Viscosity} mm2/s must be above zero");
        return File is { } file ? OfFile(file, around) : OfContent(Name is { } name ? Resolve(name) : Composed(Mix!));
    }

    private ClassifyAnswer OfContent(Content content)
    {
        if (State is not null)
            content = content with { State = StateOr(content.State) };
        return Answered(content.Name, Classifier.Classify(content, Facts, RulesOr(RuleSet.Eu), Measured));
    }

    private ClassifyAnswer OfFile(string path, Surroundings around)
    {
        MixFile file;
        try
        {
            file = MixFile.Read(path == "-" ? around.In.ReadToEnd() : System.IO.File.ReadAllText(path), Facts, Catalogue);
        }
        catch (BookRefusal e)
        {
            throw RefusedException.Input($"{path}: {e.Message}");
        }
        catch (Exception e) when (InputFile.IsUnreadable(e))
        {
            throw RefusedException.Input($"'{path}' cannot be read; a JSON file with \"ingredients\" is needed");
        }

        var mixture = file.Mixture with { State = StateOr(file.Mixture.State) };
        return Answered(path, Classifier.Classify(mixture.With(Measured), Facts, RulesOr(file.Rules ?? RuleSet.Eu)));
    }

    private Measured Measured => new() { Ph = Ph, FlashPointCelsius = FlashPoint, BoilingPointCelsius = BoilingPoint, KinematicViscosity = Viscosity };

    private ClassifyAnswer Answered(string name, Classification found) => new(name, found, LabelElements.Of(found, Facts));

    private Content Resolve(string name)
    {
        var resolution = Catalogue.Resolve(name);
        return resolution.Content ?? throw RefusedException.Words(resolution.Problem!);
    }

    private Content Composed(string mix)
    {
        try
        {
            return MixtureWords.Read(mix, mix, Catalogue);
        }
        catch (BookRefusal e)
        {
            throw RefusedException.Words(e.Message);
        }
    }

    private MatterState StateOr(MatterState otherwise)
    {
        try
        {
            return State is { } word ? MixFile.State(word) : otherwise;
        }
        catch (BookRefusal e)
        {
            throw RefusedException.Words(e.Message);
        }
    }

    private RuleSet RulesOr(RuleSet otherwise)
    {
        try
        {
            return Rules is { } word ? RuleSets.Parse(word) : otherwise;
        }
        catch (FormatException e)
        {
            throw RefusedException.Words(e.Message);
        }
    }
}
