using Xunit.Sdk;

namespace Protocolist.Mutation;

/// <summary>Tries one mutant after the other in one warm process: the likeliest and quickest tests first, up to the first that fails.</summary>
internal static class Hunt
{
    /// <summary>Ends the process so that a new one goes on: after a mutant that does not end, or that left something broken behind.</summary>
    private const int GoOnAnew = 3;

    public static int Run(string report, string coverage, string results, int part, int parts, int seconds)
    {
        var library = new MutatedLibrary();
        var tests = TestHost.Find();
        library.MakeWhatIsMadeOnce(tests.Assembly);
        var passing = new Dictionary<int, List<Covering>>();
        var once = new HashSet<int>();
        foreach (var covering in Covering.Read(coverage))
        {
            if (covering.Key == Covering.MadeOnce)
            {
                once.UnionWith(covering.Passes);
                continue;
            }

            foreach (var id in covering.Passes) (passing.TryGetValue(id, out var list) ? list : passing[id] = []).Add(covering);
        }

        var book = new Results(results);
        book.CountTheDead();
        var done = book.Read().Select(r => r.Id).ToHashSet();
        var caught = new Dictionary<(string File, string Test), int>();
        var isFirst = true;
        foreach (var mutant in Mutant.Read(report).Where((_, i) => i % parts == part).Where(m => !done.Contains(m.Id)))
        {
            if (!passing.TryGetValue(mutant.Id, out var covering))
            {
                book.Write(mutant.Id, once.Contains(mutant.Id) ? Fate.MadeOnce : Fate.Unpassed, "");
                continue;
            }

            book.Begin(mutant.Id);
            var (fate, by) = Try(mutant, Ordered(mutant, covering, caught), library, tests, seconds);
            if (fate == Fate.TimedOut)
            {
                book.Write(mutant.Id, fate, by);
                book.End();
                return Leave();
            }

            // A test that goes on failing with no mutant on failed because of something that an earlier mutant left behind, or this one.
            if (fate == Fate.Killed && tests.Run([.. tests.Cases[by]]).Failed is not null)
            {
                if (isFirst) book.Write(mutant.Id, fate, by);
                book.End();
                return Leave();
            }

            if (fate == Fate.Killed) caught[(mutant.File, by)] = caught.GetValueOrDefault((mutant.File, by)) + 1;
            book.Write(mutant.Id, fate, by);
            book.End();
            isFirst = false;
        }

        return 0;
    }

    /// <summary>Tests that caught others of the file, for their time, then the file's own, then the room's, then the rest; the quick before the slow.</summary>
    private static IEnumerable<Covering> Ordered(Mutant mutant, IEnumerable<Covering> covering, Dictionary<(string File, string Test), int> caught) => covering
        .OrderByDescending(c => caught.GetValueOrDefault((mutant.File, c.Key)) / (c.Seconds + 0.02))
        .ThenBy(c => (c.Seconds + 0.002) * (c.Key.Contains($".{mutant.Subject}Tests.", StringComparison.Ordinal) ? 0.05 : c.Key.Contains($".Tests.{mutant.Room}.", StringComparison.Ordinal) ? 0.3 : 1));

    private static (Fate Fate, string By) Try(Mutant mutant, IEnumerable<Covering> covering, MutatedLibrary library, TestHost tests, int seconds)
    {
        var (spent, inChunk, chunkOf) = (0.0, 0.0, 0.05);
        var chunk = new List<ITestCase>();
        foreach (var test in covering)
        {
            if (spent > seconds) return RunChunk() ?? (Fate.Capped, "");
            chunk.AddRange(tests.Cases[test.Key]);
            (spent, inChunk) = (spent + test.Seconds, inChunk + test.Seconds);
            if (inChunk < chunkOf) continue;
            if (RunChunk() is { } ended) return ended;
            chunkOf = Math.Min(1, 3 * chunkOf);
        }

        return RunChunk() ?? (Fate.Survived, "");

        (Fate, string)? RunChunk()
        {
            if (chunk.Count == 0) return null;
            library.Active = mutant.Id;
            var running = Task.Factory.StartNew(() => tests.Run(chunk), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            if (!running.Wait(TimeSpan.FromSeconds(4 + 12 * inChunk))) return (Fate.TimedOut, "");
            library.Sound();
            (chunk, inChunk) = ([], 0);
            return running.Result.Failed is { } by ? (Fate.Killed, by) : null;
        }
    }

    private static int Leave()
    {
        Environment.Exit(GoOnAnew);
        return GoOnAnew;
    }
}
