using System.Diagnostics;

namespace Protocolist.Sameness;

/// <summary>Works out all cases on all cores and writes what they say, in the order of the cases.</summary>
internal static class Output
{
    private const int Chunk = 400;

    public static void Write(string folder, string target)
    {
        Directory.CreateDirectory(target);
        var (watch, plans) = (Stopwatch.StartNew(), 0);
        var library = new Library(folder);
        using var texts = new StreamWriter(Path.Combine(target, "plans.txt"));
        using var digests = new StreamWriter(Path.Combine(target, "digests.txt"));
        foreach (var cases in Case.ReadAll(Path.Combine(folder, "cases.jsonl")).Chunk(Chunk))
        {
            var written = new (string Text, string Digest)[cases.Length][];
            Parallel.For(0, cases.Length, i => written[i] = [.. FactsOf(library, cases[i]).Select(f => f.Write())]);
            foreach (var (text, digest) in written.SelectMany(w => w))
            {
                texts.Write(text);
                digests.Write(digest);
                plans++;
            }
        }

        Console.WriteLine($"{plans} plans and lists in {watch.Elapsed.TotalSeconds:0} s");
    }

    /// <summary>A case that breaks the library is a fact too, and does not hide the others.</summary>
    private static IEnumerable<Facts> FactsOf(Library library, Case asked)
    {
        try
        {
            return [.. library.FactsOf(asked)];
        }
        catch (Exception fault)
        {
            var facts = new Facts(asked.Key);
            facts.Line("head", "threw", fault.GetType().Name);
            Console.Error.WriteLine($"{asked.Key}: {fault}");
            return [facts];
        }
    }
}
