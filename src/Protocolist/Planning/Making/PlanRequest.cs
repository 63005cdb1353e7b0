using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Making;
using Protocolist.Plans;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist;

/// <summary>Everything a plan is made from. The same request always gives the same plan.</summary>
/// <param name="Specimen">The dead animal, or several of a kind as one lot.</param>
/// <param name="Bench">The workplace, prepared; its zone is the plan's.</param>
/// <param name="Start">The earliest moment at which work may begin, on the bench's clocks.</param>
public sealed record PlanRequest(Specimen Specimen, PreparedBench Bench, LocalDateTime Start)
{
    private static readonly PlanRequestValidator Validator = new();

    /// <summary>Asks for one plan on a bench that is prepared for it alone. For many plans prepare the bench once.</summary>
    /// <param name="specimen">The dead animal, or several of a kind as one lot.</param>
    /// <param name="bench">The workplace.</param>
    /// <param name="start">The earliest moment at which work may begin.</param>
    public PlanRequest(Specimen specimen, Bench bench, LocalDateTime start)
        : this(specimen, new PreparedBench(bench), start)
    {
    }

    /// <summary>The dead animal, or several of a kind as one lot.</summary>
    public Specimen Specimen { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } =
        Specimen ?? throw new ArgumentNullException(nameof(Specimen));

    /// <summary>The workplace, prepared; its zone is the plan's.</summary>
    public PreparedBench Bench { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } =
        Bench ?? throw new ArgumentNullException(nameof(Bench));

    /// <summary>What is wrong with what is asked, the specimen and the bench, in the same words as of files.</summary>
    /// <param name="kinds">The taxon groups that there are; null for the bundled ones.</param>
    /// <returns>Findings, each with the property's path as its subject; empty where nothing is wrong.</returns>
    public ImmutableArray<Finding> Validate(Kinds? kinds = null) =>
        [.. ValidatorFindings.Of(Validator, this), .. Specimen.Validate(kinds), .. Bench.Findings];

    /// <summary>The errors that no plan can be made with. A specimen that only contradicts itself is planned, and its plan is not to be started.</summary>
    internal ImmutableArray<Finding> Refusals() =>
        [
            .. (IsPlain ? [] : ValidatorFindings.Of(Validator, this))
                .Concat(Specimen.BeyondLimits())
                .Concat(Bench.Findings)
                .Where(f => f.Severity == Severity.Error),
        ];

    /// <summary>Whether nothing is asked that the validator has a word for, beside a start that can be.</summary>
    private bool IsPlain => Calendar.Has(Start.Date) && By is null && Choices.IsEmpty && Wishes.IsEmpty();

    /// <summary>What the person decided: the name of a choice → one of its options. What is not named takes the protocol's default.</summary>
    public ImmutableSortedDictionary<string, string> Choices { get; init => field = GivenList.Of(value); } =
        ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Vessels and supplies that the person insists on; the planner chooses the rest.</summary>
    public PlanWishes Wishes { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } = PlanWishes.None;

    /// <summary>The day on whose morning all dated work must be over, such as the opening of a display; null where nothing presses.</summary>
    public LocalDate? By { get; init; }
}
