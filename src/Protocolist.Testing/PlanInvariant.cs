using FsCheck;
using FsCheck.Fluent;
using Protocolist.Plans;

namespace Protocolist.Testing;

/// <summary>Something that holds of every plan, whatever the protocol says.</summary>
public sealed class PlanInvariant
{
    private readonly Func<PlanCase, IEnumerable<string>> _faults;

    /// <summary>Makes an invariant.</summary>
    /// <param name="id">A kebab-case name.</param>
    /// <param name="says">What holds, in a sentence.</param>
    /// <param name="faults">What is wrong with a case; nothing where it holds.</param>
    public PlanInvariant(string id, string says, Func<PlanCase, IEnumerable<string>> faults) => (Id, Says, _faults) = (id, says, faults);

    private Func<Plan, IEnumerable<string>>? OfPlanAlone { get; init; }

    /// <summary>A kebab-case name.</summary>
    public string Id { get; }

    /// <summary>What holds, in a sentence.</summary>
    public string Says { get; }

    /// <summary>What is wrong with a case.</summary>
    /// <param name="planCase">The case.</param>
    /// <returns>One sentence for each fault; nothing where the invariant holds.</returns>
    public IReadOnlyList<string> Faults(PlanCase planCase) => [.. _faults(planCase)];

    /// <summary>What is wrong with a plan in itself, such as a revised one.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>One sentence for each fault; nothing where the invariant holds, or speaks of more than the plan alone.</returns>
    public IReadOnlyList<string> Faults(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. OfPlanAlone?.Invoke(plan) ?? []];
    }

    /// <summary>The invariant as a property over all cases of a shelf.</summary>
    /// <param name="shelf">The protocols.</param>
    /// <returns>A property for FsCheck to check.</returns>
    public Property Over(Shelf shelf) => Over(PlanCases.Over(shelf));

    /// <summary>The invariant as a property over cases.</summary>
    /// <param name="cases">The cases.</param>
    /// <returns>A property for FsCheck to check.</returns>
    public Property Over(Arbitrary<PlanCase> cases) => Prop.ForAll(cases, c =>
    {
        var faults = Faults(c);
        return (faults.Count == 0).Label($"{Id}: {string.Join("; ", faults)}");
    });

    /// <summary>The id and what it says.</summary>
    /// <returns>Text for a list.</returns>
    public override string ToString() => $"{Id}: {Says}";

    internal static PlanInvariant OfPlan(string id, string says, Func<Plan, IEnumerable<string>> faults) =>
        new(id, says, c => c.Made.Value is { } plan ? faults(plan) : []) { OfPlanAlone = faults };

    internal static PlanInvariant OfPlan(string id, string says, Func<Plan, PlanCase, IEnumerable<string>> faults) =>
        new(id, says, c => c.Made.Value is { } plan ? faults(plan, c) : []);
}
