using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Proving;

/// <summary>One value or setting with what there is to ask of it, and of which words and stretches it was asked already.</summary>
internal sealed class Asked
{
    private readonly Func<Message> _what;
    private readonly Dependence _dependence;
    private readonly HashSet<(int, int?)> _of = [];

    public Asked(Subject subject, StageDefinition? stage, string key, Func<Message> what, Expression expression)
    {
        (_what, Expression) = (what, expression);
        Matter = stage is null ? subject.Rests(expression) : subject.Rests(stage, expression);

        // A ratio is judged together with the changes of fluid.
        if (key == "ratio" && stage?.Expression("changes") is { } changes) Matter = Subject.Both(Matter, subject.Rests(changes));
        Questions = [.. Proving.Questions.For(expression, key, stage, subject)];
        DependsOnBench = Matter.Contains("bench.temperature") || Matter.Contains("bench.cold");
        _dependence = new(subject, Matter, onSize: Questions.Any(q => q.WitnessesOnly));
    }

    /// <summary>As a finding calls it.</summary>
    public Message What => _what();

    public Expression Expression { get; }

    public ImmutableArray<Question> Questions { get; }

    /// <summary>The given names that it rests on.</summary>
    public IReadOnlySet<string> Matter { get; }

    public bool DependsOnBench { get; }

    /// <summary>Whether nothing that it rests on was asked before.</summary>
    public bool IsNew(ClassPart part, WordCase words) => _of.Add(_dependence.Key(part, words));
}
