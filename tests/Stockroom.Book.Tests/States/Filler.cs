using System.Collections.Immutable;
using System.Reflection;
using Stockroom.Book.Containers;
using Stockroom.Book.Places;
using TestResult = Stockroom.Book.Containers.TestResult;

namespace Stockroom.Book.Tests.States;

/// <summary>Makes a record with a value of its own in every member that can be set, whatever members there are.</summary>
internal sealed class Filler
{
    private const BindingFlags All = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;

    /// <summary>Values made so far.</summary>
    public int Made { get; private set; }

    public static IEnumerable<PropertyInfo> Settable(Type type) => type.GetProperties(All).Where(p => p.SetMethod is not null && p.GetIndexParameters().Length == 0);

    public object Make(Type type)
    {
        Made++;
        if (Nullable.GetUnderlyingType(type) is { } inner)
            return Make(inner);
        if (type == typeof(string))
            return $"text {Made}, \"quoted\" öl";
        if (type == typeof(decimal))
            return Made + 0.25m;
        if (type == typeof(int) || type == typeof(long))
            return Convert.ChangeType(Made, type);
        if (type == typeof(bool))
            return true;
        if (type == typeof(DateOnly))
            return new DateOnly(2020, 1, 1).AddDays(Made);
        if (type == typeof(ContainerId))
            return ContainerId.AtOrAfter(1000 + Made);
        if (type == typeof(PlaceKind))
            return PlaceKind.FireCabinet;
        if (type.IsEnum)
            return Enum.GetValues(type).GetValue(Enum.GetValues(type).Length - 1)!;
        if (type == typeof(ImmutableSortedDictionary<string, TestResult>))
            return ImmutableSortedDictionary.Create<string, TestResult>(StringComparer.Ordinal).Add("peroxides", (TestResult)Make(typeof(TestResult))).Add("water", (TestResult)Make(typeof(TestResult)));
        return type.IsGenericType ? List(type.GetGenericArguments()[0]) : Record(type);
    }

    private object List(Type element)
    {
        var array = Array.CreateInstance(element, 2);
        array.SetValue(Make(element), 0);
        array.SetValue(Make(element), 1);
        return typeof(ImmutableList).GetMethods().Single(m => m.Name == "CreateRange" && m.GetParameters().Length == 1).MakeGenericMethod(element).Invoke(null, [array])!;
    }

    private object Record(Type type)
    {
        var constructor = type.GetConstructors(All).OrderByDescending(c => c.GetParameters().Length).First(c => c.GetParameters() is not [{ } only] || only.ParameterType != type);
        var made = constructor.Invoke([.. constructor.GetParameters().Select(p => Make(p.ParameterType))]);
        foreach (var property in Settable(type).Where(p => constructor.GetParameters().All(c => c.Name != p.Name)))
            property.SetValue(made, Make(property.PropertyType));
        return made;
    }
}
