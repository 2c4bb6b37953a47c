using System.Collections.Frozen;
using System.Text;

namespace Stockroom.Labels.Layout;

/// <summary>Sets the digits of chemical formulas as subscripts: H2SO4 becomes H₂SO₄, CuSO4·5H2O becomes CuSO₄·5H₂O.</summary>
internal static class ChemicalFormula
{
    /// <summary>Symbols of the elements 1 to 118 (IUPAC), with D and T for the hydrogen isotopes.</summary>
    private static readonly FrozenSet<string> Symbols = (
        "H He Li Be B C N O F Ne Na Mg Al Si P S Cl Ar K Ca Sc Ti V Cr Mn Fe Co Ni Cu Zn Ga Ge As Se Br Kr Rb Sr Y Zr Nb Mo "
        + "Tc Ru Rh Pd Ag Cd In Sn Sb Te I Xe Cs Ba La Ce Pr Nd Pm Sm Eu Gd Tb Dy Ho Er Tm Yb Lu Hf Ta W Re Os Ir Pt Au Hg "
        + "Tl Pb Bi Po At Rn Fr Ra Ac Th Pa U Np Pu Am Cm Bk Cf Es Fm Md No Lr Rf Db Sg Bh Hs Mt Ds Rg Cn Nh Fl Mc Lv Ts Og D T")
        .Split(' ').ToFrozenSet();

    public static string WithSubscripts(string text) => string.Join(' ', text.Split(' ').Select(Word));

    private static string Word(string word)
    {
        var core = word.TrimEnd(',', ';', '.', ':');
        var parts = core.Split('·');
        return parts.All(IsFormula)
            ? string.Join('·', parts.Select(Subscripted)) + word[core.Length..]
            : word;
    }

    private static bool IsFormula(string part)
    {
        var i = 0;
        while (i < part.Length && char.IsAsciiDigit(part[i]))
        {
            i++;
        }

        var (atoms, depth) = (0, 0);
        while (i < part.Length)
        {
            var c = part[i];
            if (i + 1 < part.Length && char.IsAsciiLetterUpper(c) && Symbols.Contains(part.Substring(i, 2)))
            {
                (atoms, i) = (atoms + 1, i + 2);
            }
            else if (Symbols.Contains(c.ToString()))
            {
                (atoms, i) = (atoms + 1, i + 1);
            }
            else if (c is '(' or '[' or ')' or ']' || char.IsAsciiDigit(c))
            {
                depth += c is '(' or '[' ? 1 : c is ')' or ']' ? -1 : 0;
                i++;
            }
            else
            {
                return false;
            }

            if (depth < 0)
            {
                return false;
            }
        }

        return atoms > 0 && depth == 0;
    }

    private static string Subscripted(string part)
    {
        var result = new StringBuilder(part.Length);
        var leading = true;
        foreach (var c in part)
        {
            leading &= char.IsAsciiDigit(c);
            result.Append(!leading && char.IsAsciiDigit(c) ? (char)('₀' + (c - '0')) : c);
        }

        return result.ToString();
    }
}
