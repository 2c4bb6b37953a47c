namespace Stockroom.Book.Identity;

/// <summary>
/// All bodies of one length in a fixed, scattered order, so that neighbouring serials look nothing alike.
/// The order is the permutation serial -> (step * serial) mod size; the step is coprime to the size, and none of its
/// digits in base 25 is 0 or 24, so that one step changes every character whatever is carried.
/// </summary>
internal sealed class IdSpace
{
    /// <summary>Letters that are not mistaken for digits and do not make words.</summary>
    public const string Letters = "CDFHJKMNPRTVWXY";
    public const string Alphabet = "0123456789" + Letters;

    private static readonly int[] StepDigits = [8, 11, 7, 13, 9, 17];

    private readonly long _step;
    private readonly long _inverse;

    private IdSpace(int length)
    {
        Length = length;
        Size = Letters.Length;
        _step = StepDigits[0];
        for (var i = 1; i < length; i++)
        {
            Size *= Alphabet.Length;
            _step = (_step * Alphabet.Length) + StepDigits[i];
        }

        while (GreatestCommonDivisor(_step, Size) != 1)
            _step++;
        _inverse = InverseOf(_step, Size);
    }

    /// <summary>Bodies of 4, then 5, then 6 characters.</summary>
    public static IReadOnlyList<IdSpace> All { get; } = [new(4), new(5), new(6)];

    public int Length { get; }

    public long Size { get; }

    public string Body(long serial)
    {
        var rest = _step * serial % Size;
        var body = new char[Length];
        for (var i = Length - 1; i > 0; i--)
        {
            body[i] = Alphabet[(int)(rest % Alphabet.Length)];
            rest /= Alphabet.Length;
        }

        body[0] = Letters[(int)rest];
        return new string(body);
    }

    public long Serial(string body)
    {
        long value = Letters.IndexOf(body[0], StringComparison.Ordinal);
        foreach (var c in body.AsSpan(1))
            value = (value * Alphabet.Length) + Alphabet.IndexOf(c, StringComparison.Ordinal);
        return _inverse * value % Size;
    }

    private static long GreatestCommonDivisor(long a, long b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);

    // Extended Euclid.
    private static long InverseOf(long a, long modulus)
    {
        var (r0, r1, t0, t1) = (modulus, a % modulus, 0L, 1L);
        while (r1 != 0)
        {
            var q = r0 / r1;
            (r0, r1) = (r1, r0 - (q * r1));
            (t0, t1) = (t1, t0 - (q * t1));
        }

        return t0 < 0 ? t0 + modulus : t0;
    }
}
