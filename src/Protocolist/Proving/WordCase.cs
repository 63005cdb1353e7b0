using System.Collections.Immutable;
using Protocolist.Formulas;
using Protocolist.Protocols;

namespace Protocolist.Proving;

/// <summary>Something besides a size that a protocol tells apart: a choice or a trait, with its words.</summary>
internal sealed record WordAxis(string Name, ImmutableArray<string> Words);

/// <summary>One combination of what is not a size: an option of each choice, a word of each trait that the protocol asks for.</summary>
internal sealed class WordCase
{
    /// <summary>More combinations than this are not told apart; each word is then tried with the first of the others.</summary>
    private const int Most = 512;

    private static readonly string[] Traits = ["specimen.condition", "specimen.life-stage", "specimen.intended-use"];

    private readonly ImmutableArray<WordAxis> _axes;
    private readonly ImmutableArray<int> _picks;

    private WordCase(ImmutableArray<WordAxis> axes, ImmutableArray<int> picks, int number) => (_axes, _picks, Number) = (axes, picks, number);

    /// <summary>Which of its protocol's combinations it is.</summary>
    public int Number { get; }

    /// <summary>What it tells apart and the word of each, by name.</summary>
    public IEnumerable<(string Name, string Word)> Words =>
        _axes.Zip(_picks, (axis, pick) => (axis.Name, axis.Words[pick])).OrderBy(w => w.Name, StringComparer.Ordinal);

    /// <summary>The word for a name; null where it is not told apart.</summary>
    public string? Find(string name) => AxisOf(name) is var axis and >= 0 ? _axes[axis].Words[_picks[axis]] : null;

    /// <summary>The same with another word for a name.</summary>
    public WordCase With(string name, string word) => AxisOf(name) is var axis ? new(_axes, _picks.SetItem(axis, _axes[axis].Words.IndexOf(word)), -1) : this;

    /// <summary>Which of the names are told apart, by their places.</summary>
    public ImmutableArray<int> AxesOf(IReadOnlySet<string> names) =>
        names.Count == 0 ? [] : [.. Enumerable.Range(0, _axes.Length).Where(a => names.Contains(_axes[a].Name))];

    /// <summary>What it says of the names at these places: a sign for each, the same for the same word.</summary>
    public string At(ImmutableArray<int> axes) => string.Create(axes.Length, (axes, _picks), static (signs, at) =>
    {
        for (var i = 0; i < signs.Length; i++) signs[i] = (char)at._picks[at.axes[i]];
    });

    /// <summary>All combinations that a protocol tells apart.</summary>
    public static ImmutableArray<WordCase> Of(Protocol protocol)
    {
        var named = new HashSet<(string, string)>();
        foreach (var expression in Expressions(protocol)) AddNamed(expression, named);
        ImmutableArray<WordAxis> axes =
        [
            .. protocol.Choices.Select(c => new WordAxis("choice." + c.Name, c.Options)),
            .. Traits.Select(t => new WordAxis(t, Told(protocol, t, named))).Where(t => t.Words.Length > 1),
        ];
        var first = ImmutableArray.Create(new int[axes.Length]);
        var count = axes.Aggregate(1L, (n, a) => Math.Min(Most + 1, n * a.Words.Length));
        if (count > Most)
            return [.. axes.SelectMany((axis, a) => axis.Words.Select((_, w) => first.SetItem(a, w))).Select((picks, i) => new WordCase(axes, picks, i))];
        var all = new WordCase[count];
        for (var i = 0; i < all.Length; i++)
        {
            var (picks, rest) = (new int[axes.Length], i);
            for (var axis = axes.Length - 1; axis >= 0; axis--) (rest, picks[axis]) = Math.DivRem(rest, axes[axis].Words.Length);
            all[i] = new(axes, ImmutableArray.Create(picks), i);
        }

        return [.. all];
    }

    private int AxisOf(string name)
    {
        for (var axis = 0; axis < _axes.Length; axis++)
        {
            if (string.Equals(_axes[axis].Name, name, StringComparison.Ordinal)) return axis;
        }

        return -1;
    }

    /// <summary>The words of a trait that some formula names, and one that stands for all the others; of those that the class lets in.</summary>
    private static ImmutableArray<string> Told(Protocol protocol, string trait, HashSet<(string Name, string Word)> named)
    {
        var admitted = protocol.Class.Words.GetValueOrDefault(trait["specimen.".Length..], protocol.Scope.Names[trait].Words);
        bool IsNamed(string word) => named.Contains((trait, word));
        var other = admitted.FirstOrDefault(w => !IsNamed(w) && w == SpecimenScope.Unknown) ?? admitted.FirstOrDefault(w => !IsNamed(w));
        return [.. admitted.Where(IsNamed), .. other is null ? (string[])[] : [other]];
    }

    private static IEnumerable<Expression> Expressions(Protocol protocol) =>
        protocol.Values.Select(v => v.Expression).Concat(protocol.Stages.SelectMany(s => s.Settings).SelectMany(s => s.Expressions()));

    /// <summary>Each word that a formula names, with the name it compares it to.</summary>
    private static void AddNamed(Expression expression, HashSet<(string Name, string Word)> named)
    {
        switch (expression)
        {
            case FormulaExpression formula:
                AddNamed(formula.Formula, named);
                break;
            case BandExpression bands:
                AddNamed(bands.By, named);
                foreach (var band in bands.Bands) AddNamed(band.Formula, named);
                break;
            case CaseExpression cases:
                foreach (var (word, value) in cases.Cases)
                {
                    if (cases.By.Root is NameNode by) named.Add((by.Name, word));
                    AddNamed(value, named);
                }

                break;
        }
    }

    private static void AddNamed(Formula formula, HashSet<(string Name, string Word)> named)
    {
        foreach (var node in formula.Nodes)
        {
            if (node is PairNode { Left: NameNode name, Right: WordNode word }) named.Add((name.Name, word.Word));
        }
    }
}
