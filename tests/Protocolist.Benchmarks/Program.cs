using System.Globalization;
using BenchmarkDotNet.Running;
using Protocolist.Benchmarks.Table;

switch (args)
{
    case ["table"]:
        Console.Write(Measured.Table(10_000));
        break;
    case ["table", var rows]:
        Console.Write(Measured.Table(int.Parse(rows, CultureInfo.InvariantCulture)));
        break;
    case ["batch", var rows]:
        BatchRun.Tell(int.Parse(rows, CultureInfo.InvariantCulture));
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        break;
}
