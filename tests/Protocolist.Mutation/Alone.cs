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

    /// <summary>The first of the tests of its room, and of the references, that fails.</summary>
    private static string? FirstFailure(Mutant mutant)
    {
        TestHost tests;
        try
        {
            tests = TestHost.Find($".Tests.{mutant.Room}.", ".Reference.");
        }
        catch (TypeInitializationException fault)
        {
            return $"finding the tests: {fault.TypeName}";
        }

        // What is made once is mostly words and tables: the kept texts and the tests of whole lists see most of it.
        var first = tests.Cases.Where(c => c.Key.Contains($".{mutant.Subject}Tests.", StringComparison.Ordinal) || c.Key.Contains("Kept", StringComparison.Ordinal) || c.Key.Contains(".All", StringComparison.Ordinal) || c.Key.Contains(".Every", StringComparison.Ordinal)).ToList();
        return tests.Run([.. first.SelectMany(c => c)]).Failed ?? tests.Run([.. tests.Cases.Except(first).SelectMany(c => c)]).Failed;
    }
}
