using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Planning.Batching;
using Protocolist.Planning.Deciding;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Measuring;
using Protocolist.Planning.Selecting;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist;

/// <summary>What all rows of a batch share.</summary>
/// <param name="Planner">What makes the plans.</param>
/// <param name="Bench">The workplace, prepared.</param>
/// <param name="Start">The earliest start of every plan.</param>
public sealed record BatchRequest(Planner Planner, PreparedBench Bench, LocalDateTime Start)
{
    /// <summary>What is wrong with what is asked, the bench included, in the same words as of files.</summary>
    /// <returns>Findings; empty where nothing is wrong.</returns>
    public ImmutableArray<Finding> Validate() => [.. Calendar.Has(Start.Date) ? [] : (Finding[])[Calendar.Fault(Start.Year)], .. Bench.Findings];

    /// <summary>What makes the plans.</summary>
    public Planner Planner { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } =
        Planner ?? throw new ArgumentNullException(nameof(Planner));

    /// <summary>The workplace, prepared.</summary>
    public PreparedBench Bench { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } =
        Bench ?? throw new ArgumentNullException(nameof(Bench));

    /// <summary>Choices that every plan takes whose protocol leaves them.</summary>
    public ImmutableSortedDictionary<string, string> Choices { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } =
        ImmutableSortedDictionary<string, string>.Empty;
}

/// <summary>One row of a batch: the summary of its plan, or why there is none.</summary>
/// <param name="Number">The row below the heading, from 1.</param>
/// <param name="Line">Its first line in the file.</param>
/// <param name="SpecimenId">The specimen's number; empty where it has none.</param>
/// <param name="Plan">The plan; null where there is none.</param>
/// <param name="Findings">Everything that was found in the row and its plan.</param>
public sealed record BatchRow(int Number, int Line, string SpecimenId, Plan? Plan, ImmutableArray<Finding> Findings)
{
    /// <summary>Everything that was found in the row and its plan.</summary>
    public ImmutableArray<Finding> Findings { get; init => field = GivenList.Of(value); } = GivenList.Of(Findings);

    internal Draft? Draft { get; init; }

    /// <summary>What the row's cells hold, as 32 hex digits: a row of another digest was edited.</summary>
    public string Digest { get; init; } = "";

    /// <summary>The unforeseen fault of this library that ended the row, for a report; null where there was none.</summary>
    public Exception? Fault { get; init; }

    /// <summary>Whether there is a plan that may be started.</summary>
    public bool Startable => Plan is { Startable: true } && !Findings.Any(f => f.Severity == Severity.Error);

    /// <summary>Hands-on time of the plan.</summary>
    public Duration HandsOn => Plan is null ? Duration.Zero : Plan.Steps.Aggregate(Duration.Zero, (sum, s) => sum + s.HandsOn);

    /// <summary>The vessel it ends in; null where none was chosen.</summary>
    public string? FinalVessel => Plan?.Steps.LastOrDefault(s => s.Kind == StageKind.House)?.Vessel;

    /// <summary>What the plan costs; null where the bench has no prices.</summary>
    public Money? Total => Plan?.Costs.Total;

    /// <summary>How many findings are of a severity.</summary>
    /// <param name="severity">The severity.</param>
    /// <returns>The number.</returns>
    public int Count(Severity severity) => Findings.Count(f => f.Severity == severity);
}

/// <summary>
/// Many specimens from a table, one plan a row. A row is forgotten before the next is read, but for some 40 bytes by which its number is known again.
/// </summary>
public sealed class Batch
{
    private static readonly Phrase MissingRows = new("missing-rows", "the table ends after row {count}, and more rows than that are done");
    private static readonly Phrase MissingRowsRemedy = new("missing-rows.remedy", "put the rows back that were taken out, or begin anew without --resume");
    private static readonly Phrase EditedRow = new("edited-row", "row {number} is done and was edited since, or a row was put in or taken out before it");
    private static readonly Phrase EditedRowRemedy = new("edited-row.remedy", "undo the edit, or begin anew without --resume; rows may be added at the end");
    private static readonly Phrase UnforeseenFault = new(
        "unforeseen-fault",
        "an unforeseen fault of the program, not of yours, ended the planning of this row");
    private static readonly Phrase UnforeseenFaultRemedy = new("unforeseen-fault.remedy", "report it with this row; the other rows are planned");

    /// <summary>Rows that are planned together: enough to keep every core busy, few enough to be kept twice.</summary>
    private const int MostInBlock = 128;

    private readonly SpecimenTable table;
    private readonly BatchRequest request;
    private readonly NumbersSeen seen = new();
    private readonly IEnumerator<SpecimenRow> rows;
    private int asked;
    private readonly Func<PlanRequest, (Checked<Plan> Made, Draft? Draft)> make;

    private Batch(SpecimenTable table, BatchRequest request, Func<PlanRequest, (Checked<Plan> Made, Draft? Draft)> make)
    {
        (this.table, this.request, this.make) = (table, request, make);
        rows = table.Rows().GetEnumerator();
    }

    /// <summary>Reads the heading of a table of specimens.</summary>
    /// <param name="csv">The text; the caller closes it after the last row.</param>
    /// <param name="file">Its name, for findings.</param>
    /// <param name="request">Shelf, bench, start and choices.</param>
    /// <returns>The batch; null with errors <c>missing-column</c>, <c>column-twice</c>, <c>empty-file</c> where no row could be planned, or with those of
    /// <see cref="BatchRequest.Validate"/>.</returns>
    public static Checked<Batch> Open(TextReader csv, string file, BatchRequest request) =>
        Open(csv, file, request, asked => request.Planner.Pipeline.Make(asked) is var made ? (made.Plan, made.Draft) : default);

    /// <summary>The same, with another planner.</summary>
    internal static Checked<Batch> Open(TextReader csv, string file, BatchRequest request, Func<PlanRequest, (Checked<Plan> Made, Draft? Draft)> make)
    {
        ArgumentNullException.ThrowIfNull(csv);
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(request);
        request = request with { Bench = request.Planner.OfOwnKinds(request.Bench) };
        if (request.Validate().Where(f => f.Severity == Severity.Error).ToImmutableArray() is { IsEmpty: false } refusals) return new(null, refusals);
        var opened = SpecimenTable.Open(csv, file, request.Planner.Shelf.Kinds);
        return new(opened.Value is { } table ? new(table, request, make) : null, opened.Findings);
    }

    /// <summary>What the table's heading holds, as 32 hex digits.</summary>
    public string HeadingDigest => table.HeadingDigest;

    /// <summary>Passes over rows that were done before, so long as each still holds what it held then. To be called before <see cref="Rows"/>.</summary>
    /// <param name="done">Of each row that is done, in order, its <see cref="BatchRow.Digest"/>.</param>
    /// <returns>An error <c>edited-row</c> at the first row that is not what it was, or <c>missing-rows</c> where the table ends before; null where all
    /// are as they were.</returns>
    public Finding? PassOver(IEnumerable<string> done)
    {
        ArgumentNullException.ThrowIfNull(done);
        var count = 0;
        foreach (var digest in done)
        {
            if (!rows.MoveNext())
                return Finding.Error("missing-rows", MissingRows.With(("count", count)), MissingRowsRemedy, SourceSpan.At(table.File, 1, 1));
            count++;
            var row = rows.Current;
            if (row.Digest != digest)
                return Finding.Error("edited-row", EditedRow.With(("number", row.Number)), EditedRowRemedy, SourceSpan.At(table.File, row.Line, 1));

            // The numbers of rows that were done before count too.
            seen.Again(row.Id, row.Number, row.IdAt);
        }

        return null;
    }

    /// <summary>
    /// Plans the rows on all cores, in order; can be gone through once. A fault costs its own row only, even one of this library
    /// (<c>unforeseen-fault</c>); a number
    /// that comes again is a warning, <c>repeated-number</c>, that names both rows.
    /// </summary>
    /// <returns>One result for each row that is not passed over. The table is read at most 256 rows ahead.</returns>
    /// <exception cref="InvalidOperationException">They were asked for before: the table is read once.</exception>
    public IEnumerable<BatchRow> Rows() =>
        Interlocked.Exchange(ref asked, 1) == 0 ? Each() : throw new InvalidOperationException("The rows of a batch can be gone through once.");

    private IEnumerable<BatchRow> Each()
    {
        // While one block is looked at the next is planned. The first are small, so that a table that is written by hand is answered row by row.
        var size = 1;
        var ahead = Begin(size);
        while (ahead is not null)
        {
            ((IAsyncResult)ahead).AsyncWaitHandle.WaitOne(); // waits asleep, where the task itself would first spin
            var planned = ahead.GetAwaiter().GetResult();
            size = Math.Min(2 * size, MostInBlock);
            ahead = Begin(size);
            foreach (var row in planned) yield return row;
        }
    }

    /// <summary>Reads so many rows and begins to plan them; null at the end of the table.</summary>
    private Task<BatchRow[]>? Begin(int size)
    {
        var block = new List<SpecimenRow>(size);
        while (block.Count < size && rows.MoveNext())
        {
            var row = rows.Current;
            block.Add(seen.Again(row.Id, row.Number, row.IdAt) is { } again ? row with { Findings = row.Findings.Insert(0, again) } : row);
        }

        return block.Count == 0 ? null : Task.Run(() => AllCores.Each(block, row => Guarded(row) with { Digest = row.Digest }));
    }

    private BatchRow Guarded(SpecimenRow row)
    {
        try
        {
            return Planned(row);
        }
#pragma warning disable CA1031 // Whatever went wrong with one animal, the others must not wait for it.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            var told = Finding.Error(
                "unforeseen-fault",
                UnforeseenFault,
                UnforeseenFaultRemedy,
                SourceSpan.At(table.File, row.Line, 1));
            return new(row.Number, row.Line, row.Id, null, row.Findings.Add(told)) { Fault = fault };
        }
    }

    /// <summary>Those choices that a protocol leaves.</summary>
    private ImmutableSortedDictionary<string, string> ChoicesFor(Protocol protocol) =>
        request.Choices.RemoveRange(request.Choices.Where(c => !protocol.Choices.Any(o => o.Name == c.Key && o.Options.Contains(c.Value))).Select(c => c.Key));

    private BatchRow Planned(SpecimenRow row)
    {
        if (row.Specimen is not { } specimen) return new(row.Number, row.Line, row.Id, null, row.Findings);
        var plan = new PlanRequest(specimen, request.Bench, request.Start);
        if (!request.Choices.IsEmpty
            && MeasurePass.Run(specimen, request.Planner.Shelf.Kinds).Value is { } body
            && SelectPass.Run(body, request.Planner.Pipeline.Classes).Value is { } protocol)
            plan = plan with { Choices = ChoicesFor(protocol) };
        var (made, draft) = make(plan);

        // What the plan says of the specimen it says of this row.
        var where = SourceSpan.At(table.File, row.Line, 1);
        return new(row.Number, row.Line, row.Id, made.Value, [.. row.Findings, .. made.Findings.Select(f => f.Where.IsKnown ? f : f with { Where = where })])
        {
            Draft = draft,
        };
    }
}
