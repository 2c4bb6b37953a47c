using System.Diagnostics;
using Stockroom.Assessment.Arrangement;
using Stockroom.Assessment.Arrangement.Checking;
using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Tests.Arrangement;

namespace Stockroom.Benchmarks.Arrangement;

/// <summary>Plans of generated stores beside first fit and an exact solver, a line a store.</summary>
internal static class ArrangementComparison
{
    // Beyond this the solver may not be done with its preparations in its time.
    private const int LargestThatMustBeCompared = 300;

    /// <summary>0 where every plan held, none was worse than first fit, and all came as near to the solver as they must.</summary>
    public static int Run(int count, int seeds, double seconds, double disturbed)
    {
        var failed = 0;
        Console.WriteLine($"{count} containers, {disturbed:0 %} of them anywhere; left+moved of: first fit | usual effort (CPU s) | thorough (CPU s) | solver in {seconds} s, begun at the thorough plan, and its bound | floor by the clashes alone");
        for (var seed = 1; seed <= seeds; seed++)
        {
            var shelving = GeneratedStores.Make(count, seed, disturbed);
            var first = Arranger.FirstFit(shelving);
            var (usual, usualSeconds) = Timed(shelving, Effort.Usual);
            var (thorough, thoroughSeconds) = Timed(shelving, Effort.Thorough);
            var exact = ExactSolver.Solve(shelving, seconds, thorough);
            var floor = Arranger.Floor(shelving);
            var (a, b) = (Of(usual), Of(thorough));
            var verdict = Verdict(count, first, a, b, exact, PlanChecker.Check(shelving, usual).Count + PlanChecker.Check(shelving, thorough).Count);
            failed += verdict.Length == 0 ? 0 : 1;
            Console.WriteLine(
                $"seed {seed}: {first.Left}+{first.Moved} | {a.Left}+{a.Moved} ({usualSeconds:0.00}) | {b.Left}+{b.Moved} ({thoroughSeconds:0.00}) | "
                + $"{(exact.Left < 0 ? "nothing found" : $"{exact.Left}+{exact.Moved}")}{(exact.Left < 0 ? "" : exact.IsProven ? " optimal" : $", bound {exact.BoundLeft}+{exact.BoundMoved}")} | {floor.Left}+{floor.Moved}{(thorough.Moves.Any(m => m.IsParked) ? $", {thorough.Moves.Count(m => m.IsParked)} parked" : "")}{verdict}");
        }

        Console.WriteLine(failed == 0 ? "all as they must be" : $"{failed} not as they must be");
        return failed == 0 ? 0 : 1;
    }

    private static (Plan Plan, double Seconds) Timed(Shelving shelving, Effort effort)
    {
        var before = Process.GetCurrentProcess().TotalProcessorTime;
        var plan = Arranger.Propose(shelving, effort, new PairJudge());
        return (plan, (Process.GetCurrentProcess().TotalProcessorTime - before).TotalSeconds);
    }

    private static (int Left, int Moved) Of(Plan plan) => (plan.Left.Count, plan.Relocated);

    private static string Verdict(int count, (int Left, int Moved) first, (int Left, int Moved) usual, (int Left, int Moved) thorough, ExactAnswer exact, int mistakes)
    {
        if (mistakes > 0)
            return " INVALID";
        if (usual.CompareTo(first) > 0 || thorough.CompareTo(first) > 0)
            return " WORSE THAN FIRST FIT";
        if (exact.Left < 0)
            return count > LargestThatMustBeCompared ? "" : " THE SOLVER FOUND NOTHING";
        if (count <= 25)
            return exact.IsProven && usual == (exact.Left, exact.Moved) ? "" : " NOT THE OPTIMUM";
        if (usual.Left > exact.Left || thorough.Left > exact.Left)
            return " LEAVES MORE";
        if (usual.Left == exact.Left && usual.Moved > 1.10 * exact.Moved)
            return " MORE THAN 10 %";
        return thorough.Left == exact.Left && thorough.Moved > 1.05 * exact.Moved ? " MORE THAN 5 %" : "";
    }
}
