using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Contact;
using Protocolist.Fluids.Mixing;
using Protocolist.Fluids.Names;
using Protocolist.Fluids.Safety;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

/// <summary>Every substance of the catalogue is asked every question that the library asks of one.</summary>
public class SubstanceTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    public static TheoryData<string> Ids => [.. SubstanceCatalogue.Bundled.All.Select(s => s.Id)];

    public static TheoryData<string> Fluids => [.. Fluid.Examples];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_substance_is_called_by_names_that_are_its_own(string id)
    {
        var substance = SubstanceCatalogue.Bundled.Find(id)!;
        Assert.Equal(id, substance.Id);
        Assert.Matches("^[a-z]+(-[a-z]+)*$", id);
        Assert.NotEmpty(substance.Noun.English);
        Assert.NotEmpty(substance.Words);
        Assert.NotEmpty(substance.Canonical);
        Assert.NotEmpty(substance.Examples);
        foreach (var name in substance.Canonical) Assert.Contains(substance.Words, w => WrittenFluid.Plain(w.Name) == WrittenFluid.Plain(name));
        foreach (var word in substance.Words)
        {
            Span<char> plain = stackalloc char[100];
            Assert.True(SubstanceCatalogue.Bundled.TryGet(plain[..new WrittenFluid(word.Name, default).PlainWords(plain)], out var found));
            Assert.Same(substance, found.Substance);
        }

        foreach (var example in substance.Examples) Assert.Same(substance, Fluid.Find(example)!.Substance);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void What_it_does_to_a_specimen_is_one_thing(string id)
    {
        var substance = SubstanceCatalogue.Bundled.Find(id)!;
        Assert.False(substance.IsWater && (substance.IsAlcohol || substance.Fixes || substance.Dehydrates || substance.IsVolatile || substance.IsHazardous));
        Assert.False(substance.Fixes && substance.Dehydrates);
        Assert.True(!substance.IsAlcohol || (substance.Dehydrates && substance.IsVolatile));
        Assert.Equal(substance.IsWater, substance.Active is null);
        Assert.Equal(substance.IsWater, substance.UsualStock is null);
        Assert.True(!substance.HasStrengthByDensity || substance.Active is not null);
        if (substance.Keeping is { } band)
        {
            Assert.True(band.Preserves <= band.Low && band.Low < band.High);
            Assert.NotEmpty(band.Source);
        }

        // Whom a fluid may hurt is told what to wear and what to do after an accident.
        Assert.Equal(substance.IsHazardous, !substance.Gear.IsEmpty && !substance.FirstAid.IsEmpty);
    }

    [Theory]
    [MemberData(nameof(Fluids))]
    public void A_fluid_answers_for_its_density(string name)
    {
        var fluid = Fluid.Find(name)!;
        Assert.Equal(name, fluid.Name);
        var (lowest, highest) = (fluid.Substance.LowestCelsius, fluid.Substance.HighestCelsius);
        Assert.True(lowest <= 15 && highest >= 30);
        for (var celsius = lowest; celsius <= highest; celsius += 0.5)
        {
            Assert.InRange(fluid.DensityAt(celsius), 700, 1300);
            Assert.InRange(fluid.DensityDoubt(Temperature.FromDegreesCelsius(celsius)).KilogramsPerCubicMeter, 0.01, 10);
            // Above water's 4 °C everything grows as it warms.
            if (celsius >= 5) Assert.True(fluid.DensityAt(celsius + 0.5) <= fluid.DensityAt(celsius));
        }

        Assert.Equal(fluid.DensityAt(20.0), fluid.Substance.Density(fluid.Composition, 20));
        Assert.InRange(fluid.WaterMassPercent, 0, 100);
        Assert.InRange(fluid.WaterMassPercent + fluid.Composition.Shares.ToArray().Sum(s => 100 * s.Share), 99.9999, 100.0001);
        Assert.Equal(fluid.Substance.Active is null ? null : fluid.MassPercent, fluid.MassPercent);
        Assert.Equal(fluid.Substance.HasStrengthByDensity, fluid.VolumePercent is not null);
        if (!fluid.Substance.HasStrengthByDensity) return;
        var read = AlcoholStrength.FromDensity(fluid.Substance, fluid.DensityAt(Twenty), Twenty).Value!;
        Assert.Equal(fluid.VolumePercent!.Value, read.VolumePercent, 0.001);
        Assert.Equal(fluid.MassPercent!.Value, read.MassPercent, 0.001);
        Assert.InRange(read.VolumePercentDoubt, 0.05, 2);
    }

    [Theory]
    [MemberData(nameof(Fluids))]
    public void A_fluid_is_made_from_its_usual_stock_and_its_own_water(string name)
    {
        var fluid = Fluid.Find(name)!;
        var diluent = fluid.Substance.DiluentOf(fluid);
        Assert.True(diluent.IsWater);
        Assert.Null(fluid.IsWater ? null : fluid.Substance.Refuses(fluid, diluent, diluent.Name));
        var stocks = fluid.Substance.UsualStock is { } stock ? ImmutableArray.Create(new StockFluid(stock)) : [];
        var recipe = RecipeSolver.Solve(new(fluid, Volume.FromLiters(2), stocks)).Value!;
        Assert.Equal(2 * fluid.DensityAt(20.0) / 1000, recipe.Mass.Kilograms, 1e-9);
        Assert.NotEmpty(recipe.MakeUp.ToString());
        // Nothing else may go in that has a strength of its own.
        foreach (var other in Fluid.Examples.Select(e => Fluid.Find(e)!))
        {
            if (fluid.IsWater || other.IsWater) continue;
            Assert.Equal(other.Substance.Active != fluid.Substance.Active, fluid.Substance.Refuses(fluid, other, other.Name) is { IsForeign: true });
        }
    }

    [Theory]
    [MemberData(nameof(Fluids))]
    public void A_fluid_answers_for_people_and_sewer(string name)
    {
        var fluid = Fluid.Find(name)!;
        var hazards = Hazards.Of(fluid);
        Assert.Equal(hazards.FlammableCategory is not null, fluid.IsFlammable);
        Assert.Equal(hazards.Statements.IsEmpty, hazards.SignalWord.Length == 0);
        Assert.Equal(hazards.FlashPoint is null, hazards.FlashPointDoubt == 0);
        Assert.True(hazards.Statements.IsEmpty || (fluid.Substance.IsHazardous && hazards.Source.Length > 0));
        Assert.True(hazards.Transport.Length == 0 || hazards.Transport.StartsWith("UN ", StringComparison.Ordinal));
        Assert.True(hazards.Limits.IsEmpty || fluid.Substance.IsHazardous);
        Assert.Equal(fluid.IsWater, fluid.WasteClass == WasteClass.RinseWater);
        Assert.True(Enum.IsDefined(fluid.WasteClass));
    }

    [Theory]
    [MemberData(nameof(Fluids))]
    public void A_fluid_answers_for_vessels(string name)
    {
        var fluid = Fluid.Find(name)!;
        foreach (var material in Enum.GetValues<VesselMaterial>())
        {
            foreach (var part in Enum.GetValues<VesselPart>())
            {
                var verdict = MaterialFitness.Judge(material, part, fluid);
                Assert.Equal(material == VesselMaterial.Unknown, verdict is null);
                Assert.True(verdict is null or { Reason.English.Length: > 0, Source.Length: > 0 });
            }
        }

        Assert.Equal(MaterialGrade.Lasting, MaterialFitness.Judge(VesselMaterial.Glass, VesselPart.Wall, fluid)!.Grade);
        for (var celsius = 0; celsius < 40; celsius += 5)
        {
            var (here, warmer) = (fluid.Substance.VapoursOver(fluid, celsius), fluid.Substance.VapoursOver(fluid, celsius + 5));
            Assert.True(here.Sum > 0 && warmer.Sum > here.Sum);
            Assert.Equal(fluid.Substance.IsVolatile, here.Alcohol > 0);
            Assert.InRange(here.Water, 0, Vapour.Water(celsius) * (1 + 1e-12));
        }

        Assert.True(!fluid.Substance.NeedsWideHeadspace(fluid) || fluid.Substance.IsVolatile);
    }

    // What somebody adds is a class and its place in a catalogue: it is read, made, judged and thrown away like those that the library brings.
    [Fact]
    public void A_substance_of_ones_own_joins_the_catalogue()
    {
        var known = SubstanceCatalogue.Bundled.With(new Brine());
        var brine = Fluid.Read("tank brine 10 %mass", known: known).Value!;
        Assert.Equal("tank brine 10 %mass", brine.Name);
        Assert.Equal((10.0, false, false), (brine.MassPercent, brine.IsWater, brine.IsAlcohol));
        Assert.Equal("unknown-fluid", Assert.Single(Fluid.Read("tank brine 10 %mass").Findings).Id);
        Assert.Contains("did you mean 'tank brine'", Fluid.Read("tank brin 10 %mass", known: known).Findings[0].Remedy.ToString(), StringComparison.Ordinal);
        Assert.Null(Fluid.Find("tank brine 10 %mass"));
        Assert.Equal(brine, Fluid.Find("tank brine 10 %mass", known));

        var strong = brine.Substance.Of(25, StrengthBasis.Mass);
        var recipe = RecipeSolver.Solve(new(brine, Volume.FromLiters(1), [new(strong)])).Value!;
        Assert.Equal(0.4, recipe.Parts[0].Mass.Kilograms / recipe.Mass.Kilograms, 1e-9);
        Assert.Equal("stock-foreign", Assert.Single(RecipeSolver.Solve(new(Fluid.Ethanol(70), Volume.FromLiters(1), [new(Fluid.Ethanol(96)), new(strong)]) { StocksAreNamed = true }).Findings).Id);
        Assert.Empty(Hazards.Of(brine).Statements);
        Assert.Equal(MaterialGrade.Unfit, MaterialFitness.Judge(VesselMaterial.StainlessSteel, VesselPart.Wall, brine)!.Grade);
        Assert.Equal(WasteClass.RinseWater, brine.WasteClass);
        Assert.Throws<ArgumentException>(() => known.With(new Brine()));
    }

    /// <summary>A salt solution, invented: 7 kg/m³ a percent, metal pits.</summary>
    private sealed class Brine() : Substance("tank-brine")
    {
        private static readonly Solute Salt = new("tank-salt", 58.44);

        public override Phrase Noun { get; } = new("substance.tank-brine", "tank brine");

        public override ImmutableArray<string> Examples => ["tank brine 10 %mass"];

        public override Message Gear => default;

        public override Message FirstAid => default;

        public override Solute Active => Salt;

        public override Fluid Of(double percent, StrengthBasis basis) => new(this, percent, StrengthBasis.Mass, new((Salt, percent / 100)));

        internal override IEnumerable<FluidWord> Words => Called("tank brine");

        internal override IEnumerable<string> Canonical => ["tank brine"];

        internal override ImmutableArray<MaterialRow> Contact =>
            [new(VesselMaterial.StainlessSteel, MaterialRow.AllParts, MaterialGrade.Unfit, new("material.brine", "brine pits it"), "invented")];

        internal override Checked<Fluid> Read(in WrittenFluid written, in FluidWord word) => new(Of(written.Percent ?? 10, StrengthBasis.Mass), []);

        internal override string NameOf(Fluid fluid) => $"tank brine {StrengthText.Of(fluid)}";

        internal override double Density(in Composition composition, double celsius) => 998 + 700 * composition[Salt];

        internal override double DensityDoubt(in Composition composition, double celsius) => 5;

        internal override Fluid DiluentOf(Fluid target) => Fluid.Water;
    }
}
