using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;

namespace Protocolist.Planning.Batching;

/// <summary>What all rows of a batch share.</summary>
/// <param name="Shelf">The protocols.</param>
/// <param name="Bench">The workplace.</param>
/// <param name="Start">The earliest start of every plan.</param>
public sealed record BatchRequest(Shelf Shelf, Bench Bench, LocalDateTime Start)
{
    /// <summary>Choices that every plan takes whose protocol leaves them.</summary>
    public ImmutableSortedDictionary<string, string> Choices { get; init; } = ImmutableSortedDictionary<string, string>.Empty;
}

/// <summary>One row of a batch: the summary of its plan, or why there is none.</summary>
/// <param name="Number">The row below the heading, from 1.</param>
/// <param name="Line">Its first line in the file.</param>
/// <param name="SpecimenId">The specimen's number; empty where it has none.</param>
/// <param name="Plan">The plan; null where there is none.</param>
/// <param name="Findings">Everything that was found in the row and its plan.</param>
public sealed record BatchRow(int Number, int Line, string SpecimenId, Plan? Plan, ImmutableArray<Finding> Findings)
{
    internal Draft? Draft { get; init; }

    /// <summary>Whether there is a plan that may be started.</summary>
    public bool Startable => Plan is { Startable: true } && !Findings.Any(f => f.Severity == Severity.Error);

    /// <summary>Hands-on time of the plan.</summary>
    public Duration HandsOn => Plan is null ? Duration.Zero : Plan.Steps.Aggregate(Duration.Zero, (sum, s) => sum + s.HandsOn);

    /// <summary>The vessel it ends in; null where none was chosen.</summary>
    public string? FinalVessel => Plan?.Steps.LastOrDefault(s => s.Kind == Protocols.StageKind.House)?.Vessel;

    /// <summary>What the plan costs; null where the bench has no prices.</summary>
    public Money? Total => Plan?.Costs.Total;

    /// <summary>How many findings are of a severity.</summary>
    /// <param name="severity">The severity.</param>
    /// <returns>The number.</returns>
    public int Count(Severity severity) => Findings.Count(f => f.Severity == severity);
}

/// <summary>Many specimens from a table, one plan a row. A row is forgotten before the next is read, but for some 40 bytes by which its number is known again.</summary>
public sealed class Batch
{
    private readonly SpecimenTable table;
    private readonly BatchRequest request;
    private readonly ImmutableDictionary<string, ImmutableSortedDictionary<string, string>> choices;
    private readonly NumbersSeen seen = new();

    private Batch(SpecimenTable table, BatchRequest request)
    {
        (this.table, this.request) = (table, request);
        choices = request.Shelf.Protocols.ToImmutableDictionary(p => p.Id, p => request.Choices.Where(c => p.Choices.Any(o => o.Name == c.Key && o.Options.Contains(c.Value))).ToImmutableSortedDictionary(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    /// <summary>Reads the heading of a table of specimens.</summary>
    /// <param name="csv">The text; the caller closes it after the last row.</param>
    /// <param name="file">Its name, for findings.</param>
    /// <param name="request">Shelf, bench, start and choices.</param>
    /// <returns>The batch; null with errors <c>missing-column</c>, <c>column-twice</c>, <c>empty-file</c> where no row could be planned.</returns>
    public static Checked<Batch> Open(TextReader csv, string file, BatchRequest request)
    {
        ArgumentNullException.ThrowIfNull(csv);
        ArgumentNullException.ThrowIfNull(request);
        var opened = SpecimenTable.Open(csv, file);
        return new(opened.Value is { } table ? new(table, request) : null, opened.Findings);
    }

    /// <summary>Plans the rows in order; can be gone through once. A fault costs its own row only; a number that comes again is a warning, <c>repeated-number</c>, that names both rows.</summary>
    /// <param name="skip">Rows that were done before and are passed over.</param>
    /// <returns>One result for each row that is not passed over.</returns>
    public IEnumerable<BatchRow> Rows(int skip = 0)
    {
        foreach (var row in table.Rows())
        {
            // The numbers of rows that were done before count too.
            var again = seen.Again(row.Id, row.Number, row.IdAt);
            if (row.Number > skip) yield return Planned(again is null ? row : row with { Findings = row.Findings.Insert(0, again) });
        }
    }

    private BatchRow Planned(SpecimenRow row)
    {
        if (row.Specimen is not { } specimen) return new(row.Number, row.Line, row.Id, null, row.Findings);
        var plan = new PlanRequest(specimen, request.Shelf, request.Bench, request.Start);
        if (!request.Choices.IsEmpty && SelectPass.For(specimen, request.Shelf) is { } protocol) plan = plan with { Choices = choices[protocol.Id] };
        var (made, draft, _) = Planner.Make(plan);

        // What the plan says of the specimen it says of this row.
        var where = SourceSpan.At(table.File, row.Line, 1);
        return new(row.Number, row.Line, row.Id, made.Value, [.. row.Findings, .. made.Findings.Select(f => f.Where.IsKnown ? f : f with { Where = where })]) { Draft = draft };
    }
}
