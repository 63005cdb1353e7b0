using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens.Groups;

namespace Protocolist.Specimens;

/// <summary>The tree of taxon groups, and the way from a scientific name to a group.</summary>
public static class TaxonGroups
{
    private static readonly ImmutableArray<TaxonGroup> Tree = Build(
    [
        .. RootGroups.Rows, .. MammalGroups.Rows, .. BirdGroups.Rows, .. ReptileGroups.Rows, .. AmphibianGroups.Rows,
        .. FishGroups.Rows, .. ArthropodGroups.Rows, .. MolluscGroups.Rows, .. WormGroups.Rows,
        .. JellyAndColonyGroups.Rows, .. EchinodermGroups.Rows,
    ]);

    private static readonly FrozenDictionary<string, TaxonGroup> ById =
        Tree.ToFrozenDictionary(g => g.Id, StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, TaxonGroup> ByTaxon =
        Tree.SelectMany(g => g.Taxa.Select(t => (Taxon: t, Group: g)))
            .ToFrozenDictionary(p => p.Taxon, p => p.Group, StringComparer.OrdinalIgnoreCase);

    private static readonly Phrase UnknownGroup = new("unknown-group.specimen", "'{group}' is no taxon group known here");
    private static readonly Phrase Against = new(
        "group-against-taxon", "group '{group}' and higher taxon '{taxon}', which means '{meant}', cannot both be right");
    private static readonly Phrase AgainstRemedy = new("group-against-taxon.remedy", "correct one of them");
    private static readonly Phrase TwoMeant = new("group-against-taxon.two-taxa", "the higher taxa '{taxa}' mean both '{one}' and '{other}'");
    private static readonly Phrase TwoMeantRemedy = new("group-against-taxon.remedy-two-taxa", "leave only names that one animal can bear");
    private static readonly Phrase UnknownTaxon = new("unknown-higher-taxon", "no taxon group is known for '{taxa}'");
    private static readonly Phrase UnknownTaxonRemedy = new("unknown-higher-taxon.remedy", "give the group: itself, or a higher rank such as the class");
    private static readonly Phrase Missing = new("missing-group", "neither a taxon group nor a higher taxon is given");
    private static readonly Phrase MissingRemedy =
        new("missing-group.remedy", "give group: with one of the ids that 'protocolist list groups' prints");

    /// <summary>All groups; a parent stands before its children.</summary>
    public static ImmutableArray<TaxonGroup> All => Tree;

    /// <summary>The group of all animals, on top of the tree.</summary>
    public static TaxonGroup Animal => Tree[0];

    /// <summary>The group with this id.</summary>
    /// <param name="id">A kebab-case id such as <c>bat</c>.</param>
    /// <returns>The group, or null where there is none of that id.</returns>
    public static TaxonGroup? Find(string id) => ById.GetValueOrDefault(id);

    /// <summary>The group that a higher taxon means, such as <c>Chiroptera</c> for <c>bat</c>.</summary>
    /// <param name="taxon">One scientific name of a phylum, class, order, family...; upper and lower case do not matter, spelling does.</param>
    /// <returns>The group, or null: nothing is guessed.</returns>
    public static TaxonGroup? FindByTaxon(string taxon) => ByTaxon.GetValueOrDefault(taxon.Trim());

    /// <summary>The group that a specimen belongs to, from the group it names, its higher taxon, or both.</summary>
    /// <param name="group">The group's id as given; null or empty where none is.</param>
    /// <param name="higherTaxon">One higher taxon, or several parted by <c>;</c> <c>,</c> <c>&gt;</c> or <c>|</c>; null or empty where none is.</param>
    /// <returns>
    /// The most specific group on which both agree. Findings: <c>missing-group</c>, <c>unknown-group</c>,
    /// <c>unknown-higher-taxon</c>, <c>group-against-taxon</c> (all errors, save an unknown taxon beside a known group).
    /// </returns>
    public static Checked<TaxonGroup> Resolve(string? group, string? higherTaxon)
    {
        var findings = new List<Finding>();
        return new(Resolve(group, higherTaxon, findings), [.. findings]);
    }

    internal static TaxonGroup? Resolve(string? group, string? higherTaxon, List<Finding> findings)
    {
        var before = findings.Count;
        var named = string.IsNullOrWhiteSpace(group) ? null : Find(group.Trim());
        if (named is null && !string.IsNullOrWhiteSpace(group))
            findings.Add(Finding.Error("unknown-group", UnknownGroup.With(("group", Excerpt.Of(group))), Suggestion.For(group.Trim(), ById.Keys)));
        var meant = string.IsNullOrWhiteSpace(higherTaxon) ? null : FromTaxa(higherTaxon, named is null ? Severity.Error : Severity.Warning, findings);
        var agreed = named is null ? meant : meant is null || named.IsA(meant.Id) ? named : meant.IsA(named.Id) ? meant : null;
        if (agreed is null && named is not null && meant is not null)
        {
            var message = Against.With(Argument.Id("group", named.Id), ("taxon", higherTaxon ?? ""), Argument.Id("meant", meant.Id));
            findings.Add(Finding.Error("group-against-taxon", message, AgainstRemedy));
        }
        else if (agreed is null && findings.Count == before)
        {
            findings.Add(Finding.Error("missing-group", Missing, MissingRemedy));
        }

        return agreed;
    }

    /// <summary>The most specific of the groups that the names mean, where they lie on one line of the tree.</summary>
    private static TaxonGroup? FromTaxa(string taxa, Severity unknownIs, List<Finding> findings)
    {
        var names = taxa.Split([';', ',', '>', '|'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var meant = names.Select(FindByTaxon).OfType<TaxonGroup>().ToImmutableArray();
        var deepest = meant.MaxBy(g => g.Depth);
        if (deepest is not null && meant.FirstOrDefault(g => !deepest.IsA(g.Id)) is { } other)
        {
            var message = TwoMeant.With(("taxa", taxa), Argument.Id("one", deepest.Id), Argument.Id("other", other.Id));
            findings.Add(Finding.Error("group-against-taxon", message, TwoMeantRemedy));
            return null;
        }

        if (deepest is null && names.Length > 0)
        {
            var near = names.Select(n => Suggestion.Nearest(n, ByTaxon.Keys)).FirstOrDefault(n => n is not null);
            findings.Add(new("unknown-higher-taxon", unknownIs, UnknownTaxon.With(("taxa", taxa)), near is null ? UnknownTaxonRemedy : Suggestion.Of(near)));
        }

        return deepest;
    }

    private static ImmutableArray<TaxonGroup> Build(ImmutableArray<GroupRow> rows)
    {
        var made = new Dictionary<string, TaxonGroup>(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            made.Add(row.Id, new(row, row.Parent is null ? null : made[row.Parent]));
        }

        var all = rows.Select(r => made[r.Id]).ToImmutableArray();
        foreach (var parent in all) parent.Children = [.. all.Where(g => g.Parent == parent)];
        return all;
    }
}
