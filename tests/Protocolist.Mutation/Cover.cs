using System.Text.Json;

namespace Protocolist.Mutation;

/// <summary>Which test passes which mutants, and how long it takes once the process is warm.</summary>
/// <param name="Key">The test.</param>
/// <param name="Seconds">Its time.</param>
/// <param name="Passes">The mutants it passes.</param>
internal sealed record Covering(string Key, double Seconds, int[] Passes)
{
    /// <summary>In place of a test's name: what is passed while everything that is made once is made.</summary>
    public const string MadeOnce = "";

    /// <summary>Reads what each part of the covering wrote.</summary>
    public static IReadOnlyList<Covering> Read(string files) => [.. files.Split(',').SelectMany(f => JsonSerializer.Deserialize<List<Covering>>(File.ReadAllText(f))!)];
}

/// <summary>Finds out which test passes which mutants.</summary>
internal static class Cover
{
    public static int Run(string coverage, int part, int parts)
    {
        var library = new MutatedLibrary();
        library.Captures = true;
        TestHost? found = null;
        // Finding the tests makes much of it already: their rows are made of the library's lists.
        var once = library.PassedIn(() => library.MakeWhatIsMadeOnce((found = TestHost.Find()).Assembly));
        var tests = found!;
        List<Covering> covering = [new(Covering.MadeOnce, 0, once)];
        foreach (var test in tests.Cases.Where((_, i) => i % parts == part))
        {
            library.Captures = true;
            var run = new TestRun();
            var passes = library.PassedIn(() => run = tests.Run([.. test]));
            library.Captures = false;
            if (run.Failed is not null) Console.WriteLine($"fails without any mutant, left out: {test.Key}");
            else if (passes.Length > 0) covering.Add(new(test.Key, tests.Run([.. test]).Seconds, passes));
        }

        File.WriteAllText(coverage, JsonSerializer.Serialize(covering));
        Console.WriteLine($"{tests.Cases.Count} tests, of which {covering.Count - 1} pass mutants in {covering.Sum(c => c.Seconds):0.0} s");
        return 0;
    }
}
