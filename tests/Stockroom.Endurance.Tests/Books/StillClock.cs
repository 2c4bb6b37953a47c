namespace Stockroom.Endurance.Tests.Books;

/// <summary>A clock that stands still, so that one seed gives one book.</summary>
internal sealed class StillClock : TimeProvider
{
    public static readonly DateTimeOffset Now = new(2026, 5, 20, 14, 30, 0, TimeSpan.FromHours(2));

    public override TimeZoneInfo LocalTimeZone { get; } = TimeZoneInfo.CreateCustomTimeZone("still", Now.Offset, "still", "still");

    public override DateTimeOffset GetUtcNow() => Now.ToUniversalTime();
}
