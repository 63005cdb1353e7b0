using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Reflection;
using NodaTime;
using NodaTime.Text;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Cli.Commands;

/// <summary>The bench, the shelf and the start, which every command that plans asks for in the same words. The one place where a clock is read.</summary>
internal sealed record SharedOptions(Bench? Bench, Shelf Shelf, LocalDateTime? Start)
{
    private static readonly Phrase NoPair = new("option.no-pair", "'{text}' is not of the form name=value");
    private static readonly Phrase NoPairRemedy = new("option.no-pair.remedy", "write {example}");
    private static readonly Phrase GivenTwice = new("option.given-twice", "'{name}' is given twice, and not the same");
    private static readonly Phrase GivenTwiceRemedy = new("option.given-twice.remedy", "keep one of them");
    private static readonly Phrase BadStart = new("bad-start", "'{text}' is not a moment to start");
    private static readonly Phrase BadStartRemedy = new("bad-start.remedy", "write --start 2027-03-01T09:00");

    public static Option<string?> BenchFile() => new("--bench") { Description = "The bench: stock, vessels, hours, zone." };

    public static Option<string[]> HouseFolders() =>
        new("--protocols") { Description = "A folder of house protocols, laid over the bundled ones; may be repeated.", Arity = ArgumentArity.ZeroOrMore };

    public static Option<string?> StartOption() =>
        new("--start") { Description = "The earliest start on the bench's clocks, as 2027-03-01T09:00; now, if not given." };

    /// <summary>The texts that bench and shelf were read from, and what of the shelf comes with the program.</summary>
    public IEnumerable<string> Texts { get; private init; } = [];

    public static SharedOptions Read(Surroundings around, string? benchFile, string[]? folders, string? start, List<Finding> findings)
    {
        var benchText = "";
        var bench = benchFile is null ? Benches.Bench.Empty(DateTimeZone.Utc) : around.Files.Read(benchFile, OfBench, findings);
        var (texts, unread) = around.Files.HouseFolders(folders ?? []);
        findings.AddRange(unread);
        var shelf = Shelf.BundledWith(texts);
        findings.AddRange(shelf.Findings.Where(f => f.Severity == Severity.Error));
        return new(bench, shelf, StartOf(start, bench, findings))
        {
            Texts =
            [
                typeof(Shelf).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "", benchText,
                .. texts.SelectMany(f => f).Select(t => t.Text), shelf.Digest,
            ],
        };

        Checked<Bench> OfBench(SourceText text)
        {
            benchText = text.Text;
            return BenchReader.Read(text, DateTimeZoneProviders.Tzdb);
        }
    }

    public static Option<string[]> ChooseOption(string what) =>
        new("--choose") { Description = $"{what}, as keeping=ethanol; may be repeated.", Arity = ArgumentArity.ZeroOrMore };

    public static Option<string[]> VesselOption() =>
        new("--vessel") { Description = "A vessel that a step is to use, as house=jar-4; may be repeated.", Arity = ArgumentArity.ZeroOrMore };

    public static Option<string[]> SupplyOption() =>
        new("--supply")
        {
            Description = "What a fluid is to be made from, as 'compare' says it, as \"ethanol 70 %vol=ethanol-96\"; may be repeated.",
            Arity = ArgumentArity.ZeroOrMore,
        };

    public static Option<string[]> SoakOption() =>
        new("--soak") { Description = "How long the body lies in a step at the least, as fix=72h; may be repeated.", Arity = ArgumentArity.ZeroOrMore };

    public static Option<string[]> OnOption() =>
        new("--on") { Description = "The day on which a step begins, as house=2027-04-12; may be repeated.", Arity = ArgumentArity.ZeroOrMore };

    /// <summary>Pairs as <c>keeping=ethanol</c>; what is none is a finding.</summary>
    public static ImmutableSortedDictionary<string, string> Pairs(string[]? given, string fault, string example, List<Finding> findings)
    {
        var pairs = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var text in given ?? [])
        {
            var parts = text.Split('=', 2, StringSplitOptions.TrimEntries);
            var isAgain = pairs.TryGetValue(parts[0], out var before) && parts.Length == 2 && before != parts[1];
            if (!isAgain && parts is [{ Length: > 0 }, { Length: > 0 }]) pairs[parts[0]] = parts[1];
            else if (isAgain) findings.Add(Finding.Error(fault, GivenTwice.With(("name", parts[0])), GivenTwiceRemedy));
            else findings.Add(Finding.Error(fault, NoPair.With(("text", text)), NoPairRemedy.With(("example", example))));
        }

        return pairs.ToImmutable();
    }

    public static ImmutableSortedDictionary<string, string> Choices(string[]? given, List<Finding> findings) =>
        Pairs(given, "bad-choice", "--choose keeping=ethanol", findings);

    public static PlanWishes Wishes(string[]? vessels, string[]? supplies, string[]? soaks, string[]? days, List<Finding> findings) => new()
    {
        Vessels = Pairs(vessels, "bad-vessel", "--vessel house=jar-4", findings),
        Supplies = Pairs(supplies, "bad-supply", "--supply \"ethanol 70 %vol=ethanol-96\"", findings),
        Soaks = Read(Pairs(soaks, "bad-soak", SoakExample, findings), "bad-soak", SoakExample, findings, SoakOf),
        Dates = Read(Pairs(days, "bad-day", DayExample, findings), "bad-day", DayExample, findings, DayOf),
    };

    private const string SoakExample = "--soak fix=72h";
    private const string DayExample = "--on house=2027-04-12";

    private static ImmutableSortedDictionary<string, T> Read<T>(
        ImmutableSortedDictionary<string, string> pairs, string fault, string example, List<Finding> findings, Func<string, T?> read)
        where T : struct
    {
        var values = ImmutableSortedDictionary.CreateBuilder<string, T>(StringComparer.Ordinal);
        foreach (var (name, text) in pairs)
        {
            if (read(text) is { } value) values[name] = value;
            else findings.Add(Finding.Error(fault, NoPair.With(("text", $"{name}={text}")), NoPairRemedy.With(("example", example))));
        }

        return values.ToImmutable();
    }

    /// <summary>The units library throws at what is no number (NaN), so that only what begins with a digit is given to it.</summary>
    private static Duration? SoakOf(string text) =>
        char.IsAsciiDigit(text[0]) && UnitsNet.Duration.TryParse(text, CultureInfo.InvariantCulture, out var time) && time.Seconds is > 0 and < 1e10
            ? Duration.FromSeconds(time.Seconds)
            : null;

    private static LocalDate? DayOf(string text) => LocalDatePattern.Iso.Parse(text) is { Success: true, Value: var day } ? day : null;

    /// <summary>The start as given, or this minute on the bench's clocks.</summary>
    private static LocalDateTime? StartOf(string? text, Bench? bench, List<Finding> findings)
    {
        if (text is null)
        {
            var now = SystemClock.Instance.GetCurrentInstant().InZone(bench?.Opening.Zone ?? DateTimeZone.Utc).LocalDateTime;
            return new LocalDateTime(now.Year, now.Month, now.Day, now.Hour, now.Minute);
        }

        foreach (var pattern in (string[])["uuuu-MM-dd'T'HH:mm", "uuuu-MM-dd' 'HH:mm", "uuuu-MM-dd'T'HH:mm:ss"])
        {
            var parsed = LocalDateTimePattern.CreateWithInvariantCulture(pattern).Parse(text);
            if (parsed.Success) return parsed.Value;
        }

        findings.Add(Finding.Error(BadStart.Id, BadStart.With(("text", text)), BadStartRemedy));
        return null;
    }
}
