using System.Runtime.InteropServices;

namespace Protocolist.Cli.Files;

/// <summary>While it lives, a request to stop (Ctrl+C, SIGINT, SIGTERM) does not end the program but is heard here.</summary>
internal sealed class StopSignals : IDisposable
{
    private readonly PosixSignalRegistration[] heard;
    private volatile bool asked;

    public StopSignals() => heard = [PosixSignalRegistration.Create(PosixSignal.SIGINT, Hear), PosixSignalRegistration.Create(PosixSignal.SIGTERM, Hear)];

    /// <summary>Whether anybody asked to stop.</summary>
    public bool Asked => asked;

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var one in heard) one.Dispose();
    }

    private void Hear(PosixSignalContext signal)
    {
        signal.Cancel = true;
        asked = true;
    }
}
