using System.CommandLine;
using Protocolist.Findings;

namespace Protocolist.Cli.Commands;

/// <summary>The exit codes, and the one place where a failure becomes a line of text.</summary>
internal static class Exits
{
    public const int Done = 0;
    public const int WithErrors = 1;
    public const int Unusable = 2;

    public static int Run(RootCommand root, string[] args)
    {
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors) Console.Error.WriteLine($"protocolist: {error.Message}");
            Console.Error.WriteLine("protocolist: 'protocolist --help' lists the commands, 'protocolist COMMAND --help' their options");
            return Unusable;
        }

        try
        {
            return parsed.Invoke(new() { EnableDefaultExceptionHandler = false });
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"protocolist: {fault.Message}");
            return Unusable;
        }
    }

    /// <summary>Writes findings to standard error, one a line.</summary>
    public static int Unread(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings.Where(f => f.Severity == Severity.Error)) Console.Error.WriteLine(finding);
        return Unusable;
    }
}
