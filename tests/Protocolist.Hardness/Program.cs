using System.Globalization;
using Protocolist.Hardness;
using Protocolist.Hardness.Fuzzing;
using Protocolist.Hardness.Yaml;

// What takes longer than a test may: each command ends with 0 where nothing was found.
return args switch
{
    ["fuzz", var target, var seconds, .. var corpus] => Fuzzer.Run(Targets.Named(target), double.Parse(seconds, CultureInfo.InvariantCulture), [.. corpus]),
    ["yaml-suite", var cases] => Suite.Run(cases),
    ["kill", var times] => Killing.Run(int.Parse(times, CultureInfo.InvariantCulture)),
    ["commands", var times] => BadCommands.Run(int.Parse(times, CultureInfo.InvariantCulture)),
    ["determinism"] => Determinism.Run(),
    _ => Usage(),
};

static int Usage()
{
    Console.WriteLine($"""
        fuzz TARGET SECONDS [FOLDER]  damaged inputs; what breaks is left in FOLDER. TARGET: {string.Join(", ", Targets.All.Select(t => t.Name))}
        yaml-suite CASES.json         the cases of the public YAML suite; yaml-suite.sh gets them
        kill TIMES                    the program killed while it writes
        commands TIMES                generated bad command lines
        determinism                   cultures, zones, forms and threads
        """);
    return 2;
}
