using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Planning.Deciding;

/// <summary>What a way is weighed by. Of two ways the one that does less harm in the first of these in which they differ is taken.</summary>
internal enum Harm
{
    /// <summary>Errors: a way that must not be begun is no way.</summary>
    Start,

    /// <summary>1. What hurts people when the work is done as planned.</summary>
    People,

    /// <summary>2. What the law forbids.</summary>
    Law,

    /// <summary>3. Time until fixative meets the body beyond what this body bears, in tenths of that.</summary>
    Waiting,

    /// <summary>4. What ruins the specimen later.</summary>
    Ruin,

    /// <summary>5. What spoils its use.</summary>
    Use,

    /// <summary>The author of the protocol lists first what serves best: with no more harm so far, that is taken.</summary>
    Option,

    /// <summary>The minute in which fixative meets the body: only a tie is broken by it, so that nobody grabs a worse fluid to win an hour.</summary>
    Minute,

    /// <summary>6. Work that is too much, or that nobody can see to.</summary>
    Hands,

    /// <summary>6. Hands-on minutes, a visit counted as one.</summary>
    Work,

    /// <summary>7. Fluid that serves nothing.</summary>
    Waste,

    /// <summary>7. Cash to spend now, in smallest coins.</summary>
    Money,

    /// <summary>8. Fluid that is made, in millilitres.</summary>
    Fluid,

    /// <summary>8. What stands about on the shelf.</summary>
    Shelf,
}

/// <summary>
/// The order of harm: what a careful colleague looks at first when there are several lawful ways. The ids of checks stand under what they are about; each
/// check that warns counts as one, in however many steps. What is not listed is told and weighs nothing: no choice of a way changes it (papers, the animal's
/// history, what nobody measured). The order and the places are the project's choice; argue with them here.
/// </summary>
internal static class OrderOfHarm
{
    /// <summary>Which findings count as which harm.</summary>
    public static ImmutableArray<(Harm Harm, ImmutableArray<string> Checks)> Places { get; } =
    [
        (Harm.Start, ["absurd-amount", "impossible-amount", "no-steps"]),
        (Harm.People,
        [
            "bleach-or-acid-near-formalin", "formaldehyde-in-the-air", "formalin-without-hood", "glass-too-thin", "joint-load",
            "sealed-vessel-builds-pressure", "vessel-too-heavy-for-shelf",
        ]),
        (Harm.Law, ["formalin-to-the-drain", "waste-without-destination"]),
        (Harm.Waiting, ["no-dates-fit", "supplies-late"]),
        (Harm.Ruin,
        [
            "acid-on-bone", "acid-on-calcareous", "alcohol-on-gelatinous", "alcohol-weakened-by-body", "armour-closed", "bloated-not-vented",
            "buffer-does-not-last", "closure-not-for-keeping", "core-out-of-reach", "core-will-rot", "cramped", "fixation-too-short",
            "fixative-over-its-month", "fixative-too-cold", "fixative-too-weak", "formalin-on-spicules", "headspace-too-small", "injection-too-strong",
            "isopropanol-on-lime", "keeping-strength-out-of-band", "lacking-and-not-for-sale", "lime-long-in-formalin", "mixed-alcohols",
            "mixed-buffering", "no-time-to-cure", "not-submerged", "ph-drift", "ratio-too-low", "reused-fixative-doubtful",
            "spent-fluid-of-another-buffering", "stock-expired", "stock-missing", "stock-strength-unknown", "thick-and-uncut", "too-big-a-step",
            "unknown-denaturant", "unwashed-into-alcohol", "vessel-material-not-for-keeping", "vessel-too-small", "wash-not-changed", "wash-too-short",
            "water-unfit-for-alcohol",
        ]),
        (Harm.Use, ["many-in-one-vessel", "tissue-for-dna-after-formalin"]),
        (Harm.Hands,
        [
            // A closed day on which nobody looks is no reason to take another fluid; nor is it to be alone, which the bench is whatever is done, or a
            // tub that is filled where it stands.
            "inspection-gap", "lone-work", "long-day", "many-cuts", "many-sites", "nobody-watches", "step-runs-over",
            "vessel-too-heavy-to-lift",
        ]),
        (Harm.Waste, ["ratio-too-high"]),
        (Harm.Shelf,
        [
            // Alcohol in quantity asks for a cabinet and for air, not for another method.
            "above-flash-point", "flammable-quantity", "stored-flammables", "stored-formaldehyde",
        ]),
    ];

    /// <summary>What is said of a vessel: counted in each step that it is said in.</summary>
    public static FrozenSet<string> OfVessels { get; } = FrozenSet.Create(
        StringComparer.Ordinal,
        "closure-not-for-keeping", "ratio-too-high", "sealed-vessel-builds-pressure", "vessel-material-not-for-keeping", "vessel-too-heavy-for-shelf",
        "vessel-too-heavy-to-lift");

    /// <summary>Those that more fluid may cure.</summary>
    public static FrozenSet<string> OfFluid { get; } = FrozenSet.Create(
        StringComparer.Ordinal,
        "alcohol-weakened-by-body", "cramped", "keeping-strength-out-of-band", "ratio-too-low", "too-big-a-step", "wash-not-changed", "wash-too-short");

    /// <summary>Those that another stock may cure. What is lacking is not among them: recipes are chosen for the least that lacks.</summary>
    public static FrozenSet<string> OfStock { get; } = FrozenSet.Create(
        StringComparer.Ordinal,
        "reused-fixative-doubtful", "spent-fluid-of-another-buffering", "stock-expired", "stock-strength-unknown", "unknown-denaturant",
        "water-unfit-for-alcohol");

    /// <summary>Those that another posture may cure, for it takes other vessels and so other amounts.</summary>
    public static FrozenSet<string> OfPosture { get; } = OfVessels.Union(OfFluid).Union(
    [
        "delivery-comes-too-late", "formaldehyde-in-the-air", "glass-too-thin", "headspace-too-small", "joint-load", "lacking-and-not-for-sale",
        "no-dates-fit", "not-submerged", "stock-missing", "supplies-late", "vessel-too-small", "waste-without-destination",
    ]).ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, Harm> ByCheck =
        Places.SelectMany(p => p.Checks.Select(c => (Check: c, p.Harm))).ToFrozenDictionary(p => p.Check, p => p.Harm, StringComparer.Ordinal);

    /// <summary>
    /// Which harm a finding tells of; null for one that no way changes. A note tells of none but fluid for nothing; a check that the protocol's house made
    /// for itself tells of ruin.
    /// </summary>
    public static Harm? Of(Finding finding, Protocol protocol)
    {
        if (ByCheck.TryGetValue(finding.Id, out var harm)) return finding.Severity > Severity.Note || harm == Harm.Waste ? harm : null;
        if (finding.Severity == Severity.Note) return null;
        foreach (var check in protocol.HouseChecks)
        {
            if (check.Id == finding.Id) return Harm.Ruin;
        }

        return null;
    }
}
