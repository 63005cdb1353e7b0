using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>Everything a plan is made from. The same request always gives the same plan.</summary>
/// <param name="Specimen">The dead animal, or the lot of alike ones.</param>
/// <param name="Bench">The workplace, prepared; its zone is the plan's.</param>
/// <param name="Start">The earliest moment at which work may begin, on the bench's clocks.</param>
public sealed record PlanRequest(Specimen Specimen, PreparedBench Bench, LocalDateTime Start)
{
    /// <summary>Asks for one plan on a bench that is prepared for it alone. For many plans prepare the bench once.</summary>
    /// <param name="specimen">The dead animal, or the lot of alike ones.</param>
    /// <param name="bench">The workplace.</param>
    /// <param name="start">The earliest moment at which work may begin.</param>
    public PlanRequest(Specimen specimen, Bench bench, LocalDateTime start)
        : this(specimen, new PreparedBench(bench), start)
    {
    }

    /// <summary>What the person decided: the name of a choice → one of its options. What is not named takes the protocol's default.</summary>
    public ImmutableSortedDictionary<string, string> Choices { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Vessels and supplies that the person insists on; the planner chooses the rest.</summary>
    public PlanWishes Wishes { get; init; } = PlanWishes.None;

    /// <summary>The day on whose morning all dated work must be over, such as the opening of a display; null where nothing presses.</summary>
    public LocalDate? By { get; init; }
}
