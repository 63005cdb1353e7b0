using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>One dead animal, or a lot of small ones of one kind, as measured on the table. Immutable; safe to share between threads.</summary>
/// <remarks>
/// Give what was measured and leave out the rest: nothing here has to be guessed. Measurements are those of one animal, of a lot
/// those of the largest; only <see cref="LotMass"/> is of all together. <see cref="Validate"/> says what cannot be.
/// </remarks>
public sealed record Specimen
{
    private static readonly SpecimenLimits Limits = new();
    private readonly ValueList<string> _permits = [];

    /// <summary>The catalogue or field number.</summary>
    public required string Id { get; init; }

    /// <summary>How many animals of the kind share the jar; 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The id of a taxon group, such as <c>bat</c>; see <see cref="Kinds.Groups"/>.</summary>
    public string? Group { get; init; }

    /// <summary>Genus and species.</summary>
    public string? ScientificName { get; init; }

    /// <summary>Phylum, class, order or family, or several parted by <c>;</c>. It can stand in for <see cref="Group"/>.</summary>
    public string? HigherTaxon { get; init; }

    /// <summary>Mass of one animal, as it lies on the table.</summary>
    public Mass? Mass { get; init => field = AsTyped.Of(value); }

    /// <summary>Half of the range where the mass was given as one: 30 to 40 g is a <see cref="Mass"/> of 35 g with a margin of 5 g.</summary>
    public Mass? MassMargin { get; init => field = AsTyped.Of(value); }

    /// <summary>Mass of the whole lot, where it was weighed together.</summary>
    public Mass? LotMass { get; init => field = AsTyped.Of(value); }

    /// <summary>Volume of one animal by displacement of water.</summary>
    public Volume? DisplacementVolume { get; init => field = AsTyped.Of(value); }

    /// <summary>The length that the group is measured by; see <see cref="TaxonGroup.Length"/>.</summary>
    public Length? Length { get; init => field = AsTyped.Of(value); }

    /// <summary>Tip to tip, tail and fins included.</summary>
    public Length? TotalLength { get; init => field = AsTyped.Of(value); }

    /// <summary>Fishes: snout to the end of the backbone, without the tail fin.</summary>
    public Length? StandardLength { get; init => field = AsTyped.Of(value); }

    /// <summary>Reptiles and amphibians: snout to vent.</summary>
    public Length? SnoutVentLength { get; init => field = AsTyped.Of(value); }

    /// <summary>Mammals: nose to the root of the tail.</summary>
    public Length? HeadBodyLength { get; init => field = AsTyped.Of(value); }

    /// <summary>Turtles and decapods: along the carapace.</summary>
    public Length? CarapaceLength { get; init => field = AsTyped.Of(value); }

    /// <summary>Cephalopods: along the mantle, on the back.</summary>
    public Length? MantleLength { get; init => field = AsTyped.Of(value); }

    /// <summary>Rays, jellyfish, echinoderms: across the disc, bell or test.</summary>
    public Length? DiscWidth { get; init => field = AsTyped.Of(value); }

    /// <summary>Bats: along the folded forearm, elbow to wrist.</summary>
    public Length? ForearmLength { get; init => field = AsTyped.Of(value); }

    /// <summary>Crabs and horseshoe crabs: across the carapace.</summary>
    public Length? CarapaceWidth { get; init => field = AsTyped.Of(value); }

    /// <summary>Eggs: across, without the jelly.</summary>
    public Length? EggDiameter { get; init => field = AsTyped.Of(value); }

    /// <summary>Octopuses: along the mantle, on the belly side.</summary>
    public Length? VentralMantleLength { get; init => field = AsTyped.Of(value); }

    /// <summary>Scorpions: the body without its tail.</summary>
    public Length? BodyLength { get; init => field = AsTyped.Of(value); }

    /// <summary>Round the thickest place.</summary>
    public Length? Girth { get; init => field = AsTyped.Of(value); }

    /// <summary>Side to side at the thickest place.</summary>
    public Length? Width { get; init => field = AsTyped.Of(value); }

    /// <summary>Back to belly at the thickest place; fishes: the depth of the body.</summary>
    public Length? Height { get; init => field = AsTyped.Of(value); }

    /// <summary>Through the thickest place, the shorter way.</summary>
    public Length? Thickness { get; init => field = AsTyped.Of(value); }

    /// <summary>Sex, where known.</summary>
    public Sex? Sex { get; init; }

    /// <summary>How far grown, where known.</summary>
    public LifeStage? LifeStage { get; init; }

    /// <summary>The state it came in; null where nobody noted it.</summary>
    public Condition? Condition { get; init; }

    /// <summary>When it died, where known.</summary>
    public Instant? DiedAt { get; init; }

    /// <summary>The day it was found or taken.</summary>
    public LocalDate? FoundOn { get; init; }

    /// <summary>Where it was found or taken.</summary>
    public string? Where { get; init; }

    /// <summary>How it came: found dead, bycatch, salvage, donation...</summary>
    public string? HowObtained { get; init; }

    /// <summary>Who collected it.</summary>
    public string? CollectedBy { get; init; }

    /// <summary>Numbers of permits and licences that cover it.</summary>
    public ImmutableArray<string> Permits { get => _permits; init => _permits = GivenList.Of(value); }

    /// <summary>What it is for; null where that is open.</summary>
    public IntendedUse? IntendedUse { get; init; }

    /// <summary>How it shall be laid: a word that its group has for a posture, such as <c>wings-spread</c>; null where custom decides.</summary>
    public string? Posture { get; init; }

    /// <summary>Anything else worth keeping with it.</summary>
    public string? Notes { get; init; }

    /// <summary>
    /// What can be said of it without knowing its group: values that cannot be, and values that contradict each other; the same, in the same words, as of
    /// a file.
    /// </summary>
    /// <param name="kinds">The groups that there are; null for the bundled ones.</param>
    /// <returns>Findings, each with the property as its subject, in kebab-case as a specimen file has it; empty where nothing is wrong.</returns>
    public ImmutableArray<Finding> Validate(Kinds? kinds = null) => ValidatorFindings.Of((kinds ?? Kinds.Bundled).Validator, this);

    /// <summary>Those of them that nothing can be reckoned with.</summary>
    internal ImmutableArray<Finding> BeyondLimits() => ValidatorFindings.Of(Limits, this);

    /// <summary>The measured length of the given kind, where there is one; <see cref="Length"/> is not looked at.</summary>
    /// <param name="kind">Which length.</param>
    /// <returns>The length, or null.</returns>
    public Length? LengthOf(LengthKind kind) => kind switch
    {
        LengthKind.Total => TotalLength,
        LengthKind.Standard => StandardLength,
        LengthKind.SnoutVent => SnoutVentLength,
        LengthKind.HeadBody => HeadBodyLength,
        LengthKind.Carapace => CarapaceLength,
        LengthKind.Mantle => MantleLength,
        LengthKind.Disc => DiscWidth,
        LengthKind.Forearm => ForearmLength,
        LengthKind.CarapaceWidth => CarapaceWidth,
        LengthKind.EggDiameter => EggDiameter,
        LengthKind.VentralMantle => VentralMantleLength,
        LengthKind.Body => BodyLength,
        _ => null,
    };
}
