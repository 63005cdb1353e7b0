using FsCheck.Xunit;
using Xunit.v3;

namespace Protocolist.Properties;

/// <summary>A property that is tried on the draw of this run; see <see cref="Draws"/>.</summary>
[AttributeUsage(AttributeTargets.Method)]
[XunitTestCaseDiscoverer(typeof(PropertyDiscoverer))]
#pragma warning disable xUnit3003 // FsCheck's attribute has no constructor that takes the place in the source.
internal sealed class PropertyAttribute : FsCheck.Xunit.PropertyAttribute
#pragma warning restore xUnit3003
{
    public PropertyAttribute()
    {
        Replay = Draws.Replay;
        if (Draws.Cases is { } cases) base.MaxTest = cases;
    }

    /// <summary>How many cases it is tried on, unless the run says how many.</summary>
    public new int MaxTest
    {
        get => base.MaxTest;
        set => base.MaxTest = Draws.Cases ?? value;
    }
}
