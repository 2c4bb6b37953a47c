using System.Security.Cryptography;
using System.Text.Json;
using CsCheck;
using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;
using Stockroom.Book.Tests.Entries;

namespace Stockroom.Book.Tests.Encoding;

public sealed class EntryCodecTests
{
    // Texts that have broken other formats: line ends of every sort, quotes, leading and trailing space, nothing at all,
    // controls, byte order mark, astral and combining characters, bidirectional marks, formulas, markup, escapes.
    public static TheoryData<string> HostileTexts => new(
        "",
        " ",
        "  two spaces each side  ",
        "line\nline\r\nline\rline\u0085line\u2028line\u2029line",
        "\0\u0001\u001b[31m\u007f\t\b",
        "\"quoted\" \\back\\slash\\ \\u0041 </script>",
        "\ufeffmark \u200b\u200e\u202e",
        "e\u0301 \u00e9 \u00c5 \u212b \ufb01",
        "\U0001D518 \U0001F9EA \U0010FFFF",
        "=cmd|' /C calc'!A0",
        "{\"number\":1}",
        "null",
        "1.50");

    [Theory]
    [MemberData(nameof(HostileTexts))]
    public void Encode_EveryKindWithHostileText_ComesBackEqualInOneLine(string text)
    {
        foreach (var entry in EntrySamples.All(text))
            AssertComesBack(entry);
    }

    [Fact]
    public void Encode_EveryKindWithRandomTextsAndNumbers_ComesBackEqual() =>
        Gen.Select(Gen.String.Where(IsWellFormed), Gen.Decimal).Sample(
            (text, number) =>
            {
                foreach (var entry in EntrySamples.All(text, number))
                    AssertComesBack(entry);
            },
            writeLine: TestContext.Current.TestOutputHelper!.WriteLine,
            iter: 300);

    [Fact]
    public void LabelPrinted_AsItWasBookedBeforeItsSayingsWereKept_EncodesToTheSameBytes()
    {
        const string Old = "{\"number\":7,\"transaction\":5,\"kind\":\"label printed\",\"happened_at\":\"2026-05-20T10:00:00+00:00\",\"recorded_at\":\"2026-05-20T10:00:00+00:00\","
            + "\"by\":\"Maren Sole\",\"previous\":\"0000000000000000000000000000000000000000000000000000000000000000\",\"stock\":\"a4-2x4\"}";
        var entry = Assert.IsType<LabelPrinted>(EntryCodec.Decode(Old));

        Assert.Null(entry.Says);
        Assert.Equal(Old, EntryCodec.Encode(entry));
    }

    [Theory]
    [InlineData("1.50", "1.5")]
    [InlineData("100", "100")]
    [InlineData("100.000", "100")]
    [InlineData("0.0", "0")]
    [InlineData("-0.0", "0")]
    [InlineData("-12.340", "-12.34")]
    [InlineData("0.0000000000000000000000000001", "0.0000000000000000000000000001")]
    [InlineData("79228162514264337593543950335", "79228162514264337593543950335")]
    public void Encode_ADecimal_IsItsShortestExactText(string value, string expected)
    {
        var entry = new Weighed { GrossGrams = decimal.Parse(value) };
        Assert.Contains($"\"gross_g\":{expected}}}", EntryCodec.Encode(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void Encode_AKnownEntry_IsThisText()
    {
        var id = ContainerId.AtOrAfter(0);
        var entry = new Weighed
        {
            Number = 7,
            Transaction = 3,
            Container = id,
            HappenedAt = new DateTimeOffset(2026, 5, 20, 14, 30, 0, TimeSpan.FromHours(2)),
            RecordedAt = new DateTimeOffset(2026, 5, 20, 14, 30, 1, 250, TimeSpan.FromHours(2)),
            By = "Zo\u00eb",
            Previous = "ab",
            GrossGrams = 150.250m,
            ReadabilityGrams = 0.01m,
        };
        var expected = $$"""{"number":7,"transaction":3,"kind":"weighed","container":"{{id}}","happened_at":"2026-05-20T14:30:00+02:00","recorded_at":"2026-05-20T14:30:01.25+02:00","by":"Zoë","previous":"ab","gross_g":150.25,"readability_g":0.01}""";
        Assert.Equal(expected, EntryCodec.Encode(entry));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(expected))), EntryCodec.HashOf(entry));
    }

    // Lines as journals have kept them from before an entry could say more: they read, and give the same bytes again.
    [Theory]
    [InlineData("weighed", "\"gross_g\":150.25,\"readability_g\":0.01,\"temperature_c\":21")]
    [InlineData("place made", "\"name\":\"gallery\",\"place_kind\":\"room\",\"mean_c\":20,\"min_c\":15,\"max_c\":27,\"swing_k\":3")]
    [InlineData("place limited", "\"height_m\":1.2,\"position\":3,\"leak_tight\":true,\"max_load_kg\":20,\"max_containers\":12")]
    public void Decode_AnEntryOfAnOlderBook_GivesTheSameBytes(string kind, string members)
    {
        var line = $$"""{"number":7,"transaction":3,"kind":"{{kind}}","happened_at":"2026-05-20T14:30:00+02:00","recorded_at":"2026-05-20T14:30:01+02:00","by":"Una","previous":"ab",{{members}}}""";
        Assert.Equal(line, EntryCodec.Encode(EntryCodec.Decode(line)));
    }

    [Fact]
    public void Encode_AWeighInWithItsConditions_IsThisText()
    {
        var text = EntryCodec.Encode(new Weighed { GrossGrams = 200m, TemperatureCelsius = 21, PressureHectopascals = 1013.2m, CalibrationGrams = 0.02m });
        Assert.EndsWith("\"gross_g\":200,\"temperature_c\":21,\"pressure_hpa\":1013.2,\"calibration_g\":0.02}", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Decode_ATime_KeepsItsOffset()
    {
        foreach (var entry in EntrySamples.All())
            Assert.True(EntryCodec.Decode(EntryCodec.Encode(entry)).HappenedAt.EqualsExact(entry.HappenedAt));
    }

    [Fact]
    public void Encode_HalfASurrogatePair_IsRefusedRatherThanChanged() =>
        Assert.Throws<BookRefusal>(() => EntryCodec.Encode(new Opened { By = "half \ud83e" }));

    [Fact]
    public void Decode_AnyMemberRenamedOrOfAnotherKind_IsRefused()
    {
        foreach (var entry in EntrySamples.All())
        {
            var text = EntryCodec.Encode(entry);
            using var document = JsonDocument.Parse(text);
            foreach (var member in document.RootElement.EnumerateObject())
            {
                var raw = $"\"{member.Name}\":{member.Value.GetRawText()}";
                AssertRefused(text, raw, $"\"{member.Name}_\":{member.Value.GetRawText()}");
                AssertRefused(text, raw, $"\"{member.Name}\":{{\"x\":1}}");
            }
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"number\":1,\"number\":1}")]
    [InlineData("{\"number\":1,\"transaction\":1,\"kind\":\"vanished\"}")]
    public void Decode_WhatIsNotAnEntry_IsRefused(string text) => Assert.ThrowsAny<FormatException>(() => EntryCodec.Decode(text));

    [Theory]
    [InlineData("\"kind\":\"weighed\"", "\"kind\":\"irradiated\"")]
    [InlineData("\"gross_g\":1.5", "\"gross_g\":1.5,\"humidity_percent\":40")]
    public void Decode_AKindOrMemberOfANewerProgram_IsToldApartFromWhatIsNoEntry(string known, string newer)
    {
        var text = EntryCodec.Encode(EntrySamples.All().OfType<Weighed>().Last());
        Assert.Contains(known, text, StringComparison.Ordinal);
        Assert.Throws<NewerEntryException>(() => EntryCodec.Decode(text.Replace(known, newer, StringComparison.Ordinal)));
    }

    private static void AssertRefused(string original, string member, string instead)
    {
        Assert.Contains(member, original, StringComparison.Ordinal);
        var changed = original.Replace(member, instead, StringComparison.Ordinal);
        Assert.NotEmpty(Assert.ThrowsAny<FormatException>(() => EntryCodec.Decode(changed)).Message);
    }

    private static void AssertComesBack(Entry entry)
    {
        var text = EntryCodec.Encode(entry);
        Assert.DoesNotContain('\n', text);
        Assert.DoesNotContain('\r', text);
        Assert.DoesNotContain('\0', text);
        var back = EntryCodec.Decode(text);
        Assert.Equal(text, EntryCodec.Encode(back));
        Assert.Equal(WithoutLists(entry), WithoutLists(back));
        Assert.Equal((entry as Received)?.Parts, (back as Received)?.Parts);
        Assert.Equal((entry as Corrected)?.Changes, (back as Corrected)?.Changes);
        Assert.Equal((entry as LabelPrinted)?.Says, (back as LabelPrinted)?.Says);
    }

    // Records compare lists by reference, so these are compared by themselves.
    private static Entry WithoutLists(Entry entry) => entry switch
    {
        Received r => r with { Parts = null },
        Corrected c => c with { Changes = [] },
        LabelPrinted l => l with { Says = null },
        _ => entry,
    };

    private static bool IsWellFormed(string text) => text == System.Text.Encoding.UTF8.GetString(System.Text.Encoding.UTF8.GetBytes(text));
}
