using System.CommandLine;
using Protocolist.Cli.Commands;

var root = new RootCommand("Plans the fluid preservation of a zoological specimen.")
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
return Exits.Run(root, args);
