using Protocolist.Cli;

return CommandLine.Run(
    args,
    new() { ErrorIsScreen = !Console.IsErrorRedirected, OutputBytes = Console.IsOutputRedirected ? Console.OpenStandardOutput : null });
