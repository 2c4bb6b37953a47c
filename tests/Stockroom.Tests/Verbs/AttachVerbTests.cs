using System.Text;

namespace Stockroom.Tests.Verbs;

/// <summary>Files kept with a container, from the command line and out again.</summary>
public sealed class AttachVerbTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithSmallBook();
    private readonly string _id;
    private readonly string _sheet;

    public AttachVerbTests()
    {
        _id = _keeper.Add("acetone", "--place", "left-shelf");
        _sheet = Path.Combine(_keeper.Folder, "sheet.pdf");
        File.WriteAllText(_sheet, "%PDF-1.7 a certificate");
    }

    public void Dispose() => _keeper.Dispose();

    [Fact]
    public void Attach_AFile_IsShownAndComesOutTheSame()
    {
        var entry = _keeper.Run("attach", _id, _sheet, "--note", "certificate of 2024", "--json").Done().Json.GetProperty("entry").GetInt64();
        var kept = Assert.Single(_keeper.Run("show", _id, "--json").Done().Json.GetProperty("attachments").EnumerateArray());
        Assert.Equal(
            (1, "sheet.pdf", "application/pdf", 22, "certificate of 2024", entry),
            (kept.GetProperty("number").GetInt32(), kept.GetProperty("name").GetString(), kept.GetProperty("media_type").GetString(), kept.GetProperty("bytes").GetInt32(), kept.GetProperty("note").GetString(), kept.GetProperty("entry").GetInt64()));
        Assert.Contains("1: sheet.pdf (application/pdf, 22 bytes), 2026-06-15, certificate of 2024", _keeper.Run("show", _id).Done().Out, StringComparison.Ordinal);
        Assert.Contains("attached: sheet.pdf", _keeper.Run("ledger", _id).Done().Out, StringComparison.Ordinal);
        var back = Path.Combine(_keeper.Folder, "back.pdf");
        _keeper.Run("show", _id, "--attachment", "1", "--out", back).Done();
        Assert.Equal(File.ReadAllBytes(_sheet), File.ReadAllBytes(back));
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(back));
    }

    // A pipe does not say how long it is.
    [Fact]
    public async Task AttachOrImport_FromAPipe_IsTakenAndOneThatNeverEndsIsRefused()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "pipes have no name in a folder there");
        async Task<Answer> Through(string name, string text, params string[] verb)
        {
            var pipe = Path.Combine(_keeper.Folder, name);
            using (var made = System.Diagnostics.Process.Start("mkfifo", [pipe]))
                await made.WaitForExitAsync(TestContext.Current.CancellationToken);
            var writing = Task.Run(() => File.WriteAllText(pipe, text), TestContext.Current.CancellationToken);
            var answer = await Task.Run(() => _keeper.Run([.. verb, pipe]), TestContext.Current.CancellationToken);
            await writing;
            return answer;
        }

        Assert.Contains("11 bytes", (await Through("note.txt", "it was full", "attach", _id)).Done().Out, StringComparison.Ordinal);
        Assert.Contains("1 rows booked", (await Through("list.csv", "content,amount,place\nacetone,20 mL,left-shelf\n", "import")).Done().Out, StringComparison.Ordinal);
        Assert.Contains("not JSON", (await Through("book.json", "{", "import")).Refused(3), StringComparison.Ordinal);
        File.CreateSymbolicLink(Path.Combine(_keeper.Folder, "endless.csv"), "/dev/zero");
        Assert.Contains("has more than", Unchanged(3, "import", Path.Combine(_keeper.Folder, "endless.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_AttachmentAltered_ExitsThreeAndNamesIt()
    {
        _keeper.Run("attach", _id, _sheet).Done();
        File.AppendAllText(Assert.Single(Directory.GetFiles(Path.Combine(_keeper.Book, "attachments"))), "x");
        var answer = _keeper.Run("verify", "--json");
        Assert.Equal(3, answer.Code);
        Assert.Contains("'sheet.pdf'", Assert.Single(answer.Json.GetProperty("findings").EnumerateArray()).GetString(), StringComparison.Ordinal);
        Assert.Contains("was altered", _keeper.Run("show", _id, "--attachment", "1", "--out", Path.Combine(_keeper.Folder, "x")).Refused(3), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, "is empty")]
    [InlineData(20_000_001, "at most 20000000 (20 MB)")]
    public void Attach_NothingOrTooLarge_IsRefused(int length, string says)
    {
        var file = Path.Combine(_keeper.Folder, "x.bin");
        using (var stream = File.Create(file))
            stream.SetLength(length);
        Assert.Contains(says, Unchanged(3, "attach", _id, file), StringComparison.Ordinal);
    }

    [Fact]
    public void Attach_WhatIsNotThere_IsRefused()
    {
        Assert.Contains("is a folder", Unchanged(3, "attach", _id, _keeper.Folder), StringComparison.Ordinal);
        Unchanged(3, "attach", _id, Path.Combine(_keeper.Folder, "none.jpg"));
        Assert.Contains("there is no container", Unchanged(2, "attach", "MM451", _sheet), StringComparison.Ordinal);
        Assert.Contains("has no attachment 1; it has none", _keeper.Run("show", _id, "--attachment", "1", "--out", "x").Refused(2), StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_OfAnAttaching_TakesItOffAndTheBookHolds()
    {
        _keeper.Run("attach", _id, _sheet).Done();
        _keeper.Run("undo").Done();
        Assert.Empty(_keeper.Run("show", _id, "--json").Done().Json.GetProperty("attachments").EnumerateArray());
        _keeper.Run("verify").Done();
        _keeper.Run("attach", _id, _sheet).Done();
        Assert.Single(_keeper.Run("show", _id, "--json").Done().Json.GetProperty("attachments").EnumerateArray());
    }

    private string Unchanged(int code, params string[] words)
    {
        var before = _keeper.BookBytes();
        var line = _keeper.Run(words).Refused(code);
        Assert.Equal(before, _keeper.BookBytes());
        return line;
    }
}
