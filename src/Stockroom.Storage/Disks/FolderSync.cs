using System.Runtime.InteropServices;

namespace Stockroom.Storage.Disks;

/// <summary>
/// fsync on a folder (POSIX.1-2017, fsync), without which a file's name can be lost in a power cut although its content is
/// safe. Windows makes names durable with the file and has no such call.
/// </summary>
internal static partial class FolderSync
{
    private const int ReadOnly = 0;
    private const int NotSupported = 22;

    public static void Sync(string folder)
    {
        if (OperatingSystem.IsWindows())
            return;
        var descriptor = Open(folder, ReadOnly);
        if (descriptor < 0)
            throw new IOException($"the folder '{folder}' cannot be opened to be synced", Marshal.GetLastPInvokeError());
        var failed = FSync(descriptor) != 0;
        var error = Marshal.GetLastPInvokeError();
        _ = Close(descriptor);
        if (failed && error != NotSupported)
            throw new IOException($"the folder '{folder}' cannot be synced", error);
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int FSync(int descriptor);

    [LibraryImport("libc", EntryPoint = "close", SetLastError = true)]
    private static partial int Close(int descriptor);
}
