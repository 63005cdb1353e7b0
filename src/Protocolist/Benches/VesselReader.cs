using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Notation;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Benches;

/// <summary>Reads the vessels of a bench file.</summary>
internal static class VesselReader
{
    private static readonly Phrase VesselWithoutShape = new(
        "vessel-without-shape",
        "the inside of a vessel is a diameter and a height, or a length, a width and a height");
    private static readonly Phrase VesselWithoutShapeRemedy = new("vessel-without-shape.remedy", "measure it inside");

    /// <summary>The vessels and those in use, each with the mapping it was read from.</summary>
    public static ImmutableArray<(Vessel Vessel, MappingNode Node)> Read(Fields bench, List<(VesselInUse Use, MappingNode Node)> inUse, List<Finding> findings)
    {
        var vessels = ImmutableArray.CreateBuilder<(Vessel, MappingNode)>();
        foreach (var node in bench.List("vessels"))
        {
            if (Fields.Of(node, Named.Vessel, findings) is not { } fields) continue;
            var id = fields.Required("id");
            var inside = Inside(fields, findings);
            var name = fields.Scalar("name");
            var vessel = new Vessel(
                id?.Value ?? "",
                name?.Value ?? id?.Value ?? "",
                inside ?? new VesselShape.Cylinder(Length.Zero, Length.Zero),
                fields.Choice<VesselMaterial>("wall") ?? VesselMaterial.Unknown,
                fields.Whole("count", 0, 100_000) ?? 1)
            {
                Capacity = fields.Quantity("capacity", Dimension.OfVolume) is { } capacity ? Volume.FromCubicMeters(capacity.Middle) : null,
                Closure = fields.Choice<Closure>("closure") ?? Closure.LooseLid,
                Lid = fields.Choice<VesselMaterial>("lid") ?? VesselMaterial.Unknown,
                Seal = fields.Choice<VesselMaterial>("seal") ?? VesselMaterial.Unknown,
                Price = fields.Scalar("price") is { } price ? Priced(price, findings) : null,
                LeadDays = StockReader.LeadDays(fields, findings),
                LossPerYear = fields.Quantity("loses-a-year", Dimension.OfVolume) is { } loss ? Volume.FromCubicMeters(loss.Middle) : null,
                EmptyMass = fields.Quantity("empty-mass", Dimension.OfMass) is { } mass ? Mass.FromKilograms(mass.Middle) : null,
                Pane = fields.Quantity("pane", Dimension.OfLength) is { } pane ? Length.FromMeters(pane.Middle) : null,
            };
            var taken = InUse(fields, vessel).ToList();
            fields.Finish();
            if (id is null || inside is null) continue;
            inUse.AddRange(taken);
            vessels.Add((vessel, (MappingNode)node));
        }

        return vessels.DrainToImmutable();
    }

    /// <summary>How many of a vessel other specimens stand in, and until when.</summary>
    private static IEnumerable<(VesselInUse Use, MappingNode Node)> InUse(Fields vessel, Vessel of)
    {
        foreach (var node in vessel.List("in-use"))
        {
            if (Fields.Of(node, Named.Key("in-use"), vessel.Findings) is not { } use) continue;
            var count = use.Whole("count", 1, 100_000) ?? 1;
            var until = use.Date("until");
            use.Finish();
            yield return (new(of.Id, count, until), (MappingNode)node);
        }
    }

    private static Money? Priced(ScalarNode text, List<Finding> findings)
    {
        var price = MoneyText.Read(text.Value, text.Span);
        findings.AddRange(price.Findings);
        return price.Value;
    }

    private static VesselShape? Inside(Fields vessel, List<Finding> findings)
    {
        if (vessel.Nested("inside") is not { } inside)
        {
            vessel.Required("inside");
            return null;
        }

        var diameter = Measure(inside, "diameter");
        var length = Measure(inside, "length");
        var width = Measure(inside, "width");
        var height = Measure(inside, "height");
        inside.Finish();
        if (diameter is { } d && height is { } h && length is null && width is null) return new VesselShape.Cylinder(d, h);
        if (length is { } l && width is { } w && height is { } high && diameter is null) return new VesselShape.Box(l, w, high);
        findings.Add(Finding.Error("vessel-without-shape", VesselWithoutShape, VesselWithoutShapeRemedy, inside.Span));
        return null;
    }

    private static Length? Measure(Fields inside, string key) =>
        inside.Quantity(key, Dimension.OfLength) is { } range ? Length.FromMeters(range.Middle) : null;
}
