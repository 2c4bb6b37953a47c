namespace Stockroom.Chemistry.Quantities;

/// <summary>A flow of volume, held in m3/s.</summary>
public readonly record struct VolumeRate(double CubicMetresPerSecond) : IComparable<VolumeRate>
{
    public static VolumeRate operator +(VolumeRate a, VolumeRate b) => new(a.CubicMetresPerSecond + b.CubicMetresPerSecond);

    public static VolumeRate operator -(VolumeRate a, VolumeRate b) => new(a.CubicMetresPerSecond - b.CubicMetresPerSecond);

    public static VolumeRate operator *(VolumeRate a, double k) => new(a.CubicMetresPerSecond * k);

    public static VolumeRate operator /(VolumeRate a, double k) => new(a.CubicMetresPerSecond / k);

    public static double operator /(VolumeRate a, VolumeRate b) => a.CubicMetresPerSecond / b.CubicMetresPerSecond;

    public static bool operator <(VolumeRate a, VolumeRate b) => a.CubicMetresPerSecond < b.CubicMetresPerSecond;

    public static bool operator >(VolumeRate a, VolumeRate b) => a.CubicMetresPerSecond > b.CubicMetresPerSecond;

    public static bool operator <=(VolumeRate a, VolumeRate b) => a.CubicMetresPerSecond <= b.CubicMetresPerSecond;

    public static bool operator >=(VolumeRate a, VolumeRate b) => a.CubicMetresPerSecond >= b.CubicMetresPerSecond;

    public int CompareTo(VolumeRate other) => CubicMetresPerSecond.CompareTo(other.CubicMetresPerSecond);
}
