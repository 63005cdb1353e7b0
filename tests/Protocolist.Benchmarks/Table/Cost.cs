using System.Diagnostics;

namespace Protocolist.Benchmarks.Table;

/// <summary>What one turn of some work costs.</summary>
/// <param name="Clock">By the clock, µs: the median of the samples.</param>
/// <param name="Processor">Time of all processors, µs: the mean over the samples, the collector's share included.</param>
/// <param name="Bytes">What it allocates on all threads.</param>
internal readonly record struct Cost(double Clock, double Processor, double Bytes)
{
    private const int Samples = 15;

    /// <summary>Rounds of the warm-up that bring nothing more before it is over: compiling much for good takes the runtime many seconds.</summary>
    private const int Patience = 5;

    private static readonly TimeSpan Round = TimeSpan.FromMilliseconds(800);
    private static readonly TimeSpan LongestWarmUp = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan Sample = TimeSpan.FromMilliseconds(80);

    /// <summary>Measures work after it was run until it became no faster.</summary>
    public static Cost Of(Func<object?> work)
    {
        var each = Math.Max(1, (int)(Sample.TotalMicroseconds / Warm(work)));
        var clocks = new double[Samples];
        GC.Collect();
        GC.WaitForPendingFinalizers();
        var (processor, bytes) = (Environment.CpuUsage.TotalTime, GC.GetTotalAllocatedBytes(precise: true));
        for (var sample = 0; sample < Samples; sample++)
        {
            var watch = Stopwatch.GetTimestamp();
            for (var i = 0; i < each; i++) work();
            clocks[sample] = Stopwatch.GetElapsedTime(watch).TotalMicroseconds / each;
        }

        double all = Samples * each;
        processor = Environment.CpuUsage.TotalTime - processor;
        bytes = GC.GetTotalAllocatedBytes(precise: true) - bytes;
        Array.Sort(clocks);
        return new(clocks[Samples / 2], processor.TotalMicroseconds / all, bytes / all);
    }

    /// <summary>The best round's µs a turn.</summary>
    private static double Warm(Func<object?> work)
    {
        var (best, idle, whole) = (double.MaxValue, 0, Stopwatch.StartNew());
        while (idle < Patience && whole.Elapsed < LongestWarmUp)
        {
            var (turns, watch) = (0, Stopwatch.StartNew());
            for (; watch.Elapsed < Round || turns < 2; turns++) work();
            var turn = watch.Elapsed.TotalMicroseconds / turns;
            idle = turn < 0.97 * best ? 0 : idle + 1;
            best = Math.Min(best, turn);
        }

        return best;
    }
}
