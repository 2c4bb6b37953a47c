using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses;

/// <summary>How long a wall or liner takes before a part of the content comes through it at its steady rate, l^2/(6 D).</summary>
/// <remarks>Lag: shortest, expected, longest; null where it is not known, for the reason given, and then none is counted.</remarks>
public sealed record SheetLag(Substance Part, Band<Span>? Lag, string Because, Provenance? Source);
