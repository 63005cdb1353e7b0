using System.Diagnostics;
using Protocolist.Cli;

namespace Protocolist.Hardness;

/// <summary>
/// Command lines as nobody should write them. Each ends with one of the four codes, within its time, and shows no stack trace; none ends with that of a
/// fault of ours.
/// </summary>
internal static class BadCommands
{
    private static readonly string[] Commands =
    [
        "plan", "check", "explain", "revise", "list", "show", "compare", "batch", "schema", "mix", "fluid", "strength", "tank",
        "--help", "--version", "plann", "",
    ];

    private static readonly string[] Words =
    [
        "--bench", "--start", "--by", "--out", "--json", "--format", "--choose", "--vessel", "--supply", "--protocols",
        "--resume", "--strict", "--log", "--help", "--fault-details", "--benhc", "-", "--", "-x",
        "", " ", "otter.yaml", "bench.yaml", "finds.csv", "log.yaml", "plan.json", "nowhere.yaml",
        ".", "..", "/", "/dev/null", "a\nb", "\u001B[31m", "\u202E", "text", "json", "docx", "html", "ics",
        "2027-03-01T09:00", "9999-12-31T23:59", "0001-01-01T00:00", "2027-02-30T09:00", "2500-12-31T23:59",
        "1600-01-01T00:00", "keeping=ethanol", "keeping=", "=", "house=jar", "a=b=c",
        "ethanol 70 %vol", "formalin 10 %vol", "banana", "-5 L", "1e400 L", "NaN", "0", "10 L", "20 degC", "1e9 m",
        "40 cm", "ethanol", "harbour-otter", "fish-medium", "mammal-large", "fix.last", "@otter.yaml",
    ];

    public static int Run(int times)
    {
        var folder = Directory.CreateTempSubdirectory("protocolist-commands-").FullName;
        try
        {
            string[][] files =
            [
                ["otter.yaml", "samples", "specimens", "harbour-otter.yaml"], ["bench.yaml", "samples", "benches", "skerry-point.yaml"],
                ["finds.csv", "samples", "batches", "spring-finds.csv"], ["log.yaml", "samples", "logs", "harbour-otter.yaml"],
            ];
            foreach (var file in files) File.Copy(Folders.Of(file[1..]), Path.Combine(folder, file[0]));
            Call(folder, ["plan", "otter.yaml", "--bench", "bench.yaml", "--start", "2027-03-01T09:00", "--json", "--out", "plan.json"]);
            var random = new Random(20_270_301);
            var (codes, wrong) = (new int[4], 0);
            for (var i = 0; i < times; i++)
            {
                string[] words = [Commands[random.Next(Commands.Length)], .. Enumerable.Range(0, random.Next(7)).Select(_ => Words[random.Next(Words.Length)])];
                var began = Stopwatch.GetTimestamp();
                var (code, said) = Call(folder, words);
                var isWrong = code is < 0 or > 2 || ((string[])["   at ", "Exception", "\u001B"]).Any(w => said.Contains(w, StringComparison.Ordinal))
                    || Stopwatch.GetElapsedTime(began) > TimeSpan.FromSeconds(30);
                if (code is >= 0 and <= 3) codes[code]++;
                if (!isWrong) continue;
                wrong++;
                Console.WriteLine($"{code}: {string.Join(" ", words.Select(w => $"'{w}'"))}: {said}");
            }

            Console.WriteLine($"{times} command lines: {string.Join(", ", codes.Select((n, code) => $"{n} ended with {code}"))}; {wrong} wrong");
            return wrong == 0 ? 0 : 1;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (int Code, string Said) Call(string folder, string[] words)
    {
        var (output, error) = (new StringWriter(), new StringWriter());
        var code = CommandLine.Run(words, new() { Folder = folder, Input = () => new MemoryStream(), Output = output, Error = error });
        return (code, error.ToString());
    }
}
