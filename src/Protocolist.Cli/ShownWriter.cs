using System.Text;
using Protocolist.Findings;

namespace Protocolist.Cli;

/// <summary>All that the tool says goes through here: what is written as a line is one line, and nothing in it is obeyed by a terminal.</summary>
internal sealed class ShownWriter(TextWriter inner) : TextWriter
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value)
    {
        if (char.IsSurrogate(value)) inner.Write(value);
        else Write(value.ToString());
    }

    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    public override void Write(string? value)
    {
        // The count of a batch runs along on its line.
        if (value is ['\r', ..]) inner.Write('\r' + ShownText.Lines(value[1..]));
        else if (value is not null) inner.Write(ShownText.Lines(value));
    }

    public override void WriteLine() => inner.WriteLine();

    public override void WriteLine(string? value) => inner.WriteLine(ShownText.Line(value ?? ""));

    public override void Flush() => inner.Flush();
}
