using System.Collections.Immutable;
using Protocolist.Formulas;
using Protocolist.Protocols;

namespace Protocolist.Planning.Proving;

/// <summary>One combination of what is not a size: an option of each choice, a word of each trait that the protocol asks for.</summary>
internal sealed record WordCase(ImmutableSortedDictionary<string, string> Words)
{
    /// <summary>More combinations than this are not told apart; each word is then tried with the first of the others.</summary>
    private const int Most = 512;

    private static readonly string[] Traits = ["specimen.condition", "specimen.life-stage", "specimen.intended-use"];

    /// <summary>The choices alone, by their names.</summary>
    public ImmutableSortedDictionary<string, string> Choices { get; } =
        Words.Where(w => w.Key.StartsWith("choice.", StringComparison.Ordinal)).ToImmutableSortedDictionary(w => w.Key["choice.".Length..], w => w.Value, StringComparer.Ordinal);

    /// <summary>All combinations that a protocol tells apart.</summary>
    public static ImmutableArray<WordCase> Of(Protocol protocol)
    {
        var axes = protocol.Choices.Select(c => (Name: "choice." + c.Name, Words: c.Options)).ToList();
        axes.AddRange(Traits.Select(t => (t, Told(protocol, t))).Where(t => t.Item2.Length > 1));
        var first = axes.ToImmutableSortedDictionary(a => a.Name, a => a.Words[0], StringComparer.Ordinal);
        if (axes.Aggregate(1L, (n, a) => Math.Min(Most + 1, n * a.Words.Length)) > Most)
            return [.. axes.SelectMany(a => a.Words.Select(w => new WordCase(first.SetItem(a.Name, w))))];
        IEnumerable<ImmutableSortedDictionary<string, string>> all = [first];
        foreach (var (name, words) in axes) all = all.SelectMany(c => words.Select(w => c.SetItem(name, w)));
        return [.. all.Select(c => new WordCase(c))];
    }

    /// <summary>The words of a trait that some formula names, and one that stands for all the others; of those that the class lets in.</summary>
    private static ImmutableArray<string> Told(Protocol protocol, string trait)
    {
        var admitted = protocol.Class.Words.GetValueOrDefault(trait["specimen.".Length..], SpecimenScope.Types.First(t => t.Key == trait).Value.Words);
        var named = Expressions(protocol).SelectMany(e => NamedIn(e, trait)).ToHashSet(StringComparer.Ordinal);
        var other = admitted.FirstOrDefault(w => !named.Contains(w) && w == SpecimenScope.Unknown) ?? admitted.FirstOrDefault(w => !named.Contains(w));
        return [.. admitted.Where(named.Contains), .. other is null ? (string[])[] : [other]];
    }

    private static IEnumerable<Expression> Expressions(Protocol protocol) =>
        protocol.Values.Select(v => v.Expression).Concat(protocol.Stages.SelectMany(s => s.Settings.Values).SelectMany(s => s.Expressions()));

    private static IEnumerable<string> NamedIn(Expression expression, string trait) => expression switch
    {
        FormulaExpression f => NamedIn(f.Formula.Root, trait),
        BandExpression b => NamedIn(b.By.Root, trait).Concat(b.Bands.SelectMany(x => NamedIn(x.Formula.Root, trait))),
        CaseExpression c => c.Cases.SelectMany(x => NamedIn(x.Value, trait)).Concat(c.By.Root is NameNode name && name.Name == trait ? c.Cases.Select(x => x.Word) : []),
        _ => [],
    };

    private static IEnumerable<string> NamedIn(FormulaNode node, string trait) =>
        node is PairNode { Left: NameNode name, Right: WordNode word } && name.Name == trait ? [word.Word] : node.Parts.SelectMany(p => NamedIn(p, trait));
}
