namespace Stockroom.Assessment.Neighbours;

/// <summary>A set of terms, for asking quickly whether any rule can speak.</summary>
internal sealed class TermSet(int terms)
{
    private readonly ulong[] _bits = new ulong[(terms + 63) / 64];

    public void Add(int term) => _bits[term >> 6] |= 1UL << (term & 63);

    public void AddAll(TermSet other)
    {
        for (var i = 0; i < _bits.Length; i++)
            _bits[i] |= other._bits[i];
    }

    public bool Overlaps(TermSet other)
    {
        for (var i = 0; i < _bits.Length; i++)
        {
            if ((_bits[i] & other._bits[i]) != 0)
                return true;
        }

        return false;
    }
}
