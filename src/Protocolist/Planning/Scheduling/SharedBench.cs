using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>Several plans on one bench with limited hands, hoods and tubs.</summary>
/// <remarks>
/// Plans are put in one after another, each exactly into what those before it left. Every single plan is then the earliest
/// possible beside the earlier ones, but all of them together need not be the best there is: put the urgent ones first.
/// </remarks>
internal static class SharedBench
{
    private static readonly Phrase Overbooks =
        new("plan-overbooks-itself", "two jobs of this plan want '{resource}' at the same time, and there is not enough of it");
    private static readonly Phrase OneAfterTheOther = new("plan-overbooks-itself.remedy", "put one of them after the other in the protocol");

    /// <summary>Dates plans in the order given; it can be streamed, one result for each plan as it comes.</summary>
    /// <param name="plans">Jobs of each plan, the most urgent first.</param>
    /// <param name="open">When the bench is open.</param>
    /// <param name="from">Nothing starts before this.</param>
    /// <param name="taken">How much there is of each resource, and what is taken already.</param>
    /// <returns>
    /// For each plan its schedule and all that is taken after it. A plan that does not fit has the error <c>no-dates-fit</c> and takes nothing.
    /// The warning <c>plan-overbooks-itself</c> stands where branches of one and the same graph want a resource at the same time: only other plans are
    /// kept apart from it.
    /// </returns>
    public static IEnumerable<(Checked<Schedule> Dated, Bookings Taken)> Earliest(
        IEnumerable<JobGraph> plans, OpenMinutes open, Instant from, Bookings taken)
    {
        foreach (var plan in plans)
        {
            var dated = Scheduler.Earliest(plan, open, from, taken);
            if (dated.Value is not null)
            {
                taken = taken.With(plan, dated.Value);
                if (!plan.IsChain && taken.Overbooked() is { } resource)
                {
                    var warning = Finding.Warning(Overbooks.Id, Overbooks.With(("resource", resource)), OneAfterTheOther);
                    dated = dated with { Findings = dated.Findings.Add(warning) };
                }
            }

            yield return (dated, taken);
        }
    }
}
