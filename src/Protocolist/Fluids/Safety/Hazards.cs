using System.Collections.Immutable;
using UnitsNet;

namespace Protocolist.Fluids.Safety;

/// <summary>Hazards of each fluid.</summary>
internal static class Hazards
{
    // GHS / CLP: flammable liquids of category 2 flash below 23 °C (and boil above 35), of category 3 up to 60 °C.
    private const double Category2Below = 23;
    private const double Category3UpTo = 60;

    /// <summary>The hazards of a fluid.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <returns>Its hazards; those of water are none.</returns>
    public static HazardData Of(Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        var substance = fluid.Substance;
        var celsius = substance.FlashPoint(fluid);
        var category = FlammableCategory(celsius);
        var statements = Statements(fluid, category);
        return new(
            celsius is { } flash ? Temperature.FromDegreesCelsius(flash) : null,
            celsius is null ? 0 : substance.FlashPointDoubt,
            SignalWord(statements),
            statements,
            category,
            substance.Transport(fluid, category),
            substance.HazardSource,
            ExposureLimits.Of(fluid));
    }

    /// <summary>Its hazard statements, in the order of a label; none for water.</summary>
    public static ImmutableArray<string> StatementsOf(Fluid fluid) => Statements(fluid, FlammableCategory(fluid.Substance.FlashPoint(fluid)));

    /// <summary>The GHS category of a flash point in °C; null where the liquid does not count as flammable.</summary>
    internal static int? FlammableCategory(double? celsius) => celsius switch { null or > Category3UpTo => null, < Category2Below => 2, _ => 3 };

    /// <summary>The label elements of CLP, annex I (from memory).</summary>
    internal static string SignalWord(ImmutableArray<string> statements)
    {
        foreach (var statement in statements)
        {
            if (statement is "H224" or "H225" or "H300" or "H301" or "H310" or "H311" or "H314" or "H318"
                or "H330" or "H331" or "H340" or "H350" or "H360" or "H370" or "H372") return "Danger";
        }

        return statements.IsEmpty ? "" : "Warning";
    }

    /// <summary>By the flash point, then by what is dissolved: the limits of CLP for mixtures, each statement once.</summary>
    private static ImmutableArray<string> Statements(Fluid fluid, int? category)
    {
        var statements = ImmutableArray.CreateBuilder<string>();
        if (category is { } flammable) statements.Add(flammable == 2 ? "H225" : "H226");
        foreach (var (what, share) in fluid.Composition.Shares)
        {
            var percent = 100 * share;
            foreach (var (statement, from, below) in what.Hazards)
            {
                if (percent >= from && percent < below && !statements.Contains(statement)) statements.Add(statement);
            }
        }

        return statements.DrainToImmutable();
    }
}
