using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>A nuclide of a chain after a time, for one atom of the parent at the start.</summary>
/// <remarks>Atoms: of this nuclide per atom of the parent that there was.</remarks>
public sealed record ChainMember(Nuclide Nuclide, Fraction Atoms)
{
    /// <summary>Decays per second for so many atoms of the parent.</summary>
    public Activity ActivityFrom(AmountOfSubstance parent) =>
        new(parent.Moles * PhysicalConstants.Avogadro * Atoms.Value * Nuclide.DecayConstant.PerSecond);
}

/// <summary>
/// A nuclide and its daughters after a time, of a parent that was pure at the start: dN_i/dt = sum of b_ji lambda_j N_j - lambda_i N_i
/// (Bateman). Solved by the exponential of the triangular matrix of rates: a short step by its series, then squared, all terms positive,
/// so that microseconds and aeons stand in one chain.
/// Source: Bateman, Proc. Cambridge Phil. Soc. 15 (1910) 423; Moler and Van Loan, SIAM Rev. 45 (2003) 3 (scaling and squaring).
/// Worked example: radium-226 holds radon-222 in equilibrium after a month: as many becquerels of each.
/// </summary>
public sealed class DecayChain
{
    private readonly IReadOnlyList<Nuclide> _members;
    private readonly double[][] _feeds;

    /// <summary>A chain from its members and the shares by which they feed each other.</summary>
    /// <param name="members">The parent first, every daughter after those that feed it.</param>
    /// <param name="feeds">feeds[i][j]: share of the decays of member j that become member i.</param>
    internal DecayChain(IReadOnlyList<Nuclide> members, double[][] feeds) => (_members, _feeds) = (members, feeds);

    public Nuclide Parent => _members[0];

    public IReadOnlyList<Nuclide> Members => _members;

    /// <summary>Every member after a time.</summary>
    public IReadOnlyList<ChainMember> After(Span elapsed)
    {
        var column = Solve(elapsed.Seconds);
        return [.. _members.Select((n, i) => new ChainMember(n, new Fraction(column[i])))];
    }

    /// <summary>Alpha particles, each an atom of helium, per atom of the parent at the start.</summary>
    public Fraction AlphasUntil(Span elapsed) => new(Solve(elapsed.Seconds)[^1]);

    // The first column of exp(A t); the last row counts alpha particles.
    private double[] Solve(double seconds)
    {
        var n = _members.Count + 1;
        var rates = _members.Select(m => m.DecayConstant.PerSecond).Append(0).ToArray();
        var first = new double[n];
        first[0] = 1;
        if (seconds <= 0)
            return first;
        var squarings = Math.Max(0, (int)Math.Ceiling(Math.Log2(Math.Max(rates.Max() * seconds, 1))) + 4);
        var step = seconds / Math.Pow(2, squarings);
        var matrix = Series(rates, step);
        for (var s = 1; s <= squarings; s++)
        {
            matrix = Squared(matrix);

            // What stays of each nuclide is known exactly, which keeps rounding from growing with every squaring.
            for (var i = 0; i < n; i++)
                matrix[i][i] = Math.Exp(-rates[i] * step * Math.Pow(2, s));
        }

        return [.. matrix.Select(row => row[0])];
    }

    // exp(A h) = e^(-r h) exp((A + r I) h) with r the fastest rate: every term of the series is positive.
    private double[][] Series(double[] rates, double step)
    {
        var n = rates.Length;
        var fastest = rates.Max();
        var a = Identity(n);
        for (var i = 0; i < n; i++)
        {
            a[i][i] = (fastest - rates[i]) * step;
            for (var j = 0; j < i; j++)
                a[i][j] = rates[j] * step * (i == n - 1 ? _members[j].AlphasPerDecay.Value : _feeds[i][j]);
        }

        var sum = Identity(n);
        var term = Identity(n);
        for (var k = 1; k < n + 14; k++)
        {
            term = Product(term, a, 1.0 / k);
            Each(n, (i, j) => sum[i][j] += term[i][j]);
        }

        var shrink = Math.Exp(-fastest * step);
        Each(n, (i, j) => sum[i][j] *= shrink);
        return sum;
    }

    private static void Each(int n, Action<int, int> cell)
    {
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
                cell(i, j);
        }
    }

    private static double[][] Identity(int n)
    {
        var m = new double[n][];
        for (var i = 0; i < n; i++)
        {
            m[i] = new double[n];
            m[i][i] = 1;
        }

        return m;
    }

    private static double[][] Squared(double[][] m) => Product(m, m, 1);

    private static double[][] Product(double[][] x, double[][] y, double factor)
    {
        var n = x.Length;
        var z = new double[n][];
        for (var i = 0; i < n; i++)
        {
            z[i] = new double[n];
            for (var j = 0; j <= i; j++)
            {
                var sum = 0.0;
                for (var k = j; k <= i; k++)
                    sum += x[i][k] * y[k][j];
                z[i][j] = sum * factor;
            }
        }

        return z;
    }
}
