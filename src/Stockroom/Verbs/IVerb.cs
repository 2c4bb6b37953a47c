using System.CommandLine;

namespace Stockroom.Verbs;

/// <summary>One verb of the command line: a file of its own, listed in <see cref="VerbList"/>.</summary>
internal interface IVerb
{
    string Name { get; }

    /// <summary>One line for the help and for the README.</summary>
    string Summary { get; }

    /// <summary>The verb with its arguments, options and action.</summary>
    Command Build(Surroundings around);
}
