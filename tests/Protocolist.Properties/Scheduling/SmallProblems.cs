using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Properties.Scheduling;

/// <summary>Random small chains.</summary>
public static class SmallChains
{
    public static Arbitrary<SmallProblem> Some() => SmallProblems.Some(chain: true).ToArbitrary();
}

/// <summary>Random small graphs, some with two ways between the same jobs.</summary>
public static class SmallGraphs
{
    public static Arbitrary<SmallProblem> Some() => SmallProblems.Some(chain: false).ToArbitrary();
}

internal static class SmallProblems
{
    public static Gen<SmallProblem> Some(bool chain) =>
        from count in Gen.Choose(1, 3)
        from jobs in Gen.CollectToArray(Enumerable.Range(0, count), i => SomeJob($"job{i}"))
        from lags in Gen.ArrayOf(SomeWindow, count)
        from anchors in Gen.ArrayOf(Gen.Elements(Anchor.End, Anchor.End, Anchor.Start), count)
        from befores in Gen.ArrayOf(Gen.Choose(0, 9), count)
        from skip in Gen.ArrayOf(Gen.Elements(false, false, true), count)
        from cuts in Gen.ArrayOf(Gen.Choose(0, SmallProblem.Length), 6)
        from taken in Gen.ListOf(SomeTaken)
        let graph = chain ? JobGraph.Chain(lags.Zip(jobs)) : JobGraph.Of(jobs, Links(jobs, lags, anchors, befores, skip))
        select new SmallProblem(graph, [.. Apart(cuts)], [.. taken.Take(3)]);

    private static IEnumerable<Link> Links(Job[] jobs, Window[] lags, Anchor[] anchors, int[] befores, bool[] skip)
    {
        for (var i = 1; i < jobs.Length; i++)
        {
            yield return new Link(befores[i] % i, i, lags[i], anchors[i]);
            if (i == 2 && !skip[i]) yield return new Link(0, 2, lags[0], anchors[0]);
        }
    }

    private static IEnumerable<(int From, int To)> Apart(int[] cuts)
    {
        Array.Sort(cuts);
        var end = -1;
        for (var i = 0; i < cuts.Length; i += 2)
        {
            if (cuts[i] <= end || cuts[i + 1] == cuts[i]) continue;
            yield return (cuts[i], cuts[i + 1]);
            end = cuts[i + 1];
        }
    }

    private static Gen<Window> SomeWindow =>
        from least in Gen.Choose(0, 3)
        from more in Gen.Elements<int?>(0, 0, 1, 2, 4, null)
        select Window.Of(Duration.FromMinutes(least), more is { } m ? Duration.FromMinutes(least + m) : null);

    private static Gen<Duration?> SomeWork => Gen.Elements<Duration?>(null, null, Duration.Zero, Duration.FromMinutes(1), Duration.FromMinutes(2));

    private static Gen<Instant?> Bound(int from, int to) =>
        Gen.Frequency((6, Gen.Constant<Instant?>(null)), (1, Gen.Choose(from, to).Select(m => (Instant?)SmallProblem.At(m))));

    private static Gen<Need[]> SomeNeeds => Gen.Elements<Need[]>([], [], [new("tub", Throughout: true)], [new("person")], [new("tub", true, 2), new("person")]);

    private static Gen<(string, int, int, int)> SomeTaken =>
        from resource in Gen.Elements("tub", "person")
        from start in Gen.Choose(0, SmallProblem.Length - 1)
        from length in Gen.Choose(1, 4)
        select (resource, start, start + length, 1);

    private static Gen<Job> SomeJob(string id) =>
        from lasts in SomeWindow
        from first in SomeWork
        from last in SomeWork
        from notBefore in Bound(0, 5)
        from startBy in Bound(4, SmallProblem.Length)
        from endNotBefore in Bound(0, 7)
        from endBy in Bound(6, SmallProblem.Length)
        from needs in SomeNeeds
        select new Job(id, lasts) { HandsOnAtStart = first, HandsOnAtEnd = last, NotBefore = notBefore, StartBy = startBy, EndNotBefore = endNotBefore, EndBy = endBy, Needs = [.. needs] };
}
