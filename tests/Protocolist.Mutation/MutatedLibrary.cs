using System.Reflection;
using System.Runtime.CompilerServices;

namespace Protocolist.Mutation;

/// <summary>The switch that Stryker built into the library: which mutant is on, and which were passed.</summary>
internal sealed class MutatedLibrary
{
    private const BindingFlags Any = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic;
    private const int None = -1;
    private readonly Assembly _library = Assembly.LoadFrom(Path.Combine(AppContext.BaseDirectory, "Protocolist.dll"));
    private readonly Type _control;

    public MutatedLibrary()
    {
        _control = _library.GetTypes().SingleOrDefault(t => t.Name == "MutantControl") ?? throw new InvalidOperationException("the library here is not a mutated one");
        Active = None;
    }

    /// <summary>The mutant that is on.</summary>
    public int Active
    {
        set => _control.GetField("ActiveMutant", Any)!.SetValue(null, value);
    }

    /// <summary>Whether it notes which mutants are passed.</summary>
    public bool Captures
    {
        set => _control.GetField("CaptureCoverage", Any)!.SetValue(null, value);
    }

    /// <summary>Switches every mutant off.</summary>
    public void Sound() => Active = None;

    /// <summary>The mutants passed while something ran.</summary>
    public int[] PassedIn(Action run)
    {
        _control.GetMethod("ResetCoverage", Any)!.Invoke(null, null);
        run();
        var passed = (IList<int>[])_control.GetMethod("GetCoverageData", Any)!.Invoke(null, null)!;
        return [.. passed.SelectMany(p => p).Distinct().Order()];
    }

    /// <summary>
    /// Makes what library and tests make once, while no mutant is on: a type whose constructor failed under a mutant would stay broken for
    /// the whole process, and every later mutant would seem to be caught.
    /// </summary>
    public void MakeWhatIsMadeOnce(Assembly tests)
    {
        foreach (var type in _library.GetTypes().Concat(tests.GetTypes()).Where(t => !t.ContainsGenericParameters && t != _control))
            RuntimeHelpers.RunClassConstructor(type.TypeHandle);
    }
}
