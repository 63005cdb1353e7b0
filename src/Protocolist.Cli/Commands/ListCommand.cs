using System.CommandLine;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Specimens;

namespace Protocolist.Cli.Commands;

/// <summary><c>list</c>: what there is, one id a line first; <c>show</c> has the page of each protocol and check.</summary>
internal static class ListCommand
{
    private static readonly Argument<string> What = new("WHAT")
    {
        Description = "protocols, checks, fluids or groups.",
        DefaultValueFactory = _ => "protocols",
    };
    private static readonly Option<string[]> HouseFolders = new("--protocols")
    {
        Description = "A folder of house protocols, laid over the bundled ones; may be repeated.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    public static Command Build()
    {
        What.AcceptOnlyFromAmong("protocols", "checks", "fluids", "groups");
        var command = new Command("list", "Lists protocols, checks, fluids or taxon groups.") { What, HouseFolders };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var around = options.Around;
        var (folders, unread) = around.Files.HouseFolders(options.GetValue(HouseFolders) ?? []);
        if (unread.Any(f => f.Severity == Severity.Error)) return around.Unread(unread);
        IEnumerable<(string Id, string About)> rows = options.GetValue(What) switch
        {
            "checks" => AllChecks.Descriptions.Select(c => (c.Id,
                $"{string.Join(" or ", c.Severities.Select(s => s.Severity.ToString().ToLowerInvariant()).Distinct()),-17} {c.Protects}")),
            "fluids" => Fluid.Examples.Select(f => (f, "")),
            "groups" => Kinds.Bundled.Groups.Select(g => (g.Id, g.Parent is { } parent ? $"{g.Name}, of {parent.Id}" : g.Name.ToString())),
            _ => Shelf.BundledWith(folders).Protocols.Select(p => (p.Id,
                $"{p.Title}{(p.IsForSpecimens ? $" ({p.ClassText})" : " (only for others to extend)")}")),
        };
        var listed = rows.ToList();
        var width = listed.Max(r => r.Id.Length);
        foreach (var (id, about) in listed) around.Output.WriteLine(about.Length == 0 ? id : $"{id.PadRight(width)}  {about}");
        return Exits.Done;
    }
}
