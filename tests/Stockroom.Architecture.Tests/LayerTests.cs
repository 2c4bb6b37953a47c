using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using ArchUnitNET.xUnitV3;
using static ArchUnitNET.Fluent.ArchRuleDefinition;
using Assembly = System.Reflection.Assembly;

namespace Stockroom.Architecture.Tests;

/// <summary>The walls of the house: references go Chemistry, Book, Assessment, then Storage and Labels, then the program.</summary>
public sealed class LayerTests
{
    private static readonly string[] Layers =
        ["Stockroom.Chemistry", "Stockroom.Book", "Stockroom.Assessment", "Stockroom.Storage", "Stockroom.Labels", "stockroom"];

    private static readonly ArchUnitNET.Domain.Architecture House =
        new ArchLoader().LoadAssemblies([.. Layers.Select(Assembly.Load)]).Build();

    [Theory]
    [InlineData("Stockroom.Chemistry", "Stockroom.Book", "Stockroom.Assessment", "Stockroom.Storage", "Stockroom.Labels", "stockroom")]
    [InlineData("Stockroom.Book", "Stockroom.Assessment", "Stockroom.Storage", "Stockroom.Labels", "stockroom")]
    [InlineData("Stockroom.Assessment", "Stockroom.Storage", "Stockroom.Labels", "stockroom")]
    [InlineData("Stockroom.Storage", "Stockroom.Labels", "stockroom")]
    [InlineData("Stockroom.Labels", "Stockroom.Storage", "stockroom")]
    public void Layer_OfTheHouse_KnowsNothingAbove(string layer, params string[] above)
    {
        foreach (var upper in above)
        {
            Types().That().ResideInAssembly(Assembly.Load(layer)).Should().NotDependOnAny(
                Types().That().ResideInAssembly(Assembly.Load(upper))).WithoutRequiringPositiveResults().Check(House);
        }
    }

    [Theory]
    [InlineData("LiteDB", "Stockroom.Storage")]
    [InlineData("QRCoder", "Stockroom.Labels")]
    [InlineData("PdfSharp", "Stockroom.Labels")]
    [InlineData("Terminal.Gui", "stockroom")]
    [InlineData("System.CommandLine", "stockroom")]
    public void Library_IsReferenced_OnlyWhereItBelongs(string library, string owner)
    {
        var others = Layers
            .Where(l => l != owner)
            .Where(l => Assembly.Load(l).GetReferencedAssemblies().Any(a => a.Name!.StartsWith(library, StringComparison.Ordinal)));
        Assert.Empty(others);
    }

    /// <summary>Physics speaks in quantities, so that a pascal is never taken for a bar.</summary>
    [Theory]
    [InlineData("Stockroom.Chemistry", "Stockroom.Chemistry.Properties")]
    [InlineData("Stockroom.Assessment", "Stockroom.Assessment.Losses")]
    public void PublicSignature_OfPhysics_HoldsNoBareDouble(string assembly, string space)
    {
        var offenders = Assembly.Load(assembly).GetExportedTypes()
            .Where(t => t.Namespace is { } n && (n == space || n.StartsWith(space + ".", StringComparison.Ordinal)))
            .SelectMany(t => t.GetMembers().Where(m => m.DeclaringType == t && Speaks(m)).Select(m => $"{t.Name}.{m.Name}"))
            .Order(StringComparer.Ordinal)
            .ToList();
        Assert.Empty(offenders);
    }

    private static bool Speaks(System.Reflection.MemberInfo member) => member switch
    {
        System.Reflection.MethodInfo m => IsBare(m.ReturnType) || m.GetParameters().Any(p => IsBare(p.ParameterType)),
        System.Reflection.ConstructorInfo c => c.GetParameters().Any(p => IsBare(p.ParameterType)),
        System.Reflection.FieldInfo f => !f.IsLiteral && IsBare(f.FieldType),
        _ => false,
    };

    private static bool IsBare(System.Type type) => type == typeof(double) || type == typeof(float)
        || type == typeof(double?) || (type.IsByRef && IsBare(type.GetElementType()!));
}
