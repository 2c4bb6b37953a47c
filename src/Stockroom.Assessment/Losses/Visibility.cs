using System.Runtime.CompilerServices;

// The step of the integration is no one's business but its test's.
[assembly: InternalsVisibleTo("Stockroom.Assessment.Tests")]
