namespace Stockroom.Book.Encoding;

/// <summary>Values that a correction puts in the place of an entry's own, by the path of the member ("lot.supplier").</summary>
internal sealed class Amendments
{
    private readonly Dictionary<string, string?> _values = new(StringComparer.Ordinal);
    private readonly HashSet<string> _used = new(StringComparer.Ordinal);

    /// <summary>Paths of all members that were asked for while reading.</summary>
    public List<string> Known { get; } = [];

    public IEnumerable<string> Unused => _values.Keys.Where(k => !_used.Contains(k));

    public void Set(string path, string? value) => _values[path] = value;

    public bool Touches(string prefix) =>
        _values.Any(v => v.Value is not null && v.Key.StartsWith(prefix, StringComparison.Ordinal));

    public bool TryTake(string path, out string? value)
    {
        Known.Add(path);
        if (!_values.TryGetValue(path, out value))
            return false;
        _used.Add(path);
        return true;
    }
}
