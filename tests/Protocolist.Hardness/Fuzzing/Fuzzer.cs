using System.Diagnostics;
using System.Globalization;

namespace Protocolist.Hardness.Fuzzing;

/// <summary>
/// Feeds a target with damaged texts. A text that comes to something new, by the ids of its findings, is kept and damaged further, so that the
/// search goes on where it found a way. What throws, or takes longer than five seconds, ends the run and is left as a file.
/// </summary>
internal static class Fuzzer
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    public static int Run(Target target, double seconds, IReadOnlyList<string> folder)
    {
        var random = new Random(20_270_301);
        var pool = new List<string>(target.Seeds);
        var known = new HashSet<string>(StringComparer.Ordinal);
        foreach (var seed in target.Seeds) known.Add(target.Read(seed));
        var clock = Stopwatch.StartNew();
        var (tried, slowest) = (0L, 0.0);
        var (text, since) = ("", long.MaxValue);
        using var watch = new Timer(_ =>
        {
            if (Volatile.Read(ref since) == long.MaxValue || Stopwatch.GetElapsedTime(Volatile.Read(ref since)) < Patience) return;
            Leave(folder, target.Name, text);
            Console.WriteLine($"{target.Name}: longer than {Patience.TotalSeconds} s");
            Environment.Exit(1);
        }, null, Patience, TimeSpan.FromSeconds(1));
        while (clock.Elapsed.TotalSeconds < seconds)
        {
            text = Mutation.Of(pool[random.Next(pool.Count)], pool, random);
            var began = Stopwatch.GetTimestamp();
            Volatile.Write(ref since, began);
            string came;
            try
            {
                came = target.Read(text);
            }
            catch (Exception fault)
            {
                Leave(folder, target.Name, text);
                Console.WriteLine($"{target.Name}: {fault}");
                return 1;
            }

            Volatile.Write(ref since, long.MaxValue);
            slowest = Math.Max(slowest, Stopwatch.GetElapsedTime(began).TotalSeconds);
            tried++;
            if (known.Count < 1_000 && known.Add(came)) pool.Add(text);
        }

        using var self = Process.GetCurrentProcess();
        var (time, peak) = (clock.Elapsed.TotalSeconds, self.PeakWorkingSet64 / 1e6);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{target.Name}: {tried} cases in {time:0} s, {tried / time:0}/s, {known.Count} outcomes, slowest {slowest:0.00} s, peak {peak:0} MB"));
        return 0;
    }

    private static void Leave(IReadOnlyList<string> folder, string name, string text)
    {
        var place = Path.Combine(folder.Count > 0 ? Directory.CreateDirectory(folder[0]).FullName : Path.GetTempPath(), $"{name}-{Guid.NewGuid():N}.txt");
        File.WriteAllText(place, text);
        Console.WriteLine(place);
    }
}
