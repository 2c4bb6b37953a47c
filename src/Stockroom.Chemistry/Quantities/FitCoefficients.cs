namespace Stockroom.Chemistry.Quantities;

/// <summary>The constants of a published fit, in the units its equation states; unused ones are 0.</summary>
public readonly record struct FitCoefficients(double A, double B, double C = 0, double D = 0, double E = 0);
