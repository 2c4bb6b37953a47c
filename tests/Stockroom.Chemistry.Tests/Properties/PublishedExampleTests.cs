using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>Every worked example of a published set, each by the law that the program itself uses; none may be left out.</summary>
public sealed class PublishedExampleTests
{
    [Fact]
    public void Examples_EveryOne_ComesOut()
    {
        var all = PublishedExample.All();
        var faults = new List<string>();
        foreach (var example in all)
        {
            if (Laws(example.Model) is not { } law)
                faults.Add($"{example.Id}: no law for {example.Model}");
            else if (example.Fault(law(example)) is { } fault)
                faults.Add(fault);
        }

        Assert.True(all.Count >= 60, $"only {all.Count} examples");
        Assert.Equal([], faults);
    }

    private static Func<PublishedExample, Dictionary<string, double>>? Laws(string model) =>
        DiffusionExamples.Of(model) ?? AirExamples.Of(model) ?? VesselExamples.Of(model) ?? DecayExamples.Of(model);
}

/// <summary>Shorthand for the examples' own columns.</summary>
internal static class In
{
    public static Pressure P(this PublishedExample e, string name) => new(e[name]);

    public static Temperature T(this PublishedExample e, string name = "T_K") => new(e[name]);

    public static Length L(this PublishedExample e, string name = "L_m") => new(e[name]);

    public static Diffusivity D(this PublishedExample e) => new(e["D_m2_s"]);

    public static MolarMass M(this PublishedExample e, string name = "M") => MolarMass.FromGramsPerMole(e[name]);

    public static double Circle(double diameter) => Math.PI / 4 * diameter * diameter;

    public static Dictionary<string, double> Gives(string name, double value) => new(StringComparer.Ordinal) { [name] = value };
}
