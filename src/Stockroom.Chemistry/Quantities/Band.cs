namespace Stockroom.Chemistry.Quantities;

/// <summary>A value with the low and high ends that its uncertainty leaves open; Low &lt;= Expected &lt;= High.</summary>
public readonly record struct Band<T>(T Low, T Expected, T High)
{
    public Band<TOut> Select<TOut>(Func<T, TOut> f) => new(f(Low), f(Expected), f(High));

    public static Band<T> Exactly(T value) => new(value, value, value);
}

/// <summary>Bands made from a value and a spread.</summary>
public static class Band
{
    public static Band<MassRate> Around(MassRate expected, Spread spread) =>
        new(expected / spread.Factor, expected, expected * spread.Factor);

    public static Band<Pressure> Around(Pressure expected, Spread spread) =>
        new(expected / spread.Factor, expected, expected * spread.Factor);

    public static Band<Mass> Around(Mass expected, Spread spread) =>
        new(expected / spread.Factor, expected, expected * spread.Factor);
}
