using Protocolist.Findings;

namespace Protocolist.Plans;

/// <summary>One thing that a revision changed.</summary>
/// <param name="Step">The id of the step; empty where it concerns the whole plan.</param>
/// <param name="What">What is different, with the old and the new value.</param>
/// <param name="Why">What in the log, the bench or the protocol brought it about.</param>
public sealed record PlanChange(string Step, Message What, Message Why)
{
    private static readonly Phrase OfStep = new("plan-change.of-step", "{step}: {change}");
    private static readonly Phrase Because = new("plan-change.because", "{change}, because {why}");

    /// <summary>One line.</summary>
    /// <returns>Text such as <c>fix: ends 2027-03-21 11:00 instead of 2027-03-18 11:00, because soft was seen on 2027-03-06</c>.</returns>
    public override string ToString() => ToString(Language.English);

    /// <summary>One line in a language.</summary>
    /// <param name="language">The language; what it lacks is said in English.</param>
    /// <returns>The line.</returns>
    public string ToString(Language language)
    {
        var change = Why.IsEmpty ? What : Because.With(("change", What), ("why", Why));
        return (!string.IsNullOrEmpty(Step) ? OfStep.With(Argument.Id("step", Step), ("change", change)) : change).ToString(language);
    }
}

/// <summary>A step that was once planned.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What it was called.</param>
/// <param name="Start">When it was to begin.</param>
/// <param name="Sequence">The sequence of the event that takes it back.</param>
/// <param name="MostInspections">The most inspections that were planned for it.</param>
public sealed record WithdrawnStep(
    string Id,
    Message Title,
    [property: System.Text.Json.Serialization.JsonConverter(typeof(OffsetDateTimeJson))] NodaTime.OffsetDateTime? Start,
    int Sequence,
    int MostInspections)
{
    /// <summary>The most dated changes of fluid that were planned for it.</summary>
    public int MostChanges { get; init; }
}
