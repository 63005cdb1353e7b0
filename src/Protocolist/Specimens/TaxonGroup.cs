using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Specimens;

/// <summary>A kind of animal as far as its preservation goes: what it weighs for its size, how thick it is, what it is made of, where it is cut.</summary>
/// <remarks>What a group does not say itself it has from its parent; here everything is filled in. Immutable; safe to share between threads.</remarks>
public sealed class TaxonGroup
{
    internal TaxonGroup(Groups.GroupRow row, TaxonGroup? parent)
    {
        Id = row.Id;
        Name = new($"group.{row.Id}", row.Name);
        Parent = parent;
        Depth = parent is null ? 0 : parent.Depth + 1;
        Taxa = row.Taxa;
        Within = [.. parent?.Within ?? [], .. row.Within];
        DensityKgPerM3 = row.DensityKgPerM3 ?? parent?.DensityKgPerM3 ?? throw Missing(row, nameof(DensityKgPerM3));
        WaterFraction = row.WaterFraction ?? parent?.WaterFraction ?? throw Missing(row, nameof(WaterFraction));
        Shape = row.Shape ?? parent?.Shape ?? throw Missing(row, nameof(Shape));
        Length = row.Length ?? parent?.Length ?? throw Missing(row, nameof(Length));
        LengthIsTotal = row.LengthIsTotal ?? parent?.LengthIsTotal ?? false;
        TotalPerLength = row.TotalPerLength ?? (row.Length is null ? parent?.TotalPerLength : null);
        OtherLengths = !row.OtherLengths.IsDefault ? row.OtherLengths : row.Length is null ? parent?.OtherLengths ?? [] : [];
        LengthMass = Relations(row, parent);
        Barrier = row.Barrier ?? parent?.Barrier ?? throw Missing(row, nameof(Barrier));
        IsCalcareous = row.IsCalcareous ?? parent?.IsCalcareous ?? false;
        IsSpiculate = row.IsSpiculate ?? parent?.IsSpiculate ?? false;
        IsGelatinous = row.IsGelatinous ?? parent?.IsGelatinous ?? false;
        Regions = row.Regions.IsDefault ? parent?.Regions ?? throw Missing(row, nameof(Regions)) : [.. row.Regions.Select(r => new BodyRegion(r, row.Id))];
        WholeUpToMm = row.WholeUpToMm ?? parent?.WholeUpToMm ?? throw Missing(row, nameof(WholeUpToMm));
        DoseMlPerKg = row.DoseMlPerKg ?? parent?.DoseMlPerKg ?? throw Missing(row, nameof(DoseMlPerKg));
        WallMm = row.WallMm ?? parent?.WallMm ?? throw Missing(row, nameof(WallMm));
        Air = row.Air ?? parent?.Air;
        Kind = row.Kind ?? parent?.Kind ?? BodyKind.Whole;
        SpareSide = row.SpareSide ?? parent?.SpareSide ?? "";
        Cautions =
        [
            .. parent?.Cautions.Where(c => row.IsOwn || c.Of.IsEmpty || c.Of.Any(IsA)) ?? [],
            .. row.Cautions.Select(c => new GroupCaution(c.Id, c.IsLegal, new($"caution.{row.Id}.{c.Id}", c.Text), c.Source) { Of = c.Of }),
        ];
        Handling = HandlingOf(Cautions);
    }

    /// <summary>A group of one's own, which has from its parent all that is not said of it.</summary>
    /// <param name="id">A kebab-case word, such as <c>house-sparrow</c>.</param>
    /// <param name="name">As a person says it.</param>
    /// <param name="parent">The group it belongs to, and takes everything from.</param>
    /// <param name="cautions">What is to be known of it beside what holds of its parent.</param>
    /// <remarks>
    /// <see cref="TotalPerLength"/>, <see cref="OtherLengths"/> and <see cref="LengthMass"/> are in the length and for the shape of the parent: whoever
    /// gives another <see cref="Length"/> or <see cref="Shape"/> gives them too, null or empty where nothing is known.
    /// <see cref="Kinds.With(TaxonGroup)"/> makes it known.
    /// </remarks>
    public TaxonGroup(string id, string name, TaxonGroup parent, params IEnumerable<GroupCaution> cautions)
        : this(RowOf(id, name, parent), parent)
    {
        ArgumentNullException.ThrowIfNull(cautions);
        Cautions = [.. Cautions, .. cautions];
        if (Cautions.Any(c => c?.Text is null || c.Id is null)) throw new ArgumentException("A caution lacks its id or its text.", nameof(cautions));
        Handling = HandlingOf(Cautions);
    }

    /// <summary>A kebab-case word of the trade, such as <c>bony-fish</c>.</summary>
    public string Id { get; }

    /// <summary>As a person says it.</summary>
    public Phrase Name { get; }

    /// <summary>The group this one belongs to; null for <c>animal</c> alone.</summary>
    public TaxonGroup? Parent { get; }

    /// <summary>Scientific names of higher taxa (class, order, family...) that mean this group and no other.</summary>
    public ImmutableArray<string> Taxa { get; init; }

    /// <summary>Higher taxa that it lies in though they mean another group.</summary>
    internal ImmutableArray<string> Within { get; }

    /// <summary>Density of the whole body, kg/m³.</summary>
    public SourcedBand DensityKgPerM3 { get; init; }

    /// <summary>Water in the fresh body, as a share of its mass.</summary>
    public SourcedBand WaterFraction { get; init; }

    /// <summary>Proportions, in the length named by <see cref="Length"/>.</summary>
    public BodyShape Shape { get; init; }

    /// <summary>Which length this group is measured by, and which is meant by "length" of it.</summary>
    public LengthKind Length { get; init; }

    /// <summary>Whether "length" means tip to tip though the group is measured by a width, as rays are.</summary>
    internal bool LengthIsTotal { get; }

    /// <summary>Total length over <see cref="Length"/>; null where they are the same or nothing is known.</summary>
    public SourcedBand? TotalPerLength { get; init; }

    /// <summary>Other lengths that are taken of such animals, over <see cref="Length"/>.</summary>
    public ImmutableArray<(LengthKind Kind, SourcedBand PerLength)> OtherLengths { get; init => field = value.IsDefault ? [] : value; }

    /// <summary>What such an animal weighs for its lengths, one of a kind of length; where no sound relation is known nobody is judged.</summary>
    public ImmutableArray<LengthMassRelation> LengthMass { get; init => field = value.IsDefault ? [] : value; }

    /// <summary>How well fluid passes the outside.</summary>
    public SkinBarrier Barrier { get; init; }

    /// <summary>Whether acid fluid would dissolve a shell, test or skeleton of lime that the specimen is kept for.</summary>
    public bool IsCalcareous { get; init; }

    /// <summary>Whether acid fluid would dissolve the spicules or ossicles by which it is named.</summary>
    public bool IsSpiculate { get; init; }

    /// <summary>Whether it is mostly jelly, which alcohol ruins.</summary>
    public bool IsGelatinous { get; init; }

    /// <summary>The parts of the body; their shares sum to 1.</summary>
    public ImmutableArray<BodyRegion> Regions { get; init; }

    /// <summary>
    /// Up to this half-thickness, in mm, such an animal is left whole by custom: neither cut nor injected. Above the nominal value its
    /// cavities are opened or filled, and such of its muscle as is thicker than the high value.
    /// </summary>
    public SourcedBand WholeUpToMm { get; init; }

    /// <summary>Fluid injected into the whole body, mL per kg.</summary>
    public SourcedBand DoseMlPerKg { get; init; }

    /// <summary>Thickness of the wall of the body cavity of an animal of 1 kg, mm; that of another goes with the cube root of its mass.</summary>
    public SourcedBand WallMm { get; init; }

    /// <summary>The side kept whole for display and study, such as <c>left</c>; empty where custom names none.</summary>
    public string SpareSide { get; init; }

    /// <summary>Disease, venom and law, this group's own and all that it has from its parents.</summary>
    public ImmutableArray<GroupCaution> Cautions { get; }

    /// <summary>The air that is still in it when it is dead; null where there is none to speak of.</summary>
    internal BodyAir? Air { get; }

    /// <summary>How such a body is handled.</summary>
    internal BodyKind Kind { get; }

    /// <summary>Whether its young grow on land: a mammal, bird or reptile.</summary>
    internal bool IsAmniote => IsA("mammal") || IsA("bird") || IsA("reptile") || IsA("amniote-embryo");

    /// <summary>Those of them that hold at every step; of the law, and of rabies, the checks speak.</summary>
    internal ImmutableArray<Message> Handling { get; }

    /// <summary>Whether this is <paramref name="id"/> or a group below it.</summary>
    /// <param name="id">A group's id.</param>
    /// <returns>True for the group itself and for each of its ancestors.</returns>
    public bool IsA(string id)
    {
        for (var group = this; group is not null; group = group.Parent)
        {
            if (string.Equals(group.Id, id, StringComparison.Ordinal)) return true;
        }

        return false;
    }

    /// <summary>How many steps it is below <c>animal</c>, which is 0.</summary>
    public int Depth { get; }

    /// <summary>The id.</summary>
    /// <returns>Same as <see cref="Id"/>.</returns>
    public override string ToString() => Id;

    /// <summary>What it weighs for a length of that kind; null where no relation is known.</summary>
    internal LengthMassRelation? RelationOf(LengthKind kind)
    {
        foreach (var relation in LengthMass)
        {
            if (relation.Length == kind) return relation;
        }

        return null;
    }

    /// <summary>The row's own, and of its parent's those of other lengths, unless it is of another shape or measured otherwise.</summary>
    private static ImmutableArray<LengthMassRelation> Relations(Groups.GroupRow row, TaxonGroup? parent)
    {
        ImmutableArray<LengthMassRelation> inherited = row.Shape is null && row.Length is null ? parent?.LengthMass ?? [] : [];
        if (row.LengthMass.IsDefault) return inherited;
        return row.LengthMass.IsEmpty ? [] : [.. row.LengthMass, .. inherited.Where(i => !row.LengthMass.Any(own => own.Length == i.Length))];
    }

    private static Groups.GroupRow RowOf(string id, string name, TaxonGroup parent)
    {
        OwnNames.ThrowIfUnfit(id, name);
        ArgumentNullException.ThrowIfNull(parent);
        return new(id, parent.Id, name) { IsOwn = true };
    }

    private static ImmutableArray<Message> HandlingOf(ImmutableArray<GroupCaution> cautions) =>
        [.. cautions.Where(c => !c.IsLegal && c.Id != "rabies").Select(c => (Message)c.Text)];

    private static InvalidOperationException Missing(Groups.GroupRow row, string what) =>
        new($"Group '{row.Id}' has no {what}, and no parent that has one.");
}
