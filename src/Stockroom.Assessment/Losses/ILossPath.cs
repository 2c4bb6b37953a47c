namespace Stockroom.Assessment.Losses;

/// <summary>One way out of a vessel. Adding one is a file in Paths and a line in <see cref="LossPaths"/>.</summary>
public interface ILossPath
{
    /// <summary>As the keeper reads it: "past the closure".</summary>
    string Name { get; }

    /// <summary>What leaves this way in a state, or why nothing does.</summary>
    PathLoss Assess(LossState state);
}
