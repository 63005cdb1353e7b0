using Protocolist.Cli;

return CommandLine.Run(args, new() { ErrorIsScreen = !Console.IsErrorRedirected });
