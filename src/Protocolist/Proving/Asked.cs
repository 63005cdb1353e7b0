using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Proving;

/// <summary>One value or setting with what there is to ask of it, and of which words and stretches it was asked already.</summary>
internal sealed class Asked
{
    private readonly ImmutableArray<string> _words;
    private readonly bool _dependsOnSize;
    private readonly HashSet<(string, ClassPart?)> _of = [];

    public Asked(Subject subject, StageDefinition? stage, string key, Message what, Expression expression)
    {
        (What, Expression) = (what, expression);
        Matter = stage is null ? subject.Rests(expression) : subject.Rests(stage, expression);

        // A ratio is judged together with the changes of fluid.
        if (key == "ratio" && stage?.Expression("changes") is { } changes) Matter = Subject.Both(Matter, subject.Rests(changes));
        Questions = [.. Proving.Questions.For(expression, key, stage, subject)];
        DependsOnBench = Matter.Contains("bench.temperature") || Matter.Contains("bench.cold");
        _words = [.. Matter.Where(subject.Words[0].Words.ContainsKey).Order(StringComparer.Ordinal)];
        _dependsOnSize = Matter.Any(n => n.StartsWith("specimen.", StringComparison.Ordinal) && !_words.Contains(n)) || Questions.Any(q => q.WitnessesOnly);
    }

    /// <summary>As a finding calls it.</summary>
    public Message What { get; }

    public Expression Expression { get; }

    public ImmutableArray<Question> Questions { get; }

    /// <summary>The given names that it rests on.</summary>
    public IReadOnlySet<string> Matter { get; }

    public bool DependsOnBench { get; }

    /// <summary>Whether nothing that it rests on was asked before.</summary>
    public bool IsNew(ClassPart part, WordCase words)
    {
        if (!_dependsOnSize && _words.IsEmpty && _of.Count > 0) return false;
        var said = _words.Length switch { 0 => "", 1 => words.Words[_words[0]], _ => string.Join('|', _words.Select(w => words.Words[w])) };
        return _of.Add((said, _dependsOnSize ? part : null));
    }
}
