using System.Runtime.CompilerServices;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// The latest values of substances at a temperature: whoever follows one content asks for the same few over and over. Each thread has its
/// own; seen from outside, nothing changes.
/// </summary>
internal sealed class PropertyMemo<T>(Func<Substance, Temperature, T> compute)
{
    private const int Slots = 64;

    private readonly ThreadLocal<Slot[]> _slots = new(() => new Slot[Slots]);

    private record struct Slot(Substance? Substance, double Kelvin, T Value);

    public T Of(Substance substance, Temperature t)
    {
        var place = (RuntimeHelpers.GetHashCode(substance) ^ BitConverter.DoubleToInt64Bits(t.Kelvin).GetHashCode()) & (Slots - 1);
        ref var slot = ref _slots.Value![place];
        if (!ReferenceEquals(slot.Substance, substance) || slot.Kelvin != t.Kelvin)
            slot = new Slot(substance, t.Kelvin, compute(substance, t));
        return slot.Value;
    }
}
