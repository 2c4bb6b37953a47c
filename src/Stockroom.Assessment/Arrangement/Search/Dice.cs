namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>A fixed sequence of numbers that look drawn by lot, the same in every run: splitmix64 (Steele, Lea, Flood 2014).</summary>
internal sealed class Dice
{
    private ulong _state = 0x5EED_0F_5AFE_57A7;

    /// <summary>A number from 0 up to, but not including, a bound above 0.</summary>
    public int Below(int bound)
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15;
            var z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return (int)((z ^ (z >> 31)) % (ulong)bound);
        }
    }
}
