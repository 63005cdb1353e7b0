using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Plans;

/// <summary>What is to be done with one specimen, when, with what and why. Immutable; safe to share between threads.</summary>
/// <remarks>
/// A plan is a pure function of specimen, shelf, bench, start and choices. Two plans are equal when all their facts are; those of a plan
/// that was planned are no finer than its JSON writes them, so that a plan that was read back equals the one that was written. A plan with an error among
/// its findings is complete all the same, so that
/// everything that is wrong can be seen, but <see cref="Startable"/> is false.
/// </remarks>
public sealed record Plan
{
    private readonly ValueMap<string> _choices = ValueMap<string>.Empty;
    private readonly ValueList<Step> _steps = [];
    private readonly ValueList<PlannedRecipe> _recipes = [];
    private readonly ValueList<PlannedPurchase> _purchases = [];
    private readonly ValueList<PlannedMaterial> _materials = [];
    private readonly ValueList<Finding> _findings = [];
    private readonly ValueList<PlannedWaste> _waste = [];
    private readonly ValueList<FluidMove> _fluids = [];
    private readonly ValueList<Message> _label = [];
    private readonly ValueList<CareEvent> _care = [];
    private readonly ValueList<PlanChange> _changes = [];
    private readonly ValueList<WithdrawnStep> _withdrawn = [];
    private readonly ValueList<Figure> _figures = [];

    /// <summary>The version of the plan's JSON form that this library writes and reads.</summary>
    public const int CurrentFormat = 2;

    /// <summary>The version of the JSON form.</summary>
    public int FormatVersion { get; init; } = CurrentFormat;

    /// <summary>The protocol that is followed.</summary>
    public required PlanProtocol Protocol { get; init; }

    /// <summary>The specimen, as it was given.</summary>
    [JsonConverter(typeof(SpecimenJson))]
    public required Specimen Specimen { get; init; }

    /// <summary>What was decided where the protocol leaves a choice: name → option.</summary>
    [JsonConverter(typeof(TextsByNameJson))]
    public ImmutableSortedDictionary<string, string> Choices { get => _choices; init => _choices = value; }

    /// <summary>What was insisted on beside the choices; null where the planner chose vessels and stock by itself.</summary>
    public PlanWishes? Wishes { get; init; }

    /// <summary>Vessels and stock that the planner took after weighing whole ways against one another; null where each step settled its own.</summary>
    public PlanWishes? Settled { get; init; }

    /// <summary>Whether work may begin: no finding is an error.</summary>
    public bool Startable
    {
        get
        {
            foreach (var finding in Findings.AsSpan())
            {
                if (finding.Severity == Severity.Error) return false;
            }

            return true;
        }
    }

    /// <summary>When the first step begins; null where no time could be found.</summary>
    [JsonConverter(typeof(OffsetDateTimeJson))]
    public OffsetDateTime? Start { get; init; }

    /// <summary>When the last dated step ends; null where no time could be found.</summary>
    [JsonConverter(typeof(OffsetDateTimeJson))]
    public OffsetDateTime? End { get; init; }

    /// <summary>The id of the time zone of all dates, such as <c>Atlantic/Azores</c>.</summary>
    public required string Zone { get; init; }

    /// <summary>The bench that it was made for, by its name; empty where no bench was given.</summary>
    public string Bench { get; init; } = "";

    /// <summary>The steps in order.</summary>
    public ImmutableArray<Step> Steps { get => _steps; init => _steps = value; }

    /// <summary>What to mix from what.</summary>
    public ImmutableArray<PlannedRecipe> Recipes { get => _recipes; init => _recipes = value; }

    /// <summary>What to buy before the start.</summary>
    public ImmutableArray<PlannedPurchase> Purchases { get => _purchases; init => _purchases = value; }

    /// <summary>The books of every material: what is there, bought, used and left.</summary>
    public ImmutableArray<PlannedMaterial> Materials { get => _materials; init => _materials = value; }

    /// <summary>What it costs.</summary>
    public required PlanCosts Costs { get; init; }

    /// <summary>What the checks have to say, the gravest first.</summary>
    public ImmutableArray<Finding> Findings { get => _findings; init => _findings = value; }

    /// <summary>What leaves the plan and where it goes.</summary>
    public ImmutableArray<PlannedWaste> Waste { get => _waste; init => _waste = value; }

    /// <summary>Every volume of every fluid from its origin to its destination.</summary>
    public ImmutableArray<FluidMove> Fluids { get => _fluids; init => _fluids = value; }

    /// <summary>What the labels say, line by line.</summary>
    public ImmutableArray<Message> Label { get => _label; init => _label = value; }

    /// <summary>What comes after sealing.</summary>
    public ImmutableArray<CareEvent> Care { get => _care; init => _care = value; }

    /// <summary>The earliest moment at which work was to begin: what was asked for, not what came of it.</summary>
    [JsonConverter(typeof(OffsetDateTimeJson))]
    public OffsetDateTime? EarliestStart { get; init; }

    /// <summary>The day on whose morning all was to be over; null where nothing presses.</summary>
    [JsonConverter(typeof(LocalDateJson))]
    public LocalDate? By { get; init; }

    /// <summary>How many times it has been revised.</summary>
    public int Revision { get; init; }

    /// <summary>The last moment that the log spoke of at the last revision; null before the first.</summary>
    [JsonConverter(typeof(OffsetDateTimeJson))]
    public OffsetDateTime? LoggedUntil { get; init; }

    /// <summary>What the last revision changed and why, line by line.</summary>
    public ImmutableArray<PlanChange> Changes { get => _changes; init => _changes = value; }

    /// <summary>Steps that earlier revisions had and this one has not, so that a calendar can take them back.</summary>
    public ImmutableArray<WithdrawnStep> Withdrawn { get => _withdrawn; init => _withdrawn = value; }

    /// <summary>Every derived value with its reason, by id.</summary>
    public ImmutableArray<Figure> Figures { get => _figures; init => _figures = value; }

    /// <summary>The figure of that id, or null.</summary>
    /// <param name="id">A figure's id, such as <c>fix.last</c>.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="ArgumentNullException">There is no id.</exception>
    public Figure? Figure(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        foreach (var figure in Figures.AsSpan())
        {
            if (string.Equals(figure?.Id, id, StringComparison.Ordinal)) return figure;
        }

        return null;
    }

    /// <summary>The step of that id, or null.</summary>
    /// <param name="id">A step's id, such as <c>fix</c>.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">There is no id.</exception>
    public Step? Step(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        foreach (var step in Steps.AsSpan())
        {
            if (string.Equals(step?.Id, id, StringComparison.Ordinal)) return step;
        }

        return null;
    }
}

/// <summary>The protocol that a plan follows, with its text as it was, so that a later shelf changes nothing of the plan in silence.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Revision">Its authors' count.</param>
/// <param name="Title">What people call it.</param>
/// <param name="File">The file it came from.</param>
public sealed record PlanProtocol(string Id, int Revision, string Title, string File)
{
    private readonly ValueList<SourceText> _files = [];

    /// <summary>The files that it was read from: after those that it extends, the farthest first.</summary>
    public ImmutableArray<SourceText> Files { get => _files; init => _files = value; }
}
