using System.Collections.Immutable;

namespace Protocolist.Proving;

/// <summary>What of a case something depends on: cases that do not differ in that are alike to it.</summary>
internal sealed class Dependence
{
    private readonly ImmutableArray<int> _first;
    private readonly bool _onSize;

    /// <param name="subject">The protocol and its class.</param>
    /// <param name="names">The given names that it rests on.</param>
    /// <param name="onSize">Whether it depends on the size besides.</param>
    public Dependence(Subject subject, IReadOnlySet<string> names, bool onSize = false)
    {
        var words = subject.Words[0];
        var axes = words.AxesOf(names);
        var firsts = new Dictionary<string, int>(StringComparer.Ordinal);
        _first = [.. subject.Words.Select(w => firsts.TryAdd(w.At(axes), w.Number) ? w.Number : firsts[w.At(axes)])];
        _onSize = onSize || names.Any(n => n.StartsWith("specimen.", StringComparison.Ordinal) && words.Find(n) is null);
    }

    /// <summary>The first combination of words that is alike to this, and the stretch where the size matters: the same for all cases that are alike.</summary>
    public (int Words, int? Part) Key(ClassPart part, WordCase words) => (_first[words.Number], _onSize ? part.Number : null);
}
