using Protocolist.Sameness;

// Lies outside the solution; DEVELOPERS.md says when it is used.
switch (args)
{
    case ["cases", var repository, var folder]:
        Cases.Write(repository, folder);
        return 0;
    case ["write", var folder, var target]:
        Output.Write(folder, target);
        return 0;
    case ["compare", var before, var after]:
        return Difference.Run(before, after, null);
    case ["compare", var before, var after, var renamed]:
        return Difference.Run(before, after, renamed);
    default:
        Console.Error.WriteLine("cases REPOSITORY FOLDER | write FOLDER TARGET | compare BEFORE AFTER [RENAMED]");
        return 2;
}
