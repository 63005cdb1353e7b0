using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Testing;

namespace Protocolist.Properties.Checks;

/// <summary>Where order means nothing, no order changes what is found.</summary>
public class OrderProperties
{
    private static readonly ImmutableArray<SourceText> Files = BundledProtocols.Sources();
    private static readonly Shelf Bundled = Shelf.Of([Files]);

    [Fact]
    public void Order_of_bottles_vessels_recipes_purchases_waste_and_rounds_changes_no_finding() =>
        Prop.ForAll(ReviewCases.Spoilt, Seeds, (plan, seed) => Same(plan, ListsShuffled(plan, new(seed)))).Try(250);

    [Fact]
    public void Order_of_tasks_and_of_discarding_among_themselves_changes_no_finding() =>
        Prop.ForAll(ReviewCases.Spoilt, Seeds, (plan, seed) => Same(plan, plan with { Steps = [.. RunsShuffled(plan.Steps, new(seed))] })).Try(150);

    [Fact]
    public void Order_of_protocol_files_and_of_the_entries_in_them_changes_no_finding()
    {
        var shelves = Enumerable.Range(1, 3).Select(seed => new Planner(Shelf.Of([Shuffled(Files.Select(f => Shuffled(f, new(seed))), new(seed))]))).ToList();
        Assert.All(shelves, s => Assert.Equal(Words(Bundled.Findings), Words(s.Shelf.Findings)));
        Prop.ForAll(PlanCases.Over(Bundled), Seeds, (made, seed) =>
            Same(made.Made.Findings, shelves[seed % shelves.Count].Plan(made.Request).Findings)).Try(60);
    }

    [Fact]
    public void Order_of_the_entries_of_specimen_and_bench_changes_no_finding() =>
        Prop.ForAll(PlanCases.Over(Bundled), made =>
        {
            var other = new PlanCase(made.SpecimenFile.Reversed(), made.BenchFile, made.Planner, made.Request.Start, made.Request.Choices, made.Turn);
            return Same(made.Made.Findings, other.Made.Findings);
        }).Try(60);

    private static Arbitrary<int> Seeds => Arb.From(Gen.Choose(0, 1 << 20));

    private static ReviewCase ListsShuffled(ReviewCase plan, Random random) => plan with
    {
        Bench = plan.Bench with { Stock = [.. Shuffled(plan.Bench.Stock, random)], Vessels = [.. Shuffled(plan.Bench.Vessels, random)] },
        Care = [.. Shuffled(plan.Care, random)],
        Plan = plan.Plan with
        {
            Recipes = [.. Shuffled(plan.Plan.Recipes, random)],
            Purchases = [.. Shuffled(plan.Plan.Purchases, random)],
            Waste = [.. Shuffled(plan.Plan.Waste, random)],
            Fluids = [.. Shuffled(plan.Plan.Fluids, random)],
            Label = [.. Shuffled(plan.Plan.Label, random)],
            Care = [.. Shuffled(plan.Plan.Care, random)],
        },
    };

    /// <summary>Tasks that follow each other, and steps of discarding that follow each other, in another order.</summary>
    private static IEnumerable<ReviewStep> RunsShuffled(IEnumerable<ReviewStep> steps, Random random)
    {
        var run = new List<ReviewStep>();
        foreach (var step in steps)
        {
            if (run.Count > 0 && run[0].Kind != step.Kind)
            {
                foreach (var one in Shuffled(run, random)) yield return one;
                run.Clear();
            }

            if (step.Kind is StageKind.Task or StageKind.Discard) run.Add(step);
            else yield return step;
        }

        foreach (var one in Shuffled(run, random)) yield return one;
    }

    /// <summary>A file with its top-level entries in another order; comments go with the entry below them.</summary>
    private static SourceText Shuffled(SourceText file, Random random)
    {
        var blocks = new List<string>();
        var block = "";
        foreach (var line in file.Text.Split('\n'))
        {
            if (line.Length > 0 && char.IsAsciiLetter(line[0]) && block.Length > 0)
            {
                blocks.Add(block);
                block = "";
            }

            block += line + "\n";
        }

        blocks.Add(block);
        return new(file.Name, string.Concat(Shuffled(blocks, random)));
    }

    private static T[] Shuffled<T>(IEnumerable<T> all, Random random)
    {
        T[] shuffled = [.. all];
        random.Shuffle(shuffled);
        return shuffled;
    }

    private static Property Same(ReviewCase one, ReviewCase other) => Same(AllChecks.Review(one), AllChecks.Review(other));

    private static Property Same(IEnumerable<Finding> one, IEnumerable<Finding> other)
    {
        var (before, after) = (Words(one), Words(other));
        return before.SequenceEqual(after).Label($"lost: {string.Join(" | ", before.Except(after))}\nnew: {string.Join(" | ", after.Except(before))}");
    }

    /// <summary>The set of findings without their places in a file; a message that lists things may list them in another order.</summary>
    private static List<string> Words(IEnumerable<Finding> findings) =>
        [.. findings.Select(f => $"{f.Severity} {f.Id} {f.Subject}: {Sorted(f.Message.ToString())}").Distinct().Order(StringComparer.Ordinal)];

    private static string Sorted(string text) => string.Join(' ', text.Split([' ', ',', ';', ':', '.'], StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal));
}
