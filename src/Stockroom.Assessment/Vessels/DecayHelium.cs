using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>Helium that alpha decay makes in a sealed content; all of it is counted as free gas, which is the most there can be.</summary>
internal static class DecayHelium
{
    public static AmountOfSubstance After(AmpouleQuestion question, PropertyFacts facts)
    {
        var moles = 0.0;
        foreach (var part in question.Content.Parts)
        {
            foreach (var share in facts.Nuclides(part.Substance))
            {
                var mass = question.Fill * ((double)part.Percent / 100 * share.MassShare.Value);
                moles += facts.Helium(share.Nuclide, mass, question.Kept).Moles;
            }
        }

        return new AmountOfSubstance(moles);
    }
}
