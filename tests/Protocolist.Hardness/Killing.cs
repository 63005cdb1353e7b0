using System.Diagnostics;
using System.Globalization;

namespace Protocolist.Hardness;

/// <summary>
/// The program killed at any moment of its writing, with no leave to tidy up. A plan's file is then the old one or the new one, whole; a batch goes on
/// and ends with the same files.
/// </summary>
internal static class Killing
{
    private static readonly string[] Kinds = ["rows.csv", "shopping.csv", "progress.json"];

    public static int Run(int times)
    {
        var folder = Directory.CreateTempSubdirectory("protocolist-kill-").FullName;
        try
        {
            var random = new Random(20_270_301);
            var lost = Plans(folder, times / 2, random) + Batches(folder, times - (times / 2), random);
            Console.WriteLine($"{times - lost} of {times} without loss");
            return lost == 0 ? 0 : 1;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static int Plans(string folder, int times, Random random)
    {
        string[] Words(string start) =>
        [
            "plan", Folders.Of("samples", "specimens", "harbour-otter.yaml"), "--bench", Folders.Of("samples", "benches", "skerry-point.yaml"), "--start",
            start, "--json", "--out", "plan.json",
        ];
        var place = Path.Combine(folder, "plan.json");
        var texts = new List<string>();
        var whole = TimeSpan.Zero;
        foreach (var start in (string[])["2027-03-01T09:00", "2027-03-08T09:00"])
        {
            var clock = Stopwatch.StartNew();
            Begin(folder, Words(start)).WaitForExit();
            whole = clock.Elapsed;
            texts.Add(File.ReadAllText(place));
        }

        var (lost, inTime) = (0, 0);
        for (var i = 0; i < times; i++)
        {
            // The later half of a run is where it writes.
            var start = i % 2 == 0 ? "2027-03-01T09:00" : "2027-03-08T09:00";
            inTime += KilledAfter(Begin(folder, Words(start)), whole * (0.5 + (random.NextDouble() * 0.6))) ? 1 : 0;
            if (texts.Contains(File.ReadAllText(place))) continue;
            Console.WriteLine($"plan, run {i}: the file is neither the old one nor the new one");
            lost++;
        }

        Console.WriteLine($"plans: {times - lost} of {times} whole; {inTime} were killed before their end, the others had ended");
        return lost;
    }

    private static int Batches(string folder, int times, Random random)
    {
        const int Rows = 300;
        File.WriteAllText(
            Path.Combine(folder, "finds.csv"),
            "specimen,group,mass (g),length (mm)\n" + string.Concat(
                Enumerable.Range(1, Rows).Select(n => string.Create(CultureInfo.InvariantCulture, $"S{n},gastropod,{10 + (n % 9)},{30 + (n % 9)}\n"))));
        string[] Words(string name, bool goesOn) =>
        [
            "batch", "finds.csv", "--bench", Folders.Of("samples", "benches", "skerry-point.yaml"), "--start", "2027-03-01T09:00", "--out", name,
            .. goesOn ? (string[])["--resume"] : [],
        ];
        var clock = Stopwatch.StartNew();
        Begin(folder, Words("whole", false)).WaitForExit();
        var wholeTime = clock.Elapsed;
        var whole = Kinds.Select(k => File.ReadAllText(Path.Combine(folder, $"whole.{k}"))).ToList();
        var (lost, killed, runs) = (0, 0, 0);
        while (killed < times && runs < times * 20)
        {
            // One batch after another, each killed again and again until it is through.
            var goesOn = false;
            for (var attempt = 0; attempt < 200; attempt++)
            {
                runs++;
                var process = Begin(folder, Words("half", goesOn));
                if (killed < times && KilledAfter(process, wholeTime * (0.1 + (random.NextDouble() * 0.8))))
                {
                    killed++;
                    goesOn = Directory.GetFiles(folder, "half.*").Length + Directory.GetFiles(folder, ".half*").Length > 0;
                    continue;
                }

                process.WaitForExit();
                if (process.ExitCode is 0 or 1) break;
                goesOn = !goesOn;
            }

            var same = Kinds.Select(k => Path.Combine(folder, $"half.{k}")).Select((p, i) => File.Exists(p) && File.ReadAllText(p) == whole[i]).ToList();
            if (same.Contains(false))
            {
                lost++;
                Console.WriteLine($"batch: {string.Join(", ", Kinds.Where((_, i) => !same[i]))} differ from those of a run that was left alone");
            }

            foreach (var file in Directory.GetFiles(folder, "half.*")) File.Delete(file);
        }

        Console.WriteLine($"batches: killed {killed} times in {runs} runs, {lost} ended otherwise than a run that was left alone");
        return lost;
    }

    /// <summary>Kills a program after a while; whether it was still running.</summary>
    private static bool KilledAfter(Process process, TimeSpan time)
    {
        if (process.WaitForExit(time)) return false;
        process.Kill();
        process.WaitForExit();
        return true;
    }

    private static Process Begin(string folder, string[] words)
    {
        var process = Process.Start(new ProcessStartInfo(Folders.Program, words)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }
}
