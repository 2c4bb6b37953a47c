using Stockroom.Verbs;

namespace Stockroom;

internal static class Program
{
    private static int Main(string[] args) => CommandLine.Run(args, Surroundings.OfThisProcess());
}
