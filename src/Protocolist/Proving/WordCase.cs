using System.Collections.Immutable;
using Protocolist.Formulas;
using Protocolist.Protocols;

namespace Protocolist.Proving;

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
        var named = Expressions(protocol).SelectMany(Named).ToHashSet();
        axes.AddRange(Traits.Select(t => (t, Told(protocol, t, named))).Where(t => t.Item2.Length > 1));
        var first = axes.ToImmutableSortedDictionary(a => a.Name, a => a.Words[0], StringComparer.Ordinal);
        if (axes.Aggregate(1L, (n, a) => Math.Min(Most + 1, n * a.Words.Length)) > Most)
            return [.. axes.SelectMany(a => a.Words.Select(w => new WordCase(first.SetItem(a.Name, w))))];
        IEnumerable<ImmutableSortedDictionary<string, string>> all = [first];
        foreach (var (name, words) in axes) all = all.SelectMany(c => words.Select(w => c.SetItem(name, w)));
        return [.. all.Select(c => new WordCase(c))];
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
    private static IEnumerable<(string Name, string Word)> Named(Expression expression) => expression switch
    {
        FormulaExpression f => Named(f.Formula.Root),
        BandExpression b => Named(b.By.Root).Concat(b.Bands.SelectMany(x => Named(x.Formula.Root))),
        CaseExpression c => c.Cases.SelectMany(x => Named(x.Value)).Concat(c.By.Root is NameNode name ? c.Cases.Select(x => (name.Name, x.Word)) : []),
        _ => [],
    };

    private static IEnumerable<(string Name, string Word)> Named(FormulaNode node) => node switch
    {
        PairNode { Left: NameNode name, Right: WordNode word } => [(name.Name, word.Word)],
        PairNode or CallNode or NotNode => node.Parts.SelectMany(Named),
        _ => [],
    };
}
