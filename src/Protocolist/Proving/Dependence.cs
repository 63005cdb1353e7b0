using System.Collections.Immutable;

namespace Protocolist.Proving;

/// <summary>What of a case something depends on: cases that do not differ in that are alike to it.</summary>
internal sealed class Dependence
{
    private readonly ImmutableArray<int> _axes;
    private readonly bool _onSize;

    /// <param name="subject">The protocol and its class.</param>
    /// <param name="names">The given names that it rests on.</param>
    /// <param name="onSize">Whether it depends on the size besides.</param>
    public Dependence(Subject subject, IReadOnlySet<string> names, bool onSize = false)
    {
        var words = subject.Words[0];
        _axes = words.AxesOf(names);
        _onSize = onSize || names.Any(n => n.StartsWith("specimen.", StringComparison.Ordinal) && words.Find(n) is null);
    }

    /// <summary>The same for all cases that are alike to it.</summary>
    public long Key(ClassPart part, WordCase words) => (words.Key(_axes) << 8) | (_onSize ? (long)part.Number + 1 : 0);
}
