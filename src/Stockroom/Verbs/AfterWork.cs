using Stockroom.Storage;
using Stockroom.Storage.Backups;

namespace Stockroom.Verbs;

/// <summary>
/// What follows a verb's work and never fails it: what the book still has to say, a backup where the book's own schedule
/// wants one, and the exit code of a damaged book.
/// </summary>
internal static class AfterWork
{
    /// <summary>The exit code after all.</summary>
    public static int Of(int code, Surroundings around)
    {
        around.Seen.Tell(around.Error);
        foreach (var folder in around.Seen.InUse.Distinct(StringComparer.Ordinal))
            BackUp(folder, around);
        return code is ExitCodes.Done or ExitCodes.Attention && around.Seen.IsDamaged ? ExitCodes.Refused : code;
    }

    private static void BackUp(string folder, Surroundings around)
    {
        try
        {
            if (BackupSchedule.Of(folder) is not { } schedule)
                return;
            var (made, takenAway) = schedule.RunIfDue(folder, schedule.Encrypted ? PassphraseOption.Read(null, around) : null, around.Clock);
            if (made is not null)
                around.Error.WriteLine($"stockroom: backed up to '{made}'{(takenAway.Count > 0 ? $"; {takenAway.Count} of the oldest taken away" : "")}");
        }
        catch (Exception e) when (e is BookUnavailableException or IOException or UnauthorizedAccessException)
        {
            around.Error.WriteLine($"stockroom: no backup was made, though one is due: {e.Message.ReplaceLineEndings(" ")}");
        }
    }
}
