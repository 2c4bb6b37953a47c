using System.Reflection;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Quantities;

/// <summary>What holds for every quantity: its arithmetic is that of the number it holds, and a unit converted there and back is the same.</summary>
public sealed class QuantityTests
{
    public static TheoryData<string> Types => [.. All.Select(t => t.Name)];

    private static IEnumerable<Type> All => typeof(Area).Assembly.GetTypes()
        .Where(t => t.Namespace == typeof(Area).Namespace && t is { IsValueType: true, IsGenericType: false, IsPublic: true, IsEnum: false } && Make(t) is not null)
        .OrderBy(t => t.Name, StringComparer.Ordinal);

    [Fact]
    public void Types_AreManyEnough_ThatNoneIsOverlooked() => Assert.True(All.Count() >= 25, $"{All.Count()}");

    [Theory]
    [MemberData(nameof(Types))]
    public void Operators_OfAQuantity_AreThoseOfItsNumber(string name)
    {
        var type = All.Single(t => t.Name == name);
        object six = Of(type, 6), four = Of(type, 4);
        var tried = 0;
        foreach (var m in type.GetMethods(BindingFlags.Public | BindingFlags.Static).Where(m => m.IsSpecialName && m.GetParameters().Length == 2))
        {
            object[] arguments = [.. m.GetParameters().Select((p, i) => p.ParameterType == type ? (i == 0 ? six : four) : p.ParameterType == typeof(double) ? i == 0 ? 6.0 : 4.0 : null!)];
            if (arguments.Contains(null))
                continue;
            object? expected = m.Name switch
            {
                "op_Addition" => 10.0,
                "op_Subtraction" => 2.0,
                "op_Multiply" => 24.0,
                "op_Division" => 1.5,
                "op_LessThan" or "op_LessThanOrEqual" or "op_Equality" => false,
                "op_GreaterThan" or "op_GreaterThanOrEqual" or "op_Inequality" => true,
                _ => null,
            };
            var got = m.Invoke(null, arguments)!;
            Assert.Equal(expected, got.GetType() == type ? NumberOf(type, got) : got);
            tried++;
        }

        Assert.True(tried >= 2, $"{tried} operators of {name}");
        if (six is IComparable comparable)
            Assert.True(comparable.CompareTo(four) > 0);
        else if (type.GetMethod("CompareTo", [type]) is { } compare)
            Assert.True((int)compare.Invoke(six, [four])! > 0);
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void From_AUnit_ReadsBackInIt(string name)
    {
        var type = All.Single(t => t.Name == name);
        foreach (var m in type.GetMethods(BindingFlags.Public | BindingFlags.Static).Where(m => m.Name.StartsWith("From", StringComparison.Ordinal) && m.GetParameters() is [{ ParameterType: var p }] && p == typeof(double)))
        {
            if (type.GetProperty(m.Name[4..]) is { } back)
                Assert.Equal(12.5, (double)back.GetValue(m.Invoke(null, [12.5]))!, 9);
        }
    }

    // Units are of SI: BIPM, SI Brochure, 9th ed., 2019; an atmosphere, a torr and a curie as tables 7 and 8 of earlier editions give them.
    [Fact]
    public void Units_OfOneQuantity_AgreeWithTheSiBrochure()
    {
        Assert.Equal(0.01, Area.FromSquareCentimetres(100).SquareMetres, 12);
        Assert.Equal(1e-6, Area.FromSquareMillimetres(1).SquareMetres, 15);
        Assert.Equal(273.15, Temperature.FromCelsius(0).Kelvin, 9);
        Assert.Equal(86400, Span.FromDays(1).Seconds, 9);
        Assert.Equal(0.001, Length.FromMillimetres(1).Metres, 12);
    }

    private static object Of(Type type, double x) => Make(type)!.Invoke([x]);

    private static ConstructorInfo? Make(Type type) => type.GetConstructor([typeof(double)]);

    private static double NumberOf(Type type, object quantity)
    {
        quantity.ToString();
        var held = type.GetFields(BindingFlags.NonPublic | BindingFlags.Instance).Single(f => f.FieldType == typeof(double));
        return (double)held.GetValue(quantity)!;
    }
}
