namespace Stockroom.Chemistry.Catalogue;

/// <summary>State of matter at room temperature (20 degrees Celsius, 101.325 kPa).</summary>
public enum MatterState
{
    Unknown = 0,
    Solid,
    Liquid,
    Gas,
}
