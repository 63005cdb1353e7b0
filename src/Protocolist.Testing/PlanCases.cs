using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using NodaTime;

namespace Protocolist.Testing;

/// <summary>Generates what plans are made from.</summary>
public static class PlanCases
{
    private static readonly LocalDateTime First = new(2027, 1, 1, 0, 0);

    /// <summary>Specimens of all classes of a shelf, on generated benches, with starts over two years and any choices.</summary>
    /// <param name="shelf">The protocols to try.</param>
    /// <returns>An arbitrary with shrinking: first the files, then the choices, then the start.</returns>
    public static Arbitrary<PlanCase> Over(Shelf shelf) => Over(shelf, BenchGenerator.Valid);

    /// <summary>As <see cref="Over(Shelf)"/>, on benches of one's own.</summary>
    /// <param name="shelf">The protocols to try.</param>
    /// <param name="benches">The benches; <c>Arb.From(Gen.Constant(FileSketch.Of(text)))</c> is one bench always.</param>
    /// <returns>An arbitrary with shrinking.</returns>
    public static Arbitrary<PlanCase> Over(Shelf shelf, Arbitrary<FileSketch> benches)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(benches);
        var planner = new Planner(shelf);
        var cases =
            from specimen in SpecimenGenerator.Valid(shelf).Generator
            from bench in benches.Generator
            from start in Starts
            from pick in Gen.Choose(0, 1 << 20)
            from turn in Gen.Choose(1, 100)
            select Chosen(specimen, bench, planner, start, pick, turn);
        return Arb.From(cases, c => Shrink(c, benches));
    }

    /// <summary>Starts on any quarter of an hour of two years, so that nights, closed weeks and clock changes all come.</summary>
    public static Gen<LocalDateTime> Starts { get; } =
        from day in Gen.Choose(0, 729) from quarter in Gen.Choose(0, 95) select First.PlusDays(day).PlusMinutes(15 * quarter);

    /// <summary>The choices are those of the protocol that serves, which only a first plan tells.</summary>
    private static PlanCase Chosen(FileSketch specimen, FileSketch bench, Planner planner, LocalDateTime start, int pick, int turn)
    {
        var plain = new PlanCase(specimen, bench, planner, start, ImmutableSortedDictionary<string, string>.Empty, turn);
        if (plain.Made.Value is not { } plan || planner.Shelf.Find(plan.Protocol.Id) is not { Choices.IsEmpty: false } protocol) return plain;
        var choices = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var choice in protocol.Choices)
        {
            (pick, var option) = Math.DivRem(pick, choice.Options.Length + 1);
            if (option < choice.Options.Length) choices[choice.Name] = choice.Options[option];
        }

        return With(plain, choices: choices.ToImmutable());
    }

    private static IEnumerable<PlanCase> Shrink(PlanCase from, Arbitrary<FileSketch> benches)
    {
        foreach (var bench in benches.Shrinker(from.BenchFile)) yield return With(from, bench: bench);
        foreach (var specimen in from.SpecimenFile.Shrink()) yield return With(from, specimen: specimen);
        foreach (var name in from.Request.Choices.Keys) yield return With(from, choices: from.Request.Choices.Remove(name));
        var noon = First.PlusDays(3).PlusHours(9);
        if (from.Request.Start != noon) yield return With(from, start: noon);
    }

    private static PlanCase With(
        PlanCase from,
        FileSketch? specimen = null,
        FileSketch? bench = null,
        ImmutableSortedDictionary<string, string>? choices = null,
        LocalDateTime? start = null) =>
        new(specimen ?? from.SpecimenFile, bench ?? from.BenchFile, from.Planner, start ?? from.Request.Start, choices ?? from.Request.Choices, from.Turn);
}
