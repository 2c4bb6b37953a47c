namespace Stockroom.Storage.Journals;

/// <summary>One line without its end; valid until the next is read.</summary>
internal sealed record Line(ReadOnlyMemory<byte> Text, bool IsEnded, bool IsLast);

/// <summary>Cuts a stream into lines at line feeds only, a block at a time.</summary>
internal sealed class LineReader(Stream stream)
{
    private byte[] _buffer = new byte[1 << 16];
    private int _start;
    private int _end;
    private bool _atEnd;

    /// <summary>The next line; null behind the last.</summary>
    public Line? Next()
    {
        var searched = 0;
        while (true)
        {
            var at = _buffer.AsSpan(_start + searched, _end - _start - searched).IndexOf((byte)'\n');
            if (at >= 0)
            {
                var text = _buffer.AsMemory(_start, searched + at);
                _start += text.Length + 1;
                if (_start == _end)
                    text = text.ToArray();
                return new Line(text, IsEnded: true, IsLast: _start == _end && !Fill());
            }

            searched = _end - _start;
            if (!_atEnd && Fill())
                continue;
            if (searched == 0)
                return null;
            var rest = _buffer.AsMemory(_start, searched);
            _start = _end;
            return new Line(rest, IsEnded: false, IsLast: true);
        }
    }

    // Reads on behind what is there; false at the end of the stream.
    private bool Fill()
    {
        if (_start > 0)
        {
            _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
            (_start, _end) = (0, _end - _start);
        }

        if (_end == _buffer.Length)
            Array.Resize(ref _buffer, _buffer.Length * 2);
        var read = stream.Read(_buffer.AsSpan(_end));
        _end += read;
        _atEnd = read == 0;
        return read > 0;
    }
}
