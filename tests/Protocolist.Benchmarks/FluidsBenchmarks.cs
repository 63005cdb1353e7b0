using BenchmarkDotNet.Attributes;
using Protocolist.Fluids;
using Protocolist.Fluids.Infiltration;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Benchmarks;

/// <summary>The chemistry's inner functions: one density below 150 ns, one inverse below 2 µs, none of them allocating.</summary>
[MemoryDiagnoser]
public class FluidsBenchmarks
{
    private readonly MixRequest request = new(Fluid.Ethanol(70), Volume.FromLiters(1), [new(Fluid.Ethanol(96))]);
    private readonly MixRequest buffered = new(Fluid.Formalin(10, Buffering.Phosphate), Volume.FromLiters(1), [new(Fluid.ReferenceStock)]);
    private double massFraction = 0.6239;
    private double celsius = 23.5;
    private double density = 882.6;

    [GlobalSetup]
    public void Setup()
    {
        massFraction = 0.6239;
        celsius = 23.5;
        density = 882.6;
    }

    [Benchmark]
    public double EthanolDensity() => EthanolWater.Density(massFraction, celsius);

    [Benchmark]
    public double EthanolStrengthOfDensity() => EthanolWater.MassFraction(density, celsius);

    [Benchmark]
    public double EthanolMassFractionOfVolume() => EthanolWater.MassFractionOfVolume(0.7);

    [Benchmark]
    public double IsopropanolDensity() => IsopropanolWater.Density(massFraction, celsius);

    [Benchmark]
    public double IsopropanolStrengthOfDensity() => IsopropanolWater.MassFraction(density, 20);

    [Benchmark]
    public double WaterDensity() => Water.Density(celsius);

    [Benchmark]
    public double SeaWaterDensity() => SeaWater.Density(35, celsius);

    [Benchmark]
    public double FormaldehydeDensity() => Formaldehyde.Density(0.04, 0.013, celsius);

    [Benchmark]
    public double SlabAverage() => Diffusion.Average(DiffusionShape.Slab, 0.8);

    [Benchmark]
    public object? ReadName() => Fluid.Read("neutral buffered formalin 10 %").Value;

    [Benchmark]
    public object? Recipe() => RecipeSolver.Solve(request).Value;

    [Benchmark]
    public object? BufferedRecipe() => RecipeSolver.Solve(buffered).Value;
}
