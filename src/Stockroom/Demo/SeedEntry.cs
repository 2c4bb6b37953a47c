using Stockroom.Book.Entries;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Demo;

/// <summary>An entry with the row and column of the collection that it comes from.</summary>
internal sealed record SeedEntry(Entry Entry, TableRow Row, string Column);
