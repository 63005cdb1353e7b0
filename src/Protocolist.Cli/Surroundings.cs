using System.CommandLine;
using Protocolist.Cli.Commands;

namespace Protocolist.Cli;

/// <summary>
/// What one run of the tool sees of the machine. The program gives it the real one; whoever calls the tool inside a process gives writers
/// and a folder of his own, and as many runs as there are threads go side by side.
/// </summary>
internal sealed class Surroundings : InvocationConfiguration
{
    public Surroundings() => EnableDefaultExceptionHandler = false;

    /// <summary>Where paths begin that do not begin at a root; empty for the folder that the process was started in.</summary>
    public string Folder { get; init; } = "";

    /// <summary>Whether standard error is a screen, on which a count may run along.</summary>
    public bool ErrorIsScreen { get; init; }

    public InputFiles Files => new(Folder);
}

/// <summary>How a command finds its surroundings.</summary>
internal static class SurroundingsOfARun
{
    extension(ParseResult options)
    {
        public Surroundings Around => (Surroundings)options.InvocationConfiguration;
    }
}
