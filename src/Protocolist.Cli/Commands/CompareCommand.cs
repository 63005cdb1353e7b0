using System.CommandLine;
using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Cli.Commands;

/// <summary><c>compare SPECIMEN.yaml</c>: the lawful ways side by side.</summary>
internal static class CompareCommand
{
    private static readonly Argument<string> SpecimenFile = new("SPECIMEN.yaml") { Description = "The specimen." };
    private static readonly Option<string?> BenchFile = SharedOptions.BenchFile();
    private static readonly Option<string[]> Folders = SharedOptions.HouseFolders();
    private static readonly Option<string?> Start = SharedOptions.StartOption();
    private static readonly Option<string[]> Choose = SharedOptions.ChooseOption("A choice that is settled");
    private static readonly Option<string[]> Vessel = SharedOptions.VesselOption();
    private static readonly Option<string[]> Supply = SharedOptions.SupplyOption();
    private static readonly Option<string[]> Soak = SharedOptions.SoakOption();
    private static readonly Option<string[]> On = SharedOptions.OnOption();
    private static readonly Option<bool> Json = new("--json") { Description = "Write JSON." };

    public static Command Build()
    {
        var command = new Command("compare", "Sets the lawful ways for a specimen side by side: choices, vessels, stock.")
        {
            SpecimenFile, BenchFile, Folders, Start, Choose, Vessel, Supply, Soak, On, Json,
        };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var around = options.Around;
        var findings = new List<Finding>();
        var specimen = around.Files.Read(options.GetRequiredValue(SpecimenFile), SpecimenReader.Read, findings);
        var inputs = SharedOptions.Read(around, options.GetValue(BenchFile), options.GetValue(Folders), options.GetValue(Start), findings);
        var settled = SharedOptions.Choices(options.GetValue(Choose), findings);
        var wishes = SharedOptions.Wishes(options.GetValue(Vessel), options.GetValue(Supply), options.GetValue(Soak), options.GetValue(On), findings);
        if (specimen is null || inputs.Bench is null || inputs.Start is null || findings.Any(f => f.Severity == Severity.Error)) return around.Unread(findings);
        var compared = new Planner(inputs.Shelf).Compare(new(specimen, inputs.Bench, inputs.Start.Value) { Choices = settled, Wishes = wishes });
        if (compared.Value is not { } comparison) return around.Unread(compared.Findings);
        around.Output.Write(options.GetValue(Json) ? CompareJson.Of(comparison, compared.Findings) + "\n" : CompareText.Of(comparison, compared.Findings));
        return comparison.Ways.Any(w => w.Startable) ? Exits.Done : Exits.WithErrors;
    }
}
