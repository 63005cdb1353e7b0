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
        new Option<bool>(Exits.FaultDetails)
        {
            Description = "After an unforeseen fault of the program: all that is known of it, for a report.",
            Recursive = true,
        },
    };

    // An argument that begins with @ is a name like any other, not a file of arguments.
    private static readonly ParserConfiguration Words = new() { ResponseFileTokenReplacer = null };

    /// <summary>Whatever goes wrong, it ends with one of the four codes, and a failure is a line of text.</summary>
    public static int Run(string[] words, Surroundings around) => Run(Root, words, around);

    /// <summary>The same, with other commands.</summary>
    internal static int Run(RootCommand root, string[] words, Surroundings around)
    {
        if (around.Output is not ShownWriter) (around.Output, around.Error) = (new ShownWriter(around.Output), new ShownWriter(around.Error));
        try
        {
            var parsed = root.Parse(words, Words);
            if (parsed.Errors.Count == 0) return parsed.Invoke(around);
            foreach (var error in parsed.Errors)
                Tell($"protocolist: {string.Join(' ', error.Message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))}");
            Tell("protocolist: 'protocolist --help' lists the commands, 'protocolist COMMAND --help' their options");
            return Exits.Unusable;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // Files tell of themselves: what ends here is the terminal, a pipe, or a stream that is closed.
            Tell($"protocolist: reading standard input or writing standard output failed: {(fault.InnerException ?? fault).Message}");
            return Exits.Unusable;
        }
        catch (Exception fault)
        {
            Tell(
                $"protocolist: an unforeseen fault of the program, not of yours, in: {string.Join(' ', words)}; "
                + $"please report it with the files, and with what {Exits.FaultDetails} prints");
            foreach (var line in words.Contains(Exits.FaultDetails) ? fault.ToString().Split('\n') : []) Tell(line);
            return Exits.Fault;
        }

        void Tell(string line)
        {
            try
            {
                around.Error.WriteLine(line);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                // Standard error itself is closed or full: the exit code must do.
            }
        }
    }
}
