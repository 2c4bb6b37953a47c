using System.CommandLine;
using Stockroom.Assessment;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Verbs;

/// <summary>The air about a vessel, for a forecast with no book: a place of some kind within a room.</summary>
internal sealed class AirOptions
{
    private readonly Option<string?> _place = new("--place") { Description = "With no book: cabinet (else this), refrigerator, fire cabinet, acid cabinet, ventilated cabinet, display case or room", HelpName = "KIND" };
    private readonly Option<string?> _volume = new("--air-volume") { Description = "Air of that place; else as usually met", HelpName = "M3" };
    private readonly Option<string?> _changes = new("--air-changes") { Description = "Fresh air there, in changes an hour; else as usually met", HelpName = "N" };

    public IEnumerable<Option> All => [_place, _volume, _changes];

    public Situation Around(Situation situation, ParseResult p)
    {
        var kind = p.GetValue(_place)?.Trim().ToLowerInvariant() ?? "cabinet";
        var usual = kind is "room" or "open shelf" ? AirSpaces.Room : AirSpaces.Of(kind) ?? throw RefusedException.Words($"'{kind}' is not a kind of place; write cabinet, refrigerator, fire cabinet, acid cabinet, ventilated cabinet, display case or room");
        var volume = Within(p.GetValue(_volume), "a volume in m3", 0.001, 10_000) is { } m3 ? new Volume(m3) : usual.Space.Volume;
        var changes = Within(p.GetValue(_changes), "a number of air changes an hour", 0.001, 100) is { } n ? new RateConstant(n / 3600) : usual.Space.AirChange;
        var space = usual.Space with { Volume = volume, AirChange = changes };
        return situation with { Air = space, RoomAir = usual == AirSpaces.Room ? null : AirSpaces.Room.Space };
    }

    private static double? Within(string? typed, string what, double least, double most)
    {
        if (Numbers.Plain(typed, what) is not { } value)
            return null;
        return (double)value >= least && (double)value <= most
            ? (double)value
            : throw RefusedException.Words($"{value} is not {what} that a place has; write {least} to {most}");
    }
}
