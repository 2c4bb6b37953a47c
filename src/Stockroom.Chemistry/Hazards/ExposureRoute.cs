namespace Stockroom.Chemistry.Hazards;

/// <summary>How a substance enters; inhalation is parted by form because its figures are in different units.</summary>
public enum ExposureRoute
{
    /// <summary>By mouth, mg per kg body mass.</summary>
    Oral = 0,

    /// <summary>Through the skin, mg per kg body mass.</summary>
    Dermal,

    /// <summary>As a gas, parts per million by volume over 4 hours.</summary>
    Gas,

    /// <summary>As a vapour, mg per litre over 4 hours.</summary>
    Vapour,

    /// <summary>As dust or mist, mg per litre over 4 hours.</summary>
    Dust,
}

/// <summary>The words by which routes are named in tables.</summary>
public static class ExposureRoutes
{
    public static readonly IReadOnlyDictionary<string, ExposureRoute> Words = new Dictionary<string, ExposureRoute>(StringComparer.Ordinal)
    {
        ["oral"] = ExposureRoute.Oral,
        ["dermal"] = ExposureRoute.Dermal,
        ["gas"] = ExposureRoute.Gas,
        ["vapour"] = ExposureRoute.Vapour,
        ["dust"] = ExposureRoute.Dust,
    };

    public static bool IsInhalation(this ExposureRoute route) => route >= ExposureRoute.Gas;

    internal static string Word(this ExposureRoute route) => route switch
    {
        ExposureRoute.Oral => "oral",
        ExposureRoute.Dermal => "dermal",
        ExposureRoute.Gas => "inhalation, gas",
        ExposureRoute.Vapour => "inhalation, vapour",
        _ => "inhalation, dust or mist",
    };
}
