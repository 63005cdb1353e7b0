namespace Protocolist.Reading.Csv;

/// <summary>Characters with line and column, one buffer at a time; every line end (CR LF, LF, CR) comes out as one LF.</summary>
internal sealed class CsvText(TextReader reader)
{
    private readonly char[] buffer = new char[16_384];
    private int at;
    private int length;
    private string again = "";
    private int againAt;
    private bool started;

    public int Line { get; private set; } = 1;

    public int Column { get; private set; } = 1;

    /// <summary>The next character without taking it; -1 at the end.</summary>
    public int Peek()
    {
        if (againAt < again.Length) return again[againAt];
        if (at == length && !Refill()) return -1;
        return buffer[at] == '\r' ? '\n' : buffer[at];
    }

    /// <summary>Takes the next character; -1 at the end.</summary>
    public int Next()
    {
        var c = Peek();
        if (c < 0) return c;
        if (againAt < again.Length) againAt++;
        else if (buffer[at++] == '\r' && (at < length || Refill()) && buffer[at] == '\n') at++;
        (Line, Column) = c == '\n' ? (Line + 1, 1) : (Line, Column + 1);
        return c;
    }

    /// <summary>Puts characters back that were taken, to be read again from their place.</summary>
    public void PutBack(string text, int line, int column)
    {
        again = string.Concat(text, again.AsSpan(againAt));
        againAt = 0;
        (Line, Column) = (line, column);
    }

    /// <summary>The first line so far as the buffer holds it, for guessing the separator.</summary>
    public ReadOnlySpan<char> FirstLine()
    {
        _ = Peek();
        var seen = buffer.AsSpan(at, length - at);
        return seen.IndexOfAny('\r', '\n') is >= 0 and var end ? seen[..end] : seen;
    }

    private bool Refill()
    {
        length = reader.Read(buffer, 0, buffer.Length);
        at = 0;
        if (!started && length > 0)
        {
            started = true;
            if (buffer[0] == '\uFEFF') at = 1;
            if (at == length) return Refill();
        }

        return length > 0;
    }
}
