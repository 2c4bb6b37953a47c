using System.Text;

namespace Stockroom.Tests.Imports;

/// <summary>
/// Reads an iCalendar by the letter of RFC 5545, independently of what wrote it: lines end in CRLF and have at most 75
/// octets (3.1); a line that begins with a blank goes on; \\, \; \, and \n are escapes in text (3.3.11).
/// </summary>
internal static class CalendarLines
{
    /// <summary>The properties of each event, by name without parameters.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Events(byte[] file)
    {
        var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file);
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        var lines = text[..^2].Split("\r\n");
        Assert.All(lines, l =>
        {
            Assert.InRange(Encoding.UTF8.GetByteCount(l), 1, 75);
            Assert.DoesNotContain(l, char.IsControl);
        });
        var events = new List<IReadOnlyDictionary<string, string>>();
        var (unfolded, open) = (Unfold(lines), new Stack<string>());
        foreach (var line in unfolded)
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            Assert.True(colon > 0, line);
            var (name, value) = (line[..colon].Split(';')[0], line[(colon + 1)..]);
            Assert.Matches("^[A-Z-]+$", name);
            if (name == "BEGIN")
            {
                open.Push(value);
                if (value == "VEVENT")
                    events.Add(new Dictionary<string, string>(StringComparer.Ordinal));
            }
            else if (name == "END")
            {
                Assert.Equal(open.Pop(), value);
            }
            else if (open.Peek() == "VEVENT")
            {
                Assert.True(((Dictionary<string, string>)events[^1]).TryAdd(name, Text(value)), line);
            }
        }

        Assert.Empty(open);
        Assert.Equal(["BEGIN:VCALENDAR", "END:VCALENDAR"], [unfolded[0], unfolded[^1]]);
        return events;
    }

    private static List<string> Unfold(string[] lines)
    {
        var unfolded = new List<string>();
        foreach (var line in lines)
        {
            if (line[0] == ' ')
                unfolded[^1] += line[1..];
            else
                unfolded.Add(line);
        }

        return unfolded;
    }

    private static string Text(string value)
    {
        var text = new StringBuilder();
        for (var i = 0; i < value.Length; i++)
        {
            if (value[i] != '\\')
            {
                Assert.False(value[i] is ',' or ';', $"not escaped: {value}");
                text.Append(value[i]);
                continue;
            }

            i++;
            text.Append(value[i] switch { 'n' or 'N' => '\n', '\\' or ';' or ',' => value[i], _ => throw new FormatException($"no escape: {value}") });
        }

        return text.ToString();
    }
}
