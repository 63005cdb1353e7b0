using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Specimens.Groups;

namespace Protocolist.Specimens;

/// <summary>
/// The kinds of animals and of substances that are known: the tree of taxon groups with the way from a scientific name to a group, and the catalogue of
/// substances. A shelf is read and a planner plans by one such set; others add theirs to it. Immutable; safe to share between threads.
/// </summary>
public sealed class Kinds
{
    private readonly FrozenDictionary<string, TaxonGroup> _byId;
    private readonly FrozenDictionary<string, TaxonGroup> _byTaxon;

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

    private Kinds(ImmutableArray<TaxonGroup> groups, SubstanceCatalogue substances)
    {
        (Groups, Substances) = (groups, substances);
        _byId = groups.ToFrozenDictionary(g => g.Id, StringComparer.Ordinal);
        Validator = new(this);

        // A group below takes a taxon over from that above it.
        _byTaxon = groups.SelectMany(g => g.Taxa.Select(t => (Taxon: t.Trim(), Group: g)))
            .GroupBy(p => p.Taxon, p => p.Group, StringComparer.OrdinalIgnoreCase)
            .ToFrozenDictionary(p => p.Key, p => p.MaxBy(g => g.Depth)!, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>What the library brings.</summary>
    public static Kinds Bundled { get; } = new(
        Build(
        [
            .. RootGroups.Rows, .. MammalGroups.Rows, .. BirdGroups.Rows, .. ReptileGroups.Rows, .. AmphibianGroups.Rows,
            .. FishGroups.Rows, .. ArthropodGroups.Rows, .. MolluscGroups.Rows, .. WormGroups.Rows,
            .. JellyAndColonyGroups.Rows, .. EchinodermGroups.Rows, .. FinerGroups.Rows,
        ]),
        SubstanceCatalogue.Bundled);

    /// <summary>All taxon groups; a parent stands before its children, the group of all animals first.</summary>
    public ImmutableArray<TaxonGroup> Groups { get; }

    /// <summary>All substances.</summary>
    public SubstanceCatalogue Substances { get; }

    /// <summary>What can be said of a specimen of these kinds.</summary>
    internal SpecimenValidator Validator { get; }

    /// <summary>The same with one taxon group more.</summary>
    /// <param name="group">The group; its parent is one of these.</param>
    /// <returns>Another set.</returns>
    /// <exception cref="ArgumentException">There is a group of its id, one of its higher taxa means a group that it does not belong to, its parent is none of
    /// these, or its numbers, taxa or regions cannot be.</exception>
    public Kinds With(TaxonGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        if (group.Taxa.IsDefault || group.Regions.IsDefaultOrEmpty || group.Taxa.Any(string.IsNullOrWhiteSpace))
            throw new ArgumentException($"'{group.Id}' lacks its taxa or its regions.", nameof(group));

        if (group is not { Shape: not null, WaterFraction: not null, WholeUpToMm: not null, DoseMlPerKg: not null } || group.Regions.Contains(null!)
            || !Enum.IsDefined(group.Length) || !Enum.IsDefined(group.Barrier))
            throw new ArgumentException($"'{group.Id}' lacks its shape, water, dose or a region, or its length or skin is of no list.", nameof(group));
        if (!group.Shape.IsSound || !group.WaterFraction.IsWithin(0, 1) || !group.WholeUpToMm.IsWithin(0, 1000) || !group.DoseMlPerKg.IsWithin(0, 1000)
            || group.TotalPerLength is { } total && !total.IsWithin(0.1, 100))
            throw new ArgumentException($"The shape, the water, the dose or the lengths of '{group.Id}' cannot be.", nameof(group));

        // Bodies lie between floating insects and heavy shells; what is far off is another unit.
        if (group.DensityKgPerM3 is not { Low: >= 200, High: <= 3000 })
            throw new ArgumentException($"A body weighs 200 to 3000 kg/m³, and '{group.Id}' does not.", nameof(group));
        if (group.Parent is not { } parent || Find(parent.Id) != parent) throw new ArgumentException($"The parent of '{group.Id}' is not here.", nameof(group));
        if (Find(group.Id) is not null) throw new ArgumentException($"There is a group '{group.Id}'.", nameof(group));
        foreach (var taxon in group.Taxa)
        {
            if (FindByTaxon(taxon) is { } meant && !group.IsA(meant.Id))
                throw new ArgumentException($"'{taxon}' means '{meant}', which '{group.Id}' does not belong to.", nameof(group));
        }

        return new(Groups.Add(group), Substances);
    }

    /// <summary>The same with these substances.</summary>
    /// <param name="substances">The substances.</param>
    /// <returns>Another set.</returns>
    public Kinds With(SubstanceCatalogue substances)
    {
        ArgumentNullException.ThrowIfNull(substances);
        return new(Groups, substances);
    }

    /// <summary>The group with this id.</summary>
    /// <param name="id">A kebab-case id such as <c>bat</c>.</param>
    /// <returns>The group, or null where there is none of that id.</returns>
    /// <exception cref="ArgumentNullException">There is no id.</exception>
    public TaxonGroup? Find(string id) => _byId.GetValueOrDefault(id);

    /// <summary>The group that a higher taxon means, such as <c>Chiroptera</c> for <c>bat</c>.</summary>
    /// <param name="taxon">One scientific name of a phylum, class, order, family...; upper and lower case do not matter, spelling does.</param>
    /// <returns>The group, or null: nothing is guessed.</returns>
    public TaxonGroup? FindByTaxon(string taxon)
    {
        ArgumentNullException.ThrowIfNull(taxon);
        return _byTaxon.GetValueOrDefault(taxon.Trim());
    }

    /// <summary>The group that a specimen belongs to, from the group it names, its higher taxon, or both.</summary>
    /// <param name="group">The group's id as given; null or empty where none is.</param>
    /// <param name="higherTaxon">One higher taxon, or several parted by <c>;</c> <c>,</c> <c>&gt;</c> or <c>|</c>; null or empty where none is.</param>
    /// <returns>
    /// The most specific group on which both agree. Findings: <c>missing-group</c>, <c>unknown-group</c>,
    /// <c>unknown-higher-taxon</c>, <c>group-against-taxon</c> (all errors, save an unknown taxon beside a known group).
    /// </returns>
    public Checked<TaxonGroup> Resolve(string? group, string? higherTaxon)
    {
        var findings = new List<Finding>();
        return new(Resolve(group, higherTaxon, findings), [.. findings]);
    }

    internal TaxonGroup? Resolve(string? group, string? higherTaxon, List<Finding> findings)
    {
        var before = findings.Count;
        var named = string.IsNullOrWhiteSpace(group) ? null : Find(group.Trim());
        if (named is null && !string.IsNullOrWhiteSpace(group))
            findings.Add(Finding.Error("unknown-group", UnknownGroup.With(("group", Excerpt.Of(group))), Suggestion.For(group.Trim(), _byId.Keys)));
        var meant = string.IsNullOrWhiteSpace(higherTaxon) ? null : FromTaxa(higherTaxon, named, findings);
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
    private TaxonGroup? FromTaxa(string taxa, TaxonGroup? named, List<Finding> findings)
    {
        var names = taxa.Split([';', ',', '>', '|'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var all = names.Select(n => (Name: n, Group: FindByTaxon(n))).Where(n => n.Group is not null).ToImmutableArray();
        var within = all.Select(n => n.Group!).Append(named).SelectMany(g => g?.Within ?? []).ToImmutableArray();
        var meant = all.Where(n => !within.Contains(n.Name, StringComparer.OrdinalIgnoreCase)).Select(n => n.Group!).ToImmutableArray();
        var deepest = meant.MaxBy(g => g.Depth);
        if (deepest is not null && meant.FirstOrDefault(g => !deepest.IsA(g.Id)) is { } other)
        {
            var message = TwoMeant.With(("taxa", taxa), Argument.Id("one", deepest.Id), Argument.Id("other", other.Id));
            findings.Add(Finding.Error("group-against-taxon", message, TwoMeantRemedy));
            return null;
        }

        if (all.IsEmpty && names.Length > 0)
        {
            var near = names.Select(n => Suggestion.Nearest(n, _byTaxon.Keys)).FirstOrDefault(n => n is not null);
            findings.Add(new(
                "unknown-higher-taxon", named is null ? Severity.Error : Severity.Warning, UnknownTaxon.With(("taxa", taxa)),
                near is null ? UnknownTaxonRemedy : Suggestion.Of(near)));
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

        return [.. rows.Select(r => made[r.Id])];
    }
}
