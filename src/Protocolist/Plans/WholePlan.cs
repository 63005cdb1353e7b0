using System.Diagnostics.CodeAnalysis;

namespace Protocolist.Plans;

/// <summary>What writes a plan asks that all its parts are there.</summary>
internal static class WholePlan
{
    /// <summary>A plan that a program left without some part is its bug: no sheet is written of it.</summary>
    public static void ThrowIfIncomplete([NotNull] Plan? plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (PlanFaults.Of(plan).FirstOrDefault(f => f.Id == "plan-incomplete") is { } fault)
            throw new ArgumentException(fault.Message.ToString(), nameof(plan));
    }
}
