using System.Collections.Immutable;
using UnitsNet;

namespace Protocolist.Fluids.Safety;

/// <summary>Hazards of each fluid.</summary>
public static class Hazards
{
    // GHS / CLP: flammable liquids of category 2 flash below 23 °C (and boil above 35), of category 3 up to 60 °C.
    private const double Category2Below = 23;
    private const double Category3UpTo = 60;

    // Special provision 144 of the transport rules: aqueous ethanol up to 24 %vol is free.
    private const double FreeInTransport = 24;

    /// <summary>The hazards of a fluid.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <returns>Its hazards; those of water are none.</returns>
    public static HazardData Of(Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        var celsius = Safety.FlashPoint.Of(fluid);
        int? category = celsius switch { null or > Category3UpTo => null, < Category2Below => 2, _ => 3 };
        var (statements, source) = Statements(fluid, category);
        var signal = statements.IsEmpty ? "" : category is 2 || fluid.HasFormaldehyde ? "Danger" : "Warning";
        return new(
            celsius is { } flash ? Temperature.FromDegreesCelsius(flash) : null,
            celsius is null ? 0 : Safety.FlashPoint.Doubt(fluid),
            signal,
            statements,
            category,
            Transport(fluid, category),
            source,
            ExposureLimits.Of(fluid));
    }

    private static (ImmutableArray<string> Statements, string Source) Statements(Fluid fluid, int? category)
    {
        var flammable = category switch { 2 => "H225", 3 => "H226", _ => null };
        switch (fluid.Kind)
        {
            case FluidKind.Ethanol:
                // H319 from 50 % by mass: the specific limit in suppliers' sheets for ethanol (from memory).
                return (Some(flammable, fluid.EthanolMassPercent >= 50 ? "H319" : null), "safety data sheets of absolute and 70 % ethanol; category by flash point");
            case FluidKind.Isopropanol:
                // Generic limits of CLP for mixtures: eye irritation from 10 %, narcosis from 20 % by mass.
                return (Some(flammable, fluid.IsopropanolMassPercent >= 10 ? "H319" : null, fluid.IsopropanolMassPercent >= 20 ? "H336" : null), "safety data sheets of 2-propanol; CLP limits for mixtures");
            case FluidKind.FormaldehydeStock or FluidKind.Formaldehyde:
                return (Formaldehyde(fluid.FormaldehydeMassPercent!.Value, fluid.MethanolMassPercent, flammable), "CLP entry 605-001-00-5 and its limits; some suppliers give H330 for stock, and some drop H341 below 3 %");
            default:
                return ([], "");
        }
    }

    private static ImmutableArray<string> Formaldehyde(double percent, double methanol, string? flammable) => Some(
        flammable,
        percent >= 25 ? "H301" : percent >= 5 ? "H302" : null,
        percent >= 25 ? "H311" : percent >= 5 ? "H312" : null,
        percent >= 25 ? "H331" : percent >= 1 ? "H332" : null,
        percent >= 25 ? "H314" : percent >= 5 ? "H315" : null,
        percent is >= 5 and < 25 ? "H319" : null,
        percent >= 0.2 ? "H317" : null,
        percent >= 5 ? "H335" : null,
        percent >= 1 ? "H341" : null,
        percent >= 0.1 ? "H350" : null,
        methanol >= 10 ? "H370" : methanol >= 3 ? "H371" : null);

    private static string Transport(Fluid fluid, int? category) => fluid.Kind switch
    {
        FluidKind.Ethanol when fluid.AlcoholVolumePercent > FreeInTransport => "UN 1170 ethanol solution, class 3",
        FluidKind.Isopropanol when category is not null => "UN 1219 isopropanol, class 3",
        // From memory.
        FluidKind.FormaldehydeStock when category is not null => "UN 1198 formaldehyde solution, flammable",
        FluidKind.FormaldehydeStock when fluid.FormaldehydeMassPercent >= 25 => "UN 2209 formaldehyde solution",
        _ => "",
    };

    private static ImmutableArray<string> Some(params ReadOnlySpan<string?> codes)
    {
        var some = ImmutableArray.CreateBuilder<string>();
        foreach (var code in codes)
        {
            if (code is not null) some.Add(code);
        }

        return some.ToImmutable();
    }
}
