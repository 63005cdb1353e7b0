using System.Globalization;

namespace Protocolist.Mutation;

/// <summary>What became of one mutant.</summary>
/// <param name="Id">The mutant.</param>
/// <param name="Fate">How it ended.</param>
/// <param name="By">The test that caught it, if one did.</param>
internal sealed record Result(int Id, Fate Fate, string By);

/// <summary>How a mutant ended.</summary>
internal enum Fate
{
    /// <summary>A test failed.</summary>
    Killed,

    /// <summary>The tests did not end, or the process died.</summary>
    TimedOut,

    /// <summary>Every test that passes it held.</summary>
    Survived,

    /// <summary>The tests that were run held, and there was no time for the rest: counted as survived.</summary>
    Capped,

    /// <summary>No test passes it: counted as survived.</summary>
    Unpassed,

    /// <summary>It is passed while something is made once: to be tried alone in a process.</summary>
    MadeOnce,
}

/// <summary>A file of results, a line each, that outlives the process.</summary>
internal sealed class Results(string path)
{
    private readonly string _flight = path + ".flight";

    public IReadOnlyList<Result> Read() => !File.Exists(path) ? [] :
        [.. File.ReadAllLines(path).Select(l => l.Split('\t')).Where(p => p.Length == 3).Select(p => new Result(int.Parse(p[0], CultureInfo.InvariantCulture), Enum.Parse<Fate>(p[1]), p[2]))];

    public void Write(int id, Fate fate, string by) => File.AppendAllText(path, $"{id}\t{fate}\t{by}\n");

    /// <summary>Notes which mutant is being tried, so that a process that dies of it is known to.</summary>
    public void Begin(int id) => File.WriteAllText(_flight, id.ToString(CultureInfo.InvariantCulture));

    public void End() => File.Delete(_flight);

    /// <summary>Counts the mutant of which the last process died.</summary>
    public void CountTheDead()
    {
        if (!File.Exists(_flight)) return;
        var id = int.Parse(File.ReadAllText(_flight), CultureInfo.InvariantCulture);
        if (Read().All(r => r.Id != id)) Write(id, Fate.TimedOut, "the process died");
        End();
    }
}
