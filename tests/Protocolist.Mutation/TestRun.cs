using System.Diagnostics;
using Xunit.Sdk;

namespace Protocolist.Mutation;

/// <summary>What came of a run of tests: how long it took, and the first that failed.</summary>
internal sealed class TestRun : IMessageSink
{
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly Dictionary<string, string> _keys = new(StringComparer.Ordinal);

    /// <summary>The first test that failed; null where none did.</summary>
    public string? Failed { get; private set; }

    public double Seconds { get; private set; }

    public bool OnMessage(IMessageSinkMessage message)
    {
        Seconds = _clock.Elapsed.TotalSeconds;
        switch (message)
        {
            case ITestCaseStarting starting:
                _keys[starting.TestCaseUniqueID] = $"{starting.TestClassName}.{starting.TestMethodName}|{starting.TestCaseDisplayName}";
                break;
            case ITestFailed failed:
                Failed ??= _keys.GetValueOrDefault(failed.TestCaseUniqueID, failed.TestCaseUniqueID);
                break;
            case IErrorMessage:
                Failed ??= "the run itself";
                break;
        }

        return Failed is null;
    }
}
