namespace Stockroom.Book.Containers;

/// <summary>What lies over the contents: "water", "mineral oil", "argon", "sulfuric acid 98%".</summary>
/// <param name="Name">What it is; a container without a cover has none of these at all.</param>
/// <param name="DepthMillimetres">Depth when last put on, topped up or measured, in mm; null where none was given (a gas).</param>
/// <param name="Since">Day on which this cover was put on.</param>
/// <param name="DepthOn">Day to which the depth belongs.</param>
public sealed record Cover(string Name, decimal? DepthMillimetres, DateOnly Since, DateOnly DepthOn);

/// <summary>A depth of a cover in mm on a day.</summary>
public sealed record CoverDepth(long Entry, DateOnly On, decimal Millimetres);
