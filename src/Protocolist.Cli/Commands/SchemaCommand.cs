using System.CommandLine;

namespace Protocolist.Cli.Commands;

/// <summary><c>schema</c>: the JSON Schema of our files, for editors.</summary>
internal static class SchemaCommand
{
    private static readonly Argument<string> What = new("WHAT") { Description = "protocol, specimen or bench.", DefaultValueFactory = _ => "protocol" };

    public static Command Build()
    {
        What.AcceptOnlyFromAmong("protocol", "specimen", "bench");
        var command = new Command("schema", "Writes the JSON Schema (2020-12) of protocol, specimen or bench files, for editors.") { What };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        options.Around.Output.Write(options.GetValue(What) switch
        {
            "specimen" => FileSchemas.Specimen(),
            "bench" => FileSchemas.Bench(),
            _ => FileSchemas.Protocol(),
        });
        return Exits.Done;
    }
}
