using System.Diagnostics.CodeAnalysis;

namespace Stockroom.Book.Encoding;

/// <summary>A well-formed entry of a kind, or with a member, that only a newer program knows.</summary>
[SuppressMessage("Design", "CA1032", Justification = "Thrown here alone, with what is not known.")]
[SuppressMessage("Roslynator", "RCS1194", Justification = "As above.")]
public sealed class NewerEntryException(string message) : FormatException(message);
