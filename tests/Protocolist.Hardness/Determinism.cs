using System.Diagnostics;
using System.Globalization;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Sheets;
using Protocolist.Specimens;

namespace Protocolist.Hardness;

/// <summary>The same files and the same start give the same bytes: in any culture, on any machine's clock, from any number of threads.</summary>
internal static class Determinism
{
    private static readonly string[] Cultures = ["", "tr-TR", "de-DE", "ar-SA", "fa-IR", "th-TH", "pt-PT", "hi-IN"];
    private static readonly string[] Zones = ["UTC", "Pacific/Kiritimati", "America/St_Johns", "Asia/Kathmandu", "Australia/Lord_Howe", "Europe/Lisbon"];
    private static readonly string[] Forms = ["text", "json", "html", "ics", "csv"];

    public static int Run()
    {
        var differ = InCultures() + OnMachines();
        Console.WriteLine(differ == 0 ? "all the same" : $"{differ} differ");
        return differ == 0 ? 0 : 1;
    }

    /// <summary>In one process, 64 threads at once, each in a culture of its own, over one planner and one bench.</summary>
    private static int InCultures()
    {
        var specimen = SpecimenReader.Read(new("otter.yaml", Folders.Text("samples", "specimens", "harbour-otter.yaml"))).Value!;
        var benchText = new SourceText("bench.yaml", Folders.Text("samples", "benches", "skerry-point.yaml"));
        var bench = new PreparedBench(BenchReader.Read(benchText, DateTimeZoneProviders.Tzdb).Value!);
        var planner = new Planner(Shelf.Bundled());
        string[] Written()
        {
            var plan = planner.Plan(new(specimen, bench, new LocalDateTime(2027, 3, 1, 9, 0))).Value!;
            return [TextSheet.Write(plan), PlanJson.Write(plan), HtmlSheet.Write(plan), CalendarSheet.Write(plan), StepTable.Write(plan)];
        }

        var meant = Written();
        var differ = 0;
        var threads = Enumerable.Range(0, 64).Select(i => new Thread(() =>
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (new(Cultures[i % Cultures.Length]), new(Cultures[i % Cultures.Length]));
            for (var turn = 0; turn < 4; turn++)
            {
                var written = Written();
                for (var form = 0; form < Forms.Length; form++)
                    if (written[form] != meant[form]) Interlocked.Increment(ref differ);
            }
        })).ToList();
        threads.ForEach(t => t.Start());
        threads.ForEach(t => t.Join());
        Console.WriteLine($"64 threads, {Cultures.Length} cultures, {Forms.Length} forms, 4 times each: {differ} differ");
        return differ;
    }

    /// <summary>Whole processes, each on the clock and in the language of another machine.</summary>
    private static int OnMachines()
    {
        var (differ, runs) = (0, 0);
        foreach (var form in Forms)
        {
            var meant = Started("UTC", "", form);
            foreach (var zone in Zones)
            {
                foreach (var culture in Cultures)
                {
                    runs++;
                    if (Started(zone, culture, form) == meant) continue;
                    differ++;
                    Console.WriteLine($"{form} in {zone}, '{culture}' differs");
                }
            }
        }

        Console.WriteLine($"{runs} processes, {Zones.Length} zones, {Cultures.Length} languages, {Forms.Length} forms: {differ} differ");
        return differ;
    }

    private static string Started(string zone, string culture, string form)
    {
        var start = new ProcessStartInfo(Folders.Program,
        [
            "plan", Folders.Of("samples", "specimens", "harbour-otter.yaml"), "--bench", Folders.Of("samples", "benches", "skerry-point.yaml"),
            "--start", "2027-03-01T09:00", "--format", form,
        ])
        {
            RedirectStandardOutput = true,
        };
        var language = culture.Length == 0 ? "C" : $"{culture.Replace('-', '_')}.UTF-8";
        start.Environment["TZ"] = zone;
        start.Environment["LANG"] = start.Environment["LC_ALL"] = language;
        start.Environment["DOTNET_SYSTEM_GLOBALIZATION_INVARIANT"] = "0";
        using var process = Process.Start(start)!;
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return $"{process.ExitCode}\n{text}";
    }
}
