using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>Helium that alpha decay makes in a sealed content; all of it is counted as free gas, which is the most there can be.</summary>
internal static class DecayHelium
{
    public static AmountOfSubstance After(AmpouleQuestion question, PropertyFacts facts) =>
        RadioactiveContent.Of(question.Content, question.Fill, facts).HeliumUntil(question.Kept);
}
