using System.CommandLine;
using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Cli.Commands;

/// <summary>
/// <c>show ID</c>: one protocol with all it inherits, each value with the file and line it came from; or one check with its limits and its source.
/// </summary>
internal static class ShowCommand
{
    private static readonly Argument<string> Id = new("ID") { Description = "The id of a protocol or of a check." };
    private static readonly Option<string[]> HouseFolders = new("--protocols")
    {
        Description = "A folder of house protocols, laid over the bundled ones; may be repeated.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    public static Command Build()
    {
        var command = new Command("show", "Shows a protocol with all it inherits, or a check with its limits and its source.") { Id, HouseFolders };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var around = options.Around;
        var (folders, unread) = around.Files.HouseFolders(options.GetValue(HouseFolders) ?? []);
        if (unread.Any(f => f.Severity == Severity.Error)) return around.Unread(unread);
        var shelf = Shelf.BundledWith(folders);
        var id = options.GetRequiredValue(Id);
        if (shelf.Find(id) is not { } protocol)
        {
            if (AllChecks.Descriptions.FirstOrDefault(c => c.Id == id) is { } check)
            {
                foreach (var line in CheckPage.Of(check)) around.Output.WriteLine(line);
                return Exits.Done;
            }

            var findings = shelf.Findings.Where(f => f.Severity == Severity.Error).ToList();
            findings.Add(shelf.NotFound(id));
            return around.Unread(findings);
        }

        Write(protocol, around.Output);
        return Exits.Done;
    }

    internal static void Write(Protocol protocol, TextWriter output)
    {
        foreach (var line in ProtocolListing.Of(protocol))
            output.WriteLine($"{new string(' ', line.Depth * 2)}{line.Key}: {line.Text}{(line.Where.IsKnown ? $"  [{line.Where}]" : "")}");
    }
}
