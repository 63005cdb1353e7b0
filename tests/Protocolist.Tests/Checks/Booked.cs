using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Checks;

/// <summary>Recipes, purchases and waste of a plan, written short.</summary>
internal static class Booked
{
    public static PlannedRecipe Recipe(string fluid, double litres, params PlannedPart[] parts) => new(Fluid.Read(fluid).Value!, Volume.FromLiters(litres), [.. parts], ["house"]);

    public static PlannedPart Part(string fluid, double? millilitres, string stock = "") =>
        new(Message.Text(fluid), millilitres is { } ml ? Volume.FromMilliliters(ml) : null, Mass.FromGrams(millilitres ?? 1), stock) { Fluid = Fluid.Read(fluid).Value };

    public static PlannedPurchase Purchase(string item, int days = 0, Money? price = null, Amount? pack = null) =>
        new(Message.Text(item), pack ?? Amount.Of(Volume.FromLiters(5)), 1, price, days);

    public static PlannedWaste Ethanol(string step, string destination) =>
        new(WasteClass.FlammableAlcohol, Amount.Of(Volume.FromLiters(1)), WasteWay.CollectedAsHazardous, Message.Text(destination), step) { Fluid = Fluid.Ethanol(70) };
}
