using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning;
using Protocolist.Reading;

namespace Protocolist;

/// <summary>A bench with all that depends on it alone worked out, ready for any number of plans. Immutable; safe to share between threads.</summary>
/// <remarks>Prepare a bench once and plan with it many times: a plan then costs a small part of what it costs to prepare.</remarks>
public sealed class PreparedBench
{
    /// <summary>Prepares a bench.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="days">The days on which the steps of the plans will lie, for many plans: their opening hours are worked out here. Null for a single
    /// plan; a plan beyond the days costs more time, no more.</param>
    /// <param name="substances">The substances that there are; null for the bundled ones. <see cref="Planner.Prepare"/> takes those of its shelf.</param>
    /// <exception cref="ArgumentOutOfRangeException">A day lies before 1600 or after 2500.</exception>
    public PreparedBench(Bench bench, DateInterval? days = null, SubstanceCatalogue? substances = null)
    {
        ArgumentNullException.ThrowIfNull(bench);
        if (days is not null && !(Calendar.Has(days.Start) && Calendar.Has(days.End)))
            throw new ArgumentOutOfRangeException(nameof(days), days, "No plan lies in such years.");
        (Bench, Substances) = (bench, substances ?? SubstanceCatalogue.Bundled);
        Findings = bench.Validate(substances);
        Stock = PreparedStock.Of(Findings.Any(f => f.Severity == Severity.Error) ? Bench.Empty(DateTimeZone.Utc) : bench, substances);
        Hours = days is null ? OpenMinutes.Of(bench.Opening) : OpenMinutes.Of(bench.Opening, days.Start, days.End);
    }

    /// <summary>The bench as it was given.</summary>
    public Bench Bench { get; }

    /// <summary>What is wrong with it (<see cref="Benches.Bench.Validate"/>); with an error no plan is made.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>The substances that its stock was read by.</summary>
    internal SubstanceCatalogue Substances { get; }

    /// <summary>The opening hours.</summary>
    internal OpenMinutes Hours { get; }

    /// <summary>What is on its shelves, what it costs, and where waste goes.</summary>
    internal PreparedStock Stock { get; }

    /// <summary>The bench as it is provisioned from on a day.</summary>
    internal StockDay On(LocalDate day) => Stock.On(day);
}
