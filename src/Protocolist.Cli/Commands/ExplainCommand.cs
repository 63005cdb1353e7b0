using System.CommandLine;
using NodaTime;
using Protocolist.Plans;

namespace Protocolist.Cli.Commands;

/// <summary><c>explain PLAN.json FIGURE</c>: why a number is what it is.</summary>
internal static class ExplainCommand
{
    private static readonly Argument<string> PlanFile = new("PLAN.json") { Description = "A plan written by 'plan --format json'." };
    private static readonly Argument<string> FigureId = new("FIGURE")
    {
        Description = "A figure's id, such as fix.last, or a finding's, such as wash-too-short.",
    };

    public static Command Build()
    {
        var command = new Command("explain", "Says why a figure of a plan is what it is, or why a finding was made.") { PlanFile, FigureId };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var around = options.Around;
        var source = around.Files.Read(options.GetRequiredValue(PlanFile));
        if (source.Value is null) return around.Unread(source.Findings);
        var plan = PlanJson.Read(source.Value, DateTimeZoneProviders.Tzdb);
        if (plan.Value is null) return around.Unread(plan.Findings);
        var id = options.GetRequiredValue(FigureId);
        var check = AllChecks.Descriptions.FirstOrDefault(c => c.Id == id);
        var explained = Explanation.Of(plan.Value, id);
        if (explained.Value is { } explanation) Write(explanation, 0, around.Output);
        else if (check is null) return around.Unread(explained.Findings);
        else around.Output.WriteLine($"{id}: nothing found in this plan");
        if (check is not null)
        {
            around.Output.WriteLine("the check:");
            foreach (var line in CheckPage.Of(check)) around.Output.WriteLine($"  {line}");
        }

        return Exits.Done;
    }

    internal static void Write(Explanation explanation, int depth, TextWriter output)
    {
        var indent = new string(' ', depth * 2);
        output.WriteLine($"{indent}{explanation.Id} = {explanation.Value}");
        output.WriteLine($"{indent}  from: {explanation.How}");
        foreach (var part in explanation.Parts) output.WriteLine($"{indent}  with: {part.Text} = {part.Value}");
        if (explanation.Source.Length > 0) output.WriteLine($"{indent}  source: {explanation.Source}");
        if (!explanation.Note.IsEmpty) output.WriteLine($"{indent}  note: {explanation.Note}");
        if (explanation.Where.ToString() is { Length: > 0 } where) output.WriteLine($"{indent}  at: {where}");
        foreach (var input in explanation.Inputs) Write(input, depth + 1, output);
    }
}
