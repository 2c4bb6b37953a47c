using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards;

/// <summary>One ingredient: what is known of it, its share, and its own state.</summary>
/// <param name="Profile">Its hazards by itself.</param>
/// <param name="Percent">Per cent by mass; by volume in a mixture of gases.</param>
/// <param name="State">Its own state near 20 degrees Celsius.</param>
public sealed record Ingredient(HazardProfile Profile, decimal Percent, MatterState State)
{
    public string Name => Profile.Name;

    /// <summary>The share that concentration limits count (the lead in lead nitrate).</summary>
    public decimal Counted => Percent * Profile.CountedShare;

    public IReadOnlyList<AssignedCategory> Categories => Profile.At(Percent);

    /// <summary>The categories of one class that hold at its share.</summary>
    internal IReadOnlyList<AssignedCategory> CategoriesOf(HazardClass hazard)
    {
        var own = Profile.Index.CategoriesOf(hazard);
        return own.Count > 0 && Profile.Index.HasBounds ? [.. own.Where(c => c.HoldsAt(Percent))] : own;
    }
}

/// <summary>What is to be classified: ingredients and what was measured on the whole.</summary>
public sealed record Mixture
{
    public required IReadOnlyList<Ingredient> Ingredients { get; init; }

    public required MatterState State { get; init; }

    public decimal? Ph { get; init; }

    /// <summary>Flash point of the whole in degrees Celsius, closed cup.</summary>
    public decimal? FlashPointCelsius { get; init; }

    /// <summary>Initial boiling point in degrees Celsius.</summary>
    public decimal? BoilingPointCelsius { get; init; }

    /// <summary>Kinematic viscosity at 40 degrees Celsius in mm2/s.</summary>
    public decimal? KinematicViscosity { get; init; }

    /// <summary>Assumptions made on the way, each a sentence.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>True for a single undiluted ingredient.</summary>
    public bool IsPure => Ingredients is [{ Percent: >= 100m }];

    public decimal WaterPercent => Ingredients.Where(i => i.Name == "water").Sum(i => i.Percent);

    /// <summary>
    /// The ingredients of a content, each named once. Shares of a mixture of gases are turned from mass into volume,
    /// by which gases are limited (CLP Annex VI, Note 5).
    /// </summary>
    public static Mixture Of(Content content, HazardFacts facts)
    {
        var notes = new List<string>();
        var merged = content.Parts
            .GroupBy(p => InWater(p.Substance, content, facts, notes))
            .Select(g => (Substance: g.Key, Percent: g.Sum(p => p.Percent)))
            .OrderBy(p => p.Substance.Name, StringComparer.Ordinal)
            .ToList();
        if (content.State == MatterState.Gas && merged.Count > 1)
        {
            if (merged.TrueForAll(p => p.Substance.MolarMass is not null))
            {
                var moles = merged.Sum(p => p.Percent / (decimal)p.Substance.MolarMass!.Value.GramsPerMole);
                merged = [.. merged.Select(p => (p.Substance, p.Percent / (decimal)p.Substance.MolarMass!.Value.GramsPerMole * 100m / moles))];
                notes.Add("shares of the gases were turned from mass into volume, by which gases are limited");
            }
            else
            {
                notes.Add("shares of the gases are by mass; their limits are by volume, and a molar mass is missing to convert them");
            }
        }

        return new Mixture
        {
            Ingredients = [.. merged.Select(p => new Ingredient(facts.ProfileOf(p.Substance), p.Percent, p.Substance.State))],
            State = content.State,
            Notes = notes,
        };
    }

    /// <summary>
    /// True where water is at least one half of everything but the ingredients that are known to be without hazards, which
    /// take nothing from a hazard and add nothing to the water.
    /// </summary>
    public bool IsMostlyWater
    {
        get
        {
            var inert = Ingredients.Where(i => i.Profile.Knowledge == HazardKnowledge.NotClassified && i.Name != "water").Sum(i => i.Percent);
            return WaterPercent > 0 && WaterPercent * 2m >= 100m - inert;
        }
    }

    /// <summary>The same with what was measured on the whole.</summary>
    public Mixture With(Measured measured) => this with
    {
        Ph = measured.Ph ?? Ph,
        FlashPointCelsius = measured.FlashPointCelsius ?? FlashPointCelsius,
        BoilingPointCelsius = measured.BoilingPointCelsius ?? BoilingPointCelsius,
        KinematicViscosity = measured.KinematicViscosity ?? KinematicViscosity,
    };

    // A gas that the keeper mixes with water is there as its solution, for which the limits are.
    private static Substance InWater(Substance substance, Content content, HazardFacts facts, List<string> notes)
    {
        if (content.State != MatterState.Liquid || content.WaterPercent == 0 || facts.DissolvedForm(substance) is not { } dissolved)
            return substance;
        notes.Add($"{substance.Name} in water is judged as {dissolved.Name}");
        return dissolved;
    }
}
