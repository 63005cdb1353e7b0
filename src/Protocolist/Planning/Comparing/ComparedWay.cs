using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;

namespace Protocolist;

/// <summary>One way to go about it and what it comes to. Lower is better in every number.</summary>
public sealed record ComparedWay
{
    /// <summary>A short name: <c>A</c>, <c>B</c> ... in the order in which they were planned; <c>A</c> is the planner's own.</summary>
    public required string Name { get; init; }

    /// <summary>Choice → option.</summary>
    public required ImmutableSortedDictionary<string, string> Choices { get; init; }

    /// <summary>A step's id → the id of the vessel that it uses, of the steps whose vessel makes a difference: those that fix and that house.</summary>
    public ImmutableSortedDictionary<string, string> Vessels { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>A fluid that is made → what it is made from: the id of a stock, two for used fixative and what restores it, <c>+tap</c> for
    /// water from the tap, <c>shelf</c> for all that stands there together; salts where there is a choice.</summary>
    public ImmutableSortedDictionary<string, string> Supplies { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>What has to be insisted on beside the choices to get this plan; the planner chooses the rest of it by itself.</summary>
    public PlanWishes Wishes { get; init; } = PlanWishes.None;

    /// <summary>Whether no finding is an error.</summary>
    public bool Startable { get; init; }

    /// <summary>Days from the first step to the end of the last; null where no dates were found.</summary>
    public double? Days { get; init; }

    /// <summary>Hours that somebody is busy.</summary>
    public double HandsOnHours { get; init; }

    /// <summary>Cash to spend now; null where the bench has no prices.</summary>
    public Money? CostNow { get; init; }

    /// <summary>Total and ten years of care; null where the bench has no prices.</summary>
    public Money? OverTenYears { get; init; }

    /// <summary>Litres of formaldehyde stock that go in, whatever it is taken as: the volume of 37 % by mass stock that holds as much.</summary>
    public double FormaldehydeStockLitres { get; init; }

    /// <summary>Litres of flammable alcohol handled in bottles: 24 % by volume or more.</summary>
    public double FlammableAlcoholLitres { get; init; }

    /// <summary>Findings of severity error.</summary>
    public int Errors => Findings.Count(f => f.Severity == Severity.Error);

    /// <summary>Findings of severity warning.</summary>
    public int Warnings => Findings.Count(f => f.Severity == Severity.Warning);

    /// <summary>The errors and warnings of its plan, the gravest first.</summary>
    public ImmutableArray<Finding> Findings { get; init => field = GivenList.Of(value); } = [];

    /// <summary>What is known of shrinkage and colour, each with its source.</summary>
    public ImmutableArray<Message> Remarks { get; init => field = value.IsDefault ? [] : value; } = [];

    /// <summary>In what it does better than the planner's own way and what it costs; empty for the planner's own.</summary>
    public Message GoodFor { get; init; }

    /// <summary>The name of a way that does no more harm of any kind and less of one; null where there is none.</summary>
    public string? DominatedBy { get; init; }
}
