using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Testing.Invariants;

namespace Protocolist.Testing;

/// <summary>Everything that holds of every plan. Run it over your own protocols before an animal is at stake.</summary>
/// <remarks>A whole test of a folder of house protocols, here with xunit:
/// <code>
/// public class HouseProtocolTests
/// {
///     [Fact]
///     public void Every_plan_by_a_house_protocol_holds_together()
///     {
///         var files = Directory.EnumerateFiles("house", "*.yaml").Select(f => new SourceText(f, File.ReadAllText(f))).ToList();
///         PlanInvariants.Check(Shelf.BundledWith(files), cases: 200);
///     }
/// }
/// </code>
/// </remarks>
public static class PlanInvariants
{
    /// <summary>All of them, by subject: times, fluids, reasons, text, and pairs of plans.</summary>
    public static ImmutableArray<PlanInvariant> All { get; } =
        [.. TimeInvariants.All, .. FluidInvariants.All, .. ReasonInvariants.All, .. WritingInvariants.All, .. PairInvariants.All];

    /// <summary>The invariant of that id.</summary>
    /// <param name="id">Its id.</param>
    /// <returns>The invariant.</returns>
    /// <exception cref="ArgumentException">There is none of that id.</exception>
    public static PlanInvariant Find(string id) =>
        All.FirstOrDefault(i => i.Id == id) ?? throw new ArgumentException($"There is no invariant '{id}'.", nameof(id));

    /// <summary>All invariants as one property; a case that breaks any of them shrinks as one.</summary>
    /// <param name="cases">The cases.</param>
    /// <returns>A property for FsCheck to check.</returns>
    public static Property Over(Arbitrary<PlanCase> cases) => Prop.ForAll(cases, c =>
    {
        var faults = All.SelectMany(i => i.Faults(c).Select(f => $"{i.Id}: {f}")).ToList();
        return (faults.Count == 0).Label(string.Join("; ", faults));
    });

    /// <summary>Checks all invariants over generated specimens, benches, starts and choices for all protocols of a shelf.</summary>
    /// <param name="shelf">The protocols.</param>
    /// <param name="cases">How many cases, 1 or more.</param>
    /// <exception cref="Exception">An invariant does not hold; the message shows the smallest case found and how to repeat the run.</exception>
    public static void Check(Shelf shelf, int cases = 100) => Check(shelf, Config.QuickThrowOnFailure.WithMaxTest(cases));

    /// <summary>Checks all invariants over generated specimens, benches, starts and choices, drawn as a configuration says: its replay repeats a run.</summary>
    /// <param name="shelf">The protocols.</param>
    /// <param name="draw">How cases are drawn; it should throw on failure.</param>
    /// <exception cref="Exception">An invariant does not hold; the message shows the smallest case found and how to repeat the run.</exception>
    public static void Check(Shelf shelf, Config draw) => Over(PlanCases.Over(shelf)).Check(draw);

    /// <summary>Checks all invariants over given cases.</summary>
    /// <param name="cases">The cases.</param>
    /// <param name="count">How many of them, 1 or more.</param>
    /// <exception cref="Exception">An invariant does not hold; the message shows the smallest case found and how to repeat the run.</exception>
    public static void Check(Arbitrary<PlanCase> cases, int count) => Over(cases).Check(Config.QuickThrowOnFailure.WithMaxTest(count));
}
