using System.Buffers;
using System.Globalization;
using System.Text.Json;
using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Backups;

/// <summary>When a book is backed up, where to, and how many backups are kept; stands in the book's own folder.</summary>
/// <param name="To">A folder outside the book.</param>
/// <param name="EveryDays">Days from one backup to the next, at least 1.</param>
/// <param name="Keep">How many are kept, at least 1; the oldest go first, and only after a new one was made and checked.</param>
/// <param name="Encrypted">True if each is made under a passphrase, which is never kept.</param>
public sealed record BackupSchedule(string To, int EveryDays, int Keep, bool Encrypted = false)
{
    private const string Ending = ".stockbackup";
    private const string Stamp = "yyyyMMdd-HHmmss";

    // Ten years; a figure beyond is a slip, and no calendar reaches as far.
    private const int MostDays = 3_650;
    private const int MostKept = 10_000;
    private const int IdentityDigits = 8;

    /// <summary>The schedule of a book; null if none is set.</summary>
    /// <exception cref="BookUnavailableException">The settings cannot be read.</exception>
    public static BackupSchedule? Of(string folder)
    {
        var files = StockBookFolder.Find(LocalDisk.Instance, folder);
        if (!File.Exists(files.Settings))
            return null;
        try
        {
            using var document = JsonDocument.Parse(File.ReadAllBytes(files.Settings));
            var backup = document.RootElement.GetProperty("backup");
            return new BackupSchedule(backup.GetProperty("to").GetString() ?? "", backup.GetProperty("every_days").GetInt32(), backup.GetProperty("keep").GetInt32(), backup.TryGetProperty("encrypted", out var e) && e.GetBoolean()).Checked(files.Folder);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw new BookUnavailableException(BookFault.Damaged, $"the settings '{files.Settings}' cannot be read: {DiskFaults.OneLine(e.Message)}; set the backup's schedule anew", e);
        }
    }

    /// <summary>Sets the schedule of a book.</summary>
    /// <exception cref="BookUnavailableException">There is no book, the numbers cannot be, or the disk refuses.</exception>
    public void Set(string folder)
    {
        var files = StockBookFolder.Find(LocalDisk.Instance, folder);
        Checked(files.Folder);
        StockBookFolder.Guarded($"the schedule of '{folder}' was not set", () =>
        {
            var unfinished = files.Settings + ".new";
            Unfinished.Write(LocalDisk.Instance, unfinished, Encode());
            LocalDisk.Instance.Replace(unfinished, files.Settings);
            LocalDisk.Instance.SyncFolder(files.Folder);
            return true;
        });
    }

    /// <summary>Takes the schedule of a book away; backups already made stay.</summary>
    /// <returns>False if none was set.</returns>
    /// <exception cref="BookUnavailableException">There is no book, or the disk refuses.</exception>
    public static bool TakeAway(string folder)
    {
        var files = StockBookFolder.Find(LocalDisk.Instance, folder);
        return StockBookFolder.Guarded($"the schedule of '{folder}' was not taken away", () =>
        {
            if (!File.Exists(files.Settings))
                return false;
            LocalDisk.Instance.Delete(files.Settings);
            LocalDisk.Instance.SyncFolder(files.Folder);
            return true;
        });
    }

    /// <summary>Makes a backup if the last of this book is older than the schedule allows, and takes the oldest away.</summary>
    /// <returns>The file made, or null if none was due, and the files taken away.</returns>
    /// <exception cref="BookUnavailableException">The backup could not be made; none was taken away.</exception>
    public (string? Made, IReadOnlyList<string> TakenAway) RunIfDue(string folder, string? passphrase = null, TimeProvider? clock = null)
    {
        clock ??= TimeProvider.System;
        var now = clock.GetLocalNow().DateTime;
        var name = NameFor(folder);
        var there = Generations(name);
        // One from the future was made while the clock was wrong and says nothing of today.
        if (there.Exists(g => g.Made <= now && now < g.Made.AddDays(EveryDays)))
            return (null, []);
        if (Encrypted && passphrase is null)
            throw new BookUnavailableException(BookFault.Passphrase, $"nothing was backed up to '{To}': this book's backups are encrypted, and no passphrase was given");
        StockBookFolder.Guarded($"nothing was backed up to '{To}'", () =>
        {
            LocalDisk.Instance.MakeFolder(To);
            return true;
        });
        var file = Path.Combine(To, $"{name}-{now.ToString(Stamp, CultureInfo.InvariantCulture)}{Ending}");
        BookBackup.Make(folder, file, passphrase, clock);
        var surplus = Generations(name).Where(g => g.File != file).Skip(Keep - 1).Select(g => g.File).ToList();
        StockBookFolder.Guarded($"'{file}' was made, but the oldest could not be taken away", () =>
        {
            surplus.ForEach(LocalDisk.Instance.Delete);
            return true;
        });
        return (file, surplus);
    }

    // Two books may be called the same, and neither's backups are the other's to count or to take away.
    private static string NameFor(string folder)
    {
        var files = StockBookFolder.Find(LocalDisk.Instance, folder);
        var identity = StockBookFolder.Guarded($"the book '{folder}' cannot be backed up", () => BookIdentity.Read(LocalDisk.Instance, files));
        return $"{Path.GetFileNameWithoutExtension(files.Folder)}-{identity.Book[..IdentityDigits]}";
    }

    // Newest first; only files named by this schedule for this book, whatever else lies there.
    private List<(DateTime Made, string File)> Generations(string name)
    {
        var generations = new List<(DateTime, string)>();
        if (!Directory.Exists(To))
            return generations;
        foreach (var file in Directory.EnumerateFiles(To, $"{name}-*{Ending}"))
        {
            var stamp = Path.GetFileName(file)[(name.Length + 1)..^Ending.Length];
            if (DateTime.TryParseExact(stamp, Stamp, CultureInfo.InvariantCulture, DateTimeStyles.None, out var made))
                generations.Add((made, file));
        }

        return [.. generations.OrderByDescending(g => g.Item1)];
    }

    private BackupSchedule Checked(string book)
    {
        if (EveryDays is < 1 or > MostDays || Keep is < 1 or > MostKept)
            throw new BookUnavailableException(BookFault.NotABook, $"a schedule of every {EveryDays} days keeping {Keep} cannot be; it is every 1 to {MostDays} days, keeping 1 to {MostKept}");
        var to = FullPath.Of(To);
        if (File.Exists(to))
            throw new BookUnavailableException(BookFault.NotABook, $"'{To}' is a file; backups need a folder");
        var inside = to + Path.DirectorySeparatorChar;
        return inside.StartsWith(book + Path.DirectorySeparatorChar, StringComparison.Ordinal)
            ? throw new BookUnavailableException(BookFault.NotABook, $"'{To}' lies in the book itself; a backup belongs elsewhere, best on another disk")
            : this with { To = to };
    }

    private byte[] Encode()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var w = new Utf8JsonWriter(buffer))
        {
            w.WriteStartObject();
            w.WriteStartObject("backup");
            w.WriteString("to", Path.GetFullPath(To));
            w.WriteNumber("every_days", EveryDays);
            w.WriteNumber("keep", Keep);
            w.WriteBoolean("encrypted", Encrypted);
            w.WriteEndObject();
            w.WriteEndObject();
        }

        return [.. buffer.WrittenSpan, (byte)'\n'];
    }
}
