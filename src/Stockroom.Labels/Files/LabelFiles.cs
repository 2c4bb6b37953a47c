using System.Text.Json;

namespace Stockroom.Labels.Files;

/// <summary>Reads a kind of file from the program and from a folder of the keeper's own on top.</summary>
internal static class LabelFiles
{
    /// <summary>Text and name of each file: the program's first, then the folder's, each in ordinal order.</summary>
    /// <exception cref="LabelException">The folder or a file in it cannot be read.</exception>
    public static IEnumerable<(string Text, string File)> Of(string embedded, string? folder)
    {
        foreach (var file in EmbeddedFile.NamesIn(embedded))
        {
            yield return (EmbeddedFile.Text($"{embedded}.{file}"), file);
        }

        foreach (var path in folder is null ? [] : FilesIn(folder))
        {
            yield return (TextOf(path), path);
        }
    }

    /// <summary>The JSON document of a file.</summary>
    /// <exception cref="LabelException">It is not JSON; the message names the line.</exception>
    public static JsonDocument Json(string text, string file)
    {
        try
        {
            CheckTexts(text);
            return JsonDocument.Parse(text);
        }
        catch (InvalidOperationException e)
        {
            throw new LabelException($"{file}: a text in it holds half a character (such as \\uD800 alone); write it whole", e);
        }
        catch (JsonException e)
        {
            throw new LabelException($"{file}: not JSON, line {(e.LineNumber ?? 0) + 1}: {e.Message.Split(" LineNumber")[0].TrimEnd('.')}", e);
        }
    }

    // Half a character written as an escape is found only when its text is taken.
    private static void CheckTexts(string text)
    {
        var reader = new Utf8JsonReader(System.Text.Encoding.UTF8.GetBytes(text));
        while (reader.Read())
        {
            if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName)
            {
                _ = reader.GetString();
            }
        }
    }

    private static string[] FilesIn(string folder)
    {
        try
        {
            var files = Directory.GetFiles(folder, "*.json");
            Array.Sort(files, StringComparer.Ordinal);
            return files;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new LabelException($"cannot read the files in '{folder}': {e.Message.ReplaceLineEndings(" ")}", e);
        }
    }

    private static string TextOf(string path)
    {
        try
        {
            return File.ReadAllText(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new LabelException($"cannot read '{path}': {e.Message.ReplaceLineEndings(" ")}", e);
        }
    }
}
