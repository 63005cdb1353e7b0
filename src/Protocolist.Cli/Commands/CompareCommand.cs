using System.Collections.Immutable;
using System.CommandLine;
using Protocolist.Findings;
using Protocolist.Planning.Comparing;
using Protocolist.Specimens;

namespace Protocolist.Cli.Commands;

/// <summary><c>compare SPECIMEN.yaml</c>: the lawful choices side by side.</summary>
internal static class CompareCommand
{
    private static readonly Argument<string> SpecimenFile = new("SPECIMEN.yaml") { Description = "The specimen." };
    private static readonly Option<string?> BenchFile = PlanInputs.BenchFile();
    private static readonly Option<string[]> Folders = PlanInputs.HouseFolders();
    private static readonly Option<string?> Start = PlanInputs.StartOption();
    private static readonly Option<string[]> Choose = new("--choose") { Description = "A choice that is settled, as keeping=ethanol; may be repeated.", Arity = ArgumentArity.ZeroOrMore };
    private static readonly Option<bool> Json = new("--json") { Description = "Write JSON." };

    public static Command Build()
    {
        var command = new Command("compare", "Sets the lawful choices for a specimen side by side.") { SpecimenFile, BenchFile, Folders, Start, Choose, Json };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var findings = new List<Finding>();
        var specimen = PlanInputs.File(options.GetRequiredValue(SpecimenFile), SpecimenReader.Read, findings);
        var inputs = PlanInputs.Read(options.GetValue(BenchFile), options.GetValue(Folders), options.GetValue(Start), findings);
        var settled = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var choice in options.GetValue(Choose) ?? [])
        {
            var parts = choice.Split('=', 2, StringSplitOptions.TrimEntries);
            if (parts.Length == 2 && parts[0].Length > 0) settled[parts[0]] = parts[1];
            else findings.Add(Finding.Error("bad-choice", $"'{choice}' is not a choice", "write --choose keeping=ethanol"));
        }

        if (specimen is null || inputs.Bench is null || inputs.Start is null || findings.Any(f => f.Severity == Severity.Error)) return Exits.Unread(findings);
        var compared = Comparison.Of(new(specimen, inputs.Shelf, inputs.Bench, inputs.Start.Value) { Choices = settled.ToImmutable() });
        if (compared.Value is not { } comparison) return Exits.Unread(compared.Findings);
        Console.Out.Write(options.GetValue(Json) ? CompareJson.Of(comparison, compared.Findings) + "\n" : CompareText.Of(comparison, compared.Findings));
        return comparison.Ways.Any(w => w.Startable) ? Exits.Done : Exits.WithErrors;
    }
}
