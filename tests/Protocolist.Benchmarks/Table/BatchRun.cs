using System.Diagnostics;
using System.Globalization;
using Protocolist.Planning.Batching;

namespace Protocolist.Benchmarks.Table;

/// <summary>
/// A batch over a table of so many rows, as the command makes it: each row planned, summed up and forgotten. In a process of its own, so
/// that its peak of memory is its own.
/// </summary>
internal static class BatchRun
{
    /// <summary>What a process of its own says: rows, µs of processor time a row, µs by the clock a row, the peak in bytes, plans.</summary>
    public static double[] InAProcess(int rows)
    {
        string[] host = IsHost ? [Environment.GetCommandLineArgs()[0]] : [];
        string[] words = [.. host, "batch", rows.ToString(CultureInfo.InvariantCulture)];
        using var process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, words) { RedirectStandardOutput = true })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return [.. said.Trim().Split(' ').Select(w => double.Parse(w, CultureInfo.InvariantCulture))];
    }

    public static void Tell(int rows)
    {
        var table = Path.GetTempFileName();
        try
        {
            File.WriteAllLines(table, Fixture.Rows(rows));
            var (shelf, watch, before) = (Shelf.Bundled(), Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
            var plans = Run(File.OpenText(table), shelf);
            var spent = (Environment.CpuUsage.TotalTime - before).TotalMicroseconds;
            using var self = Process.GetCurrentProcess();
            var clock = watch.Elapsed.TotalMicroseconds / rows;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{rows} {spent / rows:0.0} {clock:0.0} {self.PeakWorkingSet64} {plans}"));
        }
        finally
        {
            File.Delete(table);
        }
    }

    /// <summary>How many rows gave a plan.</summary>
    public static int Run(TextReader table, Shelf shelf)
    {
        var (needs, plans) = (new JointNeeds(), 0);
        using (table)
        {
            foreach (var row in Batch.Open(table, "table.csv", new(new(shelf), Fixture.Prepared, Fixture.Start)).Value!.Rows())
            {
                if (row.Plan is null) continue;
                needs.Add(row.Plan);
                plans++;
            }
        }

        needs.List(Fixture.Bench, Fixture.Start.Date);
        return plans;
    }

    private static bool IsHost => Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet";
}
