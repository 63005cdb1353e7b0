using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>Everything a plan is made from. The same request always gives the same plan.</summary>
/// <param name="Specimen">The dead animal, or the lot of alike ones.</param>
/// <param name="Shelf">The protocols to choose from.</param>
/// <param name="Bench">The workplace; its zone is the plan's.</param>
/// <param name="Start">The earliest moment at which work may begin, on the bench's clocks.</param>
public sealed record PlanRequest(Specimen Specimen, Shelf Shelf, Bench Bench, LocalDateTime Start)
{
    private static readonly PlanRequestValidator Validator = new();

    /// <summary>What is wrong with what is asked, the specimen and the bench, in the same words as of files.</summary>
    /// <returns>Findings, each with the property's path as its subject; empty where nothing is wrong.</returns>
    public ImmutableArray<Finding> Validate() => [.. ValidatorFindings.Of(Validator, this), .. Specimen.Validate(), .. Bench.Validate()];

    /// <summary>What the person decided: the name of a choice → one of its options. What is not named takes the protocol's default.</summary>
    public ImmutableSortedDictionary<string, string> Choices { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Vessels and supplies that the person insists on; the planner chooses the rest.</summary>
    public PlanWishes Wishes { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } = PlanWishes.None;

    /// <summary>The day on whose morning all dated work must be over, such as the opening of a display; null where nothing presses.</summary>
    public LocalDate? By { get; init; }
}
