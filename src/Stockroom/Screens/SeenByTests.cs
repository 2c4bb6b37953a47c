using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Stockroom.Tests")]
