using System.Reflection;
using Xunit;
using Xunit.Runner.Common;
using Xunit.Sdk;
using Xunit.v3;

namespace Protocolist.Mutation;

/// <summary>The tests, found once and run in this process as often as wanted.</summary>
internal sealed class TestHost
{
    /// <summary>Those that start programs or look at sources pass no mutant; the year of plans in every zone takes a minute of its own.</summary>
    private static readonly string[] LeftOut = [".EndToEnd.", ".Conventions.", "EveryZoneTests"];

    private readonly ITestFrameworkExecutor _executor;

    private TestHost(Assembly assembly, ITestFrameworkExecutor executor, ILookup<string, ITestCase> cases) => (Assembly, _executor, Cases) = (assembly, executor, cases);

    public Assembly Assembly { get; }

    /// <summary>The cases by class, method and arguments.</summary>
    public ILookup<string, ITestCase> Cases { get; }

    /// <summary>Finds the tests, of the classes whose full name has one of these parts; of all where none is given.</summary>
    public static TestHost Find(params string[] parts)
    {
        TestContext.SetForInitialization(null, false, false);
        var assembly = Assembly.LoadFrom(Path.Combine(AppContext.BaseDirectory, "Protocolist.Tests.dll"));
        var framework = new XunitTestFramework();
        var options = TestFrameworkOptions.ForDiscovery(new TestAssemblyConfiguration { PreEnumerateTheories = true });
        options.SetPreEnumerateTheories(true);
        var found = new List<ITestCase>();
        framework.GetDiscoverer(assembly).Find(
            test =>
            {
                if (!LeftOut.Any(part => (test.TestClassName ?? "").Contains(part, StringComparison.Ordinal))) found.Add(test);
                return new(true);
            },
            options, parts.Length == 0 ? null : [.. assembly.GetExportedTypes().Where(t => parts.Any(p => t.FullName!.Contains(p, StringComparison.Ordinal)))], null).AsTask().GetAwaiter().GetResult();
        return new(assembly, framework.GetExecutor(assembly), found.OrderBy(KeyOf, StringComparer.Ordinal).ToLookup(KeyOf));
    }

    /// <summary>Runs tests one after the other, up to the first that fails.</summary>
    public TestRun Run(IReadOnlyCollection<ITestCase> cases)
    {
        var run = new TestRun();
        var options = TestFrameworkOptions.ForExecution(new TestAssemblyConfiguration());
        options.SetParallelMode(ParallelMode.None);
        options.SetMaxParallelThreads(1);
        options.SetStopOnTestFail(true);
        options.SetSynchronousMessageReporting(true);
        _executor.RunTestCases(cases, run, options, CancellationToken.None).AsTask().GetAwaiter().GetResult();
        return run;
    }

    public static string KeyOf(ITestCase test) => $"{test.TestClassName}.{test.TestMethodName}|{test.TestCaseDisplayName}";
}
