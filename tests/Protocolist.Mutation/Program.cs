using System.Globalization;
using Protocolist.Mutation;

// Lies beside the tests' own build, with the mutated library in place of the library; see mutate.sh.
switch (args)
{
    case ["cover", var coverage, var part, var parts]:
        return Cover.Run(coverage, Number(part), Number(parts));
    case ["hunt", var report, var coverage, var results, var part, var parts, var seconds]:
        return Hunt.Run(report, coverage, results, Number(part), Number(parts), Number(seconds));
    case ["alone", var report, var results, var id]:
        return Alone.Run(report, results, Number(id));
    case ["score", var report, .. var results]:
        return Score.Run(report, results);
    default:
        Console.Error.WriteLine("cover COVERAGE PART PARTS | hunt REPORT COVERAGE RESULTS PART PARTS SECONDS | alone REPORT RESULTS ID | score REPORT RESULTS...");
        return 2;
}

static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
