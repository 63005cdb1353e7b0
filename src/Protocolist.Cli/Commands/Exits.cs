using System.CommandLine;
using Protocolist.Findings;

namespace Protocolist.Cli.Commands;

/// <summary>The exit codes, and the one place where a failure becomes a line of text.</summary>
internal static class Exits
{
    public const int Done = 0;
    public const int WithErrors = 1;
    public const int Unusable = 2;
    public const int Fault = 3;

    /// <summary>The switch that shows what is known of an unforeseen fault.</summary>
    public const string FaultDetails = "--fault-details";

    /// <summary>Runs the program; whatever goes wrong, it ends with one of the four codes.</summary>
    /// <param name="root">The commands.</param>
    /// <param name="args">The command line.</param>
    /// <param name="error">Where failures are told; standard error, if not given.</param>
    public static int Run(RootCommand root, string[] args, TextWriter? error = null)
    {
        var tell = new Teller(error ?? Console.Error);
        var details = new Option<bool>(FaultDetails) { Description = "After an unforeseen fault of the program: all that is known of it, for a report.", Recursive = true };
        root.Options.Add(details);
        try
        {
            // An argument that begins with @ is a name like any other, not a file of arguments.
            var parsed = root.Parse(args, new() { ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count == 0) return parsed.Invoke(new() { EnableDefaultExceptionHandler = false });
            foreach (var message in parsed.Errors) tell.Line($"protocolist: {message.Message}");
            tell.Line("protocolist: 'protocolist --help' lists the commands, 'protocolist COMMAND --help' their options");
            return Unusable;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            tell.Line($"protocolist: reading or writing failed: {fault.Message}");
            return Unusable;
        }
        catch (Exception fault)
        {
            tell.Line($"protocolist: an unforeseen fault of the program, not of yours, in: {string.Join(' ', args)}; please report it with the files, and with what --fault-details prints");
            if (args.Contains(FaultDetails)) tell.Line(fault.ToString());
            return Fault;
        }
    }

    /// <summary>Writes findings to standard error, one a line.</summary>
    public static int Unread(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings.Where(f => f.Severity == Severity.Error)) Console.Error.WriteLine(finding);
        return Unusable;
    }

    /// <summary>Tells what can be told: where standard error itself is closed or full, the exit code must do.</summary>
    private sealed class Teller(TextWriter error)
    {
        public void Line(string text)
        {
            try
            {
                error.WriteLine(text);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                // Nobody is left to tell.
            }
        }
    }
}
