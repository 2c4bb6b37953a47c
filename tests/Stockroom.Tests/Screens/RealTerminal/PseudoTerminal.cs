using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace Stockroom.Tests.Screens.RealTerminal;

/// <summary>A terminal of the operating system (Linux) whose other end is in our hands, with the screens running on it.</summary>
internal sealed class PseudoTerminal : IDisposable
{
    private const int ReadWriteNoControlCloseOnExec = 0x2 | 0x100 | 0x80000;
    private const nuint SetWindowSize = 0x5414;

    private readonly StringBuilder _output = new();
    private readonly Thread _reader;
    private readonly int _slave;
    private int _master;

    public PseudoTerminal(params (string Name, string? Value)[] environment)
        : this(hangUpIsIgnored: false, environment)
    {
    }

    public PseudoTerminal(bool hangUpIsIgnored, params (string Name, string? Value)[] environment)
    {
        _master = posix_openpt(ReadWriteNoControlCloseOnExec);
        if (_master < 0 || grantpt(_master) != 0 || unlockpt(_master) != 0) throw new IOException("no pseudo-terminal can be had");
        byte[] name = new byte[128];
        if (ptsname_r(_master, name, (nuint)name.Length) != 0) throw new IOException("the pseudo-terminal has no name");
        Name = Encoding.ASCII.GetString(name).TrimEnd('\0');
        _slave = open(Name, ReadWriteNoControlCloseOnExec); // while nobody has it open, reading the other end fails
        var size = new WindowSize { Rows = 24, Columns = 80 };
        _ = ioctl(_master, SetWindowSize, ref size);
        SettingsBefore = Settings();
        Program = Start(hangUpIsIgnored ? "trap '' HUP; " : "", environment);
        _reader = new Thread(ReadOn) { IsBackground = true };
        _reader.Start();
    }

    public string Name { get; }

    public Process Program { get; }

    /// <summary>The line settings before the program started, as stty prints them.</summary>
    public string SettingsBefore { get; }

    public string Output
    {
        get
        {
            lock (_output) return _output.ToString();
        }
    }

    /// <summary>The line settings now.</summary>
    public string Settings()
    {
        using Process stty = Process.Start(new ProcessStartInfo("stty", ["-g", "-F", Name]) { RedirectStandardOutput = true })!;
        string settings = stty.StandardOutput.ReadToEnd();
        stty.WaitForExit();
        return settings;
    }

    public void WaitFor(string text)
    {
        long start = Stopwatch.GetTimestamp();
        while (!Output.Contains(text, StringComparison.Ordinal))
        {
            if (Stopwatch.GetElapsedTime(start).TotalSeconds > 20) Assert.Fail($"\"{text}\" did not come; what came: {Output}");
            Thread.Sleep(10);
        }
    }

    public void Send(string text)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        Assert.Equal(bytes.Length, write(_master, bytes, (nuint)bytes.Length));
    }

    /// <summary>Takes the terminal away, as when its window is closed.</summary>
    public void Vanish()
    {
        if (_master < 0) return;
        _ = close(_master);
        _master = -1;
    }

    public void Signal(int number) => Assert.Equal(0, kill(Program.Id, number));

    /// <returns>The exit code; fails where the program still runs after so many seconds.</returns>
    public int ExitWithin(int seconds)
    {
        if (!Program.WaitForExit(TimeSpan.FromSeconds(seconds)))
            Assert.Fail($"still running after {seconds} s; it used {Program.TotalProcessorTime.TotalSeconds} s of processor time");
        Thread.Sleep(100);
        return Program.ExitCode;
    }

    public void Dispose()
    {
        if (!Program.HasExited) Program.Kill();
        Program.WaitForExit();
        Vanish();
        _ = close(_slave);
        Program.Dispose();
    }

    private Process Start(string first, (string Name, string? Value)[] environment)
    {
        string self = Path.Combine(AppContext.BaseDirectory, "Stockroom.Tests");
        string run = first + "exec \"$1\" <\"$2\" >\"$2\" 2>\"$2\"";

        // Signals that were ignored where the tests were started (nohup, a background job) would be ignored by the program too.
        string heeding = "if env --default-signal=HUP true 2>/dev/null; then exec env --default-signal=HUP,INT,TERM sh -c \"$0\" \"$@\"; fi; exec sh -c \"$0\" \"$@\"";
        var start = new ProcessStartInfo("setsid", ["sh", "-c", heeding, run, "sh", self, Name]);
        start.Environment[TestProcess.AsScreensVariable] = "1";
        start.Environment["TERM"] = "xterm-256color";
        start.Environment["LC_ALL"] = "C.UTF-8";
        start.Environment.Remove("NO_COLOR");
        start.Environment.Remove("DisableRealDriverIO");
        foreach ((string name, string? value) in environment) start.Environment[name] = value;
        return Process.Start(start)!;
    }

    private void ReadOn()
    {
        byte[] buffer = new byte[65536];
        while (read(_master, buffer, (nuint)buffer.Length) is > 0 and var count)
        {
            lock (_output) _output.Append(Encoding.UTF8.GetString(buffer, 0, (int)count));
        }
    }

    [StructLayout(LayoutKind.Sequential)]
    private struct WindowSize
    {
        public ushort Rows;
        public ushort Columns;
        public ushort Width;
        public ushort Height;
    }

    [DllImport("libc")]
    private static extern int posix_openpt(int flags);

    [DllImport("libc")]
    private static extern int grantpt(int descriptor);

    [DllImport("libc")]
    private static extern int unlockpt(int descriptor);

    [DllImport("libc")]
    private static extern int ptsname_r(int descriptor, byte[] name, nuint length);

    [DllImport("libc")]
    private static extern int ioctl(int descriptor, nuint request, ref WindowSize size);

    [DllImport("libc")]
    private static extern nint read(int descriptor, byte[] buffer, nuint count);

    [DllImport("libc")]
    private static extern nint write(int descriptor, byte[] buffer, nuint count);

    [DllImport("libc")]
    private static extern int open([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc")]
    private static extern int close(int descriptor);

    [DllImport("libc")]
    private static extern int kill(int process, int signal);
}
