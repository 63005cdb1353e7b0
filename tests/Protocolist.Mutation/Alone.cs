namespace Protocolist.Mutation;

/// <summary>Tries one mutant that sits in something made once: it is on from the first moment of the process.</summary>
internal static class Alone
{
    public static int Run(string report, string results, int id)
    {
        var mutant = Mutant.Read(report).Single(m => m.Id == id);
        var book = new Results(results);
        var library = new MutatedLibrary { Active = id };
        var running = Task.Factory.StartNew(() => FirstFailure(mutant), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        if (!running.Wait(TimeSpan.FromSeconds(120))) book.Write(id, Fate.TimedOut, "");
        else book.Write(id, running.Result is null ? Fate.Survived : Fate.Killed, running.Result ?? "");
        library.Sound();
        Environment.Exit(0);
        return 0;
    }

    /// <summary>The tests of its subject, then of its room and the references, then all of the quick rooms.</summary>
    private static string? FirstFailure(Mutant mutant)
    {
        TestHost tests;
        try
        {
            tests = TestHost.Find();
        }
        catch (TypeInitializationException fault)
        {
            return $"finding the tests: {fault.TypeName}";
        }

        var near = tests.Cases.Where(c => c.Key.Contains($".Tests.{mutant.Room}.", StringComparison.Ordinal) || c.Key.Contains(".Reference.", StringComparison.Ordinal)).ToList();
        var own = near.Where(c => c.Key.Contains($".{mutant.Subject}Tests.", StringComparison.Ordinal)).ToList();
        return tests.Run([.. own.SelectMany(c => c)]).Failed ?? tests.Run([.. near.Except(own).SelectMany(c => c)]).Failed;
    }
}
