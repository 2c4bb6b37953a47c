namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>A vessel in centimetres, as the book names it.</summary>
internal sealed record SimulatedVessel(string Name, double Millilitres, double BoreCm, double NeckCm, double NeckLengthCm, double WallCm, double TareGrams, double OutsideMl)
{
    public static readonly SimulatedVessel ScrewBottle = new("glass reagent bottle 250 mL", 250, 6.6, 3.0, 2.5, 0.22, 225, 313);
    public static readonly SimulatedVessel JointBottle = new("ground-joint bottle 250 mL", 250, 6.6, 1.9, 2.5, 0.22, 210, 313);
    public static readonly SimulatedVessel SmallJointBottle = new("ground-joint bottle 100 mL", 100, 5.0, 1.4, 2.5, 0.22, 105, 139);
    public static readonly SimulatedVessel Jar = new("glass jar 125 mL", 125, 4.7, 2.6, 1.2, 0.25, 115, 174);
    public static readonly SimulatedVessel Plastic = new("HDPE bottle 500 mL", 500, 7.2, 2.0, 1.8, 0.15, 55, 569);

    public double SectionCm2 => Math.PI / 4 * BoreCm * BoreCm;

    public double NeckSectionCm2 => Math.PI / 4 * NeckCm * NeckCm;
}
