using System.CommandLine;
using Protocolist.Cli.Commands;

namespace Protocolist.Cli;

/// <summary>The whole tool as one function: words in, an exit code out.</summary>
internal static class CommandLine
{
    private static readonly RootCommand Root = new("Plans the fluid preservation of a zoological specimen.")
    {
        PlanCommand.Build(),
        CheckCommand.Build(),
        ExplainCommand.Build(),
        ReviseCommand.Build(),
        ListCommand.Build(),
        ShowCommand.Build(),
        CompareCommand.Build(),
        BatchCommand.Build(),
        SchemaCommand.Build(),
        MixCommand.Build(),
        FluidCommand.Build(),
        StrengthCommand.Build(),
        TankCommand.Build(),
    };

    /// <summary>The one place where a failure becomes a line of text.</summary>
    public static int Run(string[] words, Surroundings around)
    {
        var parsed = Root.Parse(words);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors) around.Error.WriteLine($"protocolist: {error.Message}");
            around.Error.WriteLine("protocolist: 'protocolist --help' lists the commands, 'protocolist COMMAND --help' their options");
            return Exits.Unusable;
        }

        try
        {
            return parsed.Invoke(around);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            around.Error.WriteLine($"protocolist: {fault.Message}");
            return Exits.Unusable;
        }
    }
}
