using System.Globalization;
using Protocolist.Properties;

[assembly: AssemblyFixture(typeof(DrawIsTold))]

namespace Protocolist.Properties;

/// <summary>Says at the start of a run how its cases are drawn, so that whatever it finds can be found again.</summary>
public sealed class DrawIsTold
{
    public DrawIsTold() => Console.WriteLine($"properties: PROTOCOLIST_SEED='{Draws.Replay}'{Each(Draws.Cases)}");

    private static string Each(int? cases) => cases is null ? "" : string.Create(CultureInfo.InvariantCulture, $", {cases} cases each");
}
