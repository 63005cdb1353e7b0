using System.CommandLine;
using Protocolist.Cli.Files;

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

    /// <summary>What <c>-</c> stands for among the files; asked for when it is read.</summary>
    public Func<Stream> Input { get; init; } = Console.OpenStandardInput;

    /// <summary>Standard output as bytes, where it is no screen; null where it takes text alone.</summary>
    public Func<Stream>? OutputBytes { get; init; }

    /// <summary>The files of this run.</summary>
    public RunFiles Files => field ??= new(Folder, Input);
}

/// <summary>How a command finds its surroundings.</summary>
internal static class SurroundingsOfARun
{
    extension(ParseResult options)
    {
        public Surroundings Around => (Surroundings)options.InvocationConfiguration;
    }
}
