using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Testing;

/// <summary>One specimen, bench, start and set of choices, from which a plan is made once, when first asked for. Immutable.</summary>
public sealed class PlanCase
{
    private readonly Lazy<Checked<Plan>> _made;

    /// <summary>Makes a case.</summary>
    /// <param name="specimen">A specimen file that reads.</param>
    /// <param name="bench">A bench file that reads.</param>
    /// <param name="planner">What makes the plan.</param>
    /// <param name="start">The earliest start, on the bench's clocks.</param>
    /// <param name="choices">Choice → option.</param>
    /// <param name="turn">By how much invariants over two plans change something, from 1 to 100.</param>
    /// <exception cref="ArgumentException">A file does not read.</exception>
    public PlanCase(FileSketch specimen, FileSketch bench, Planner planner, LocalDateTime start, ImmutableSortedDictionary<string, string> choices, int turn)
    {
        ArgumentNullException.ThrowIfNull(specimen);
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(planner);
        (SpecimenFile, BenchFile, Turn) = (specimen, bench, turn);
        Planner = planner;
        Request = new(Read(specimen, SpecimenReader.Read), BenchOf(bench), start) { Choices = choices };
        _made = new(() => planner.Plan(Request));
    }

    /// <summary>The specimen file.</summary>
    public FileSketch SpecimenFile { get; }

    /// <summary>The bench file.</summary>
    public FileSketch BenchFile { get; }

    /// <summary>By how much invariants over two plans change something, from 1 to 100.</summary>
    public int Turn { get; }

    /// <summary>What makes the plan.</summary>
    public Planner Planner { get; }

    /// <summary>What is asked of the planner.</summary>
    public PlanRequest Request { get; }

    /// <summary>What the planner made of it.</summary>
    public Checked<Plan> Made => _made.Value;

    /// <summary>The files and options with which the case can be planned again by hand.</summary>
    /// <returns>The text that a failed property shows.</returns>
    public override string ToString() => string.Join('\n',
    [
        "--- specimen",
        SpecimenFile.Text + "--- bench",
        BenchFile.Text
            + $"--- start {Request.Start:uuuu-MM-dd'T'HH:mm}, choices {string.Join(", ", Request.Choices.Select(c => $"{c.Key}={c.Value}"))}, turn {Turn}",
        Made.Value is { } plan ? $"--- planned by {plan.Protocol.Id}" : $"--- no plan: {string.Join("; ", Made.Findings)}",
    ]);

    internal static Bench BenchOf(FileSketch bench) => Read(bench, s => BenchReader.Read(s, DateTimeZoneProviders.Tzdb));

    private static T Read<T>(FileSketch file, Func<SourceText, Checked<T>> reader)
        where T : class
    {
        var read = reader(file.Source);
        return read.Value ?? throw new ArgumentException($"This file does not read: {string.Join("; ", read.Findings)}\n{file.Text}", nameof(file));
    }
}
