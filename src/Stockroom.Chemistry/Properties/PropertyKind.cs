namespace Stockroom.Chemistry.Properties;

/// <summary>The single-valued properties of properties.tsv, each in its SI unit.</summary>
public enum PropertyKind
{
    /// <summary>K.</summary>
    MeltingPoint = 0,

    /// <summary>K at 101.325 kPa.</summary>
    BoilingPoint,

    /// <summary>K at 101.325 kPa.</summary>
    SublimationPoint,

    /// <summary>kg/m3 of the solid or liquid.</summary>
    Density,

    /// <summary>kg/m3 of the gas at 101.325 kPa.</summary>
    GasDensity,

    /// <summary>1/K, of the volume.</summary>
    Expansion,

    /// <summary>K, closed cup.</summary>
    FlashPoint,

    /// <summary>Share by volume in air.</summary>
    LowerFlammableLimit,

    /// <summary>Share by volume in air.</summary>
    UpperFlammableLimit,

    /// <summary>K.</summary>
    CriticalTemperature,

    /// <summary>Pa.</summary>
    CriticalPressure,

    /// <summary>kg/mol of the vapour of a natural or technical mixture.</summary>
    VapourMolarMass,
}
