using System.Buffers;
using System.Text;
using System.Text.Json;
using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Locks;

/// <summary>Who holds a book: machine, process, and since when.</summary>
internal sealed record LockHolder(string Host, int Process, DateTimeOffset Since)
{
    public static LockHolder Here(TimeProvider clock) => new(Environment.MachineName, Environment.ProcessId, clock.GetLocalNow());

    /// <summary>In words, as far as it can be told.</summary>
    public static string Of(IDisk disk, BookFiles files)
    {
        try
        {
            using var file = disk.Open(files.Holder, Opening.Read);
            using var document = JsonDocument.Parse(file.ReadAll());
            var root = document.RootElement;
            var holder = new LockHolder(root.GetProperty("host").GetString() ?? "?", root.GetProperty("process").GetInt32(), root.GetProperty("since").GetDateTimeOffset());
            return holder.ToString();
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e) || e is JsonException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            return "another program";
        }
    }

    public void Write(IDisk disk, BookFiles files)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var w = new Utf8JsonWriter(buffer))
        {
            w.WriteStartObject();
            w.WriteString("host", Host);
            w.WriteNumber("process", Process);
            w.WriteString("since", Since);
            w.WriteEndObject();
        }

        using var file = disk.Open(files.Holder, Opening.Write);
        file.SetLength(0);
        file.Write([.. buffer.WrittenSpan, .. Encoding.ASCII.GetBytes("\n")]);
    }

    public override string ToString() => $"process {Process} on {Host} since {Since:yyyy-MM-dd HH:mm:ss zzz}";
}
