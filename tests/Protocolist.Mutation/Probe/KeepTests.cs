namespace Protocolist.Mutation.Probe;

public class KeepTests
{
    /// <summary>Stryker mutates the library for the tests it finds. This one keeps the mutated library, for a runner that is quicker.</summary>
    [Fact]
    public void Mutated_library_is_kept()
    {
        var mutated = Path.Combine(AppContext.BaseDirectory, "Protocolist.dll");
        Assert.True(File.Exists(mutated));
        if (Environment.GetEnvironmentVariable("MUTATED_LIBRARY") is { Length: > 0 } kept && !File.Exists(kept)) File.Copy(mutated, kept);
    }
}
