namespace Stockroom.Chemistry.Quantities;

/// <summary>A diffusion volume of the Fuller method, a number on the method's own scale.</summary>
public readonly record struct DiffusionVolume(double Value);
