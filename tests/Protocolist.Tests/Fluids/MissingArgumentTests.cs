using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Infiltration;
using Protocolist.Fluids.Mixing;
using Protocolist.Fluids.Safety;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

/// <summary>Public methods say which argument is missing, before they do anything with it.</summary>
public class MissingArgumentTests
{
    private static readonly Volume Litre = Volume.FromLiters(1);
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);
    private static readonly Fluid Weak = Fluid.Ethanol(60);

    public static TheoryData<string, Action> Missing => new()
    {
        { "text", () => Fluid.Read(null!) },
        { "text", () => Salts.Read(null!) },
        { "calledFor", () => Salts.Borax.InPlaceOf(1, null!) },
        { "fluid", () => BufferDiagnosis.PredictedPh(null!, Twenty) },
        { "fluid", () => Hazards.Of(null!) },
        { "fluid", () => ExposureLimits.Of(null!) },
        { "request", () => RecipeSolver.Solve(null!) },
        { "inJar", () => JarStrength.Bring(null!, Litre, Weak, new(Weak), Litre, Twenty) },
        { "target", () => JarStrength.Bring(Weak, Litre, null!, new(Weak), Litre, Twenty) },
        { "stock", () => JarStrength.Bring(Weak, Litre, Weak, null!, Litre, Twenty) },
        { "baths", () => AlcoholBaths.Strengths(Litre, null!) },
        { "bath", () => AlcoholBaths.Needed(Litre, null!, 70) },
        { "alcohol", () => AlcoholBaths.LastBath(null!, Litre, Litre, 70) },
        { "body", () => TimedBaths.Follow(null!, []) },
        { "baths", () => TimedBaths.Follow(new(DiffusionShape.Slab, Length.FromMillimeters(5), Litre), null!) },
        { "body", () => TimedBaths.Judge(null!, []) },
    };

    [Theory]
    [MemberData(nameof(Missing), DisableDiscoveryEnumeration = true)]
    public void A_missing_argument_is_the_callers_bug(string name, Action call) => Assert.Equal(name, Assert.Throws<ArgumentNullException>(call).ParamName);
}
