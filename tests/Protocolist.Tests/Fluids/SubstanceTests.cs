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
        Span<char> plain = stackalloc char[100];
        foreach (var word in substance.Words)
        {
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

    // Davidson's fixative for shrimps (Lightner 1996): 330 mL of ethanol 95 %vol, 220 of formaldehyde stock, 115 of glacial acetic acid, water to a litre;
    // it holds 88 g/L of formaldehyde, ethanol 31 %vol or 26 % by mass.
    [Fact]
    public void A_compound_fixative_is_a_file_too()
    {
        var davidson = new Davidson().Of(0, StrengthBasis.None);
        Assert.Equal("Davidson's fixative", davidson.Name);
        Assert.Equal(88, davidson.FormaldehydeGramsPerLitre!.Value, 0.5);
        Assert.Equal(26, davidson.EthanolMassPercent!.Value, 0.5);
        Assert.True(davidson.HasFormaldehyde && davidson.Substance.Fixes && !davidson.IsAlcohol && davidson.IsFlammable);

        // What mixtures carry follows from what is in them: CLP, each statement once.
        var hazards = Hazards.Of(davidson);
        Assert.Equal(["H226", "H302", "H312", "H332", "H315", "H319", "H317", "H335", "H341", "H350"], hazards.Statements);
        Assert.Equal("Danger", hazards.SignalWord);
        Assert.Contains(hazards.Limits, l => l.Substance == "formaldehyde");
        Assert.Contains(hazards.Limits, l => l.Substance == "ethanol");
        Assert.Equal(WasteClass.FormaldehydeAndAlcohol, davidson.WasteClass);

        var acid = davidson.UsualStocks[2];
        Assert.Equal(["ethanol 96 %vol", "formaldehyde stock 37 %mass", "acetic acid 100 %mass"], davidson.UsualStocks.Select(s => s.Name));
        var recipe = Mixed(davidson, 2, [.. davidson.UsualStocks.Select(s => new StockFluid(s))]).Value!;
        Assert.Equal(["ethanol 96 %vol", "formaldehyde stock 37 %mass", "acetic acid 100 %mass", "distilled water"], recipe.Parts.Select(p => p.Name));
        Assert.Equal(2 * 330 * 95 / 96.0, recipe.Parts[0].Volume!.Value.Milliliters, 0.1);
        Assert.Equal((440, 230), (recipe.Parts[1].Volume!.Value.Milliliters, recipe.Parts[2].Volume!.Value.Milliliters), Close);
        Assert.Equal(2 * 0.970, recipe.Mass.Kilograms, 1e-9);
        Assert.Equal(
            "measure 653 mL of ethanol 96 %vol and 440 mL of formaldehyde stock 37 %mass and 230 mL of acetic acid 100 %mass and make up to 2 L with distilled water at 20 degC",
            recipe.MakeUp.ToString());

        // A weaker stock goes in as much as it takes; what is not there, or not enough of it, is told.
        var weaker = Mixed(davidson, 2, [new(Fluid.Ethanol(96)), new(Fluid.FormaldehydeStock(36)), new(acid)]).Value!;
        Assert.Equal(recipe.Parts[1].Mass.Kilograms * 37 / 36, weaker.Parts[1].Mass.Kilograms, 1e-9);
        Assert.Equal(recipe.Mass.Kilograms, weaker.Mass.Kilograms, 1e-9);
        Assert.Equal("error stock-missing: nothing given holds what Davidson's fixative is made of; give a stock such as 'acetic acid 100 %mass'", Told([new(Fluid.Ethanol(96)), new(Fluid.ReferenceStock)]));
        Assert.Equal("error stock-short: 2 L of Davidson's fixative needs 30 mL more of acetic acid 100 %mass than there is; get more of it, or mix less", Told([new(Fluid.Ethanol(96)), new(Fluid.ReferenceStock), new(acid) { OnHand = Volume.FromMilliliters(200) }]));

        // Ready-made it is poured as it is; and a litre's recipe serves for any volume.
        Assert.Equal("Davidson's fixative", Assert.Single(Mixed(davidson, 2, [new(davidson)]).Value!.Parts).Name);
        var litre = RecipeSolver.PerLitre(new(davidson, Volume.FromLiters(2), [.. davidson.UsualStocks.Select(s => new StockFluid(s))])).Value!.InVolume(Volume.FromLiters(2));
        Assert.Equal(recipe.Parts.Select(p => Math.Round(p.Mass.Kilograms, 12)), litre.Parts.Select(p => Math.Round(p.Mass.Kilograms, 12)));

        string Told(ImmutableArray<StockFluid> stocks) => Assert.Single(Mixed(davidson, 2, stocks).Findings).ToString();
    }

    private static bool Close((double, double) one, (double, double) other) => Math.Abs(one.Item1 - other.Item1) < 1e-6 && Math.Abs(one.Item2 - other.Item2) < 1e-6;

    private static Checked<Recipe> Mixed(Fluid target, double litres, ImmutableArray<StockFluid> stocks) => RecipeSolver.Solve(new(target, Volume.FromLiters(litres), stocks));

    /// <summary>A compound fixative: ethanol gives it its strength, formalin and acid go in in fixed amounts.</summary>
    private sealed class Davidson() : Substance("davidson")
    {
        private static readonly Fluid Stock = Fluid.ReferenceStock, Acid = new AceticAcid().Of(100, StrengthBasis.Mass), E95 = Fluid.Ethanol(95);

        public override Phrase Noun { get; } = new("substance.davidson", "Davidson's fixative");

        public override ImmutableArray<string> Examples => ["Davidson's fixative"];

        public override bool Fixes => true;

        public override Message Gear => Substance.Formaldehyde.Gear;

        public override Message FirstAid => Substance.Formaldehyde.FirstAid;

        public override Solute Active => Solute.Ethanol;

        public override Fluid UsualStock => Fluid.Ethanol(96);

        public override Fluid Of(double percent, StrengthBasis basis) => new(this, 0, StrengthBasis.None, new(
            (Solute.Ethanol, 0.330 * E95.DensityAt(20.0) * E95.Composition[Solute.Ethanol] / 970),
            (Solute.Formaldehyde, 0.220 * Stock.DensityAt(20.0) * 0.37 / 970),
            (Solute.Methanol, 0.220 * Stock.DensityAt(20.0) * 0.12 / 970),
            (Acid.Substance.Active!, 0.115 * 1049 / 970)));

        internal override ImmutableArray<Addition> AdditionsTo(Fluid target) => [new(Stock, 220), new(Acid, 115)];

        internal override IEnumerable<FluidWord> Words => Called("Davidson's fixative", "Davidson's AFA");

        internal override IEnumerable<string> Canonical => ["Davidson's fixative"];

        internal override Checked<Fluid> Read(in WrittenFluid written, in FluidWord word) => new(Of(0, StrengthBasis.None), []);

        internal override string NameOf(Fluid fluid) => "Davidson's fixative";

        // 0.96 to 0.98 g/mL, volumes taken as adding up.
        internal override double Density(in Composition composition, double celsius) => 970 - 0.6 * (celsius - 20);

        internal override double DensityDoubt(in Composition composition, double celsius) => 15;

        internal override double? FlashPoint(Fluid fluid) => 32;

        internal override double? VolumePercent(Fluid fluid, Solute liquid) =>
            liquid == Solute.Ethanol ? 100 * fluid.Composition[liquid] * fluid.DensityAt(20.0) / 789.24 : null;

        internal override string HazardSource => "CLP limits for mixtures";

        internal override Fluid DiluentOf(Fluid target) => Fluid.DistilledWater;

        internal override Refusal? Refuses(Fluid target, Fluid stock, string name) => Refusal.OfForeign(target, stock, name);
    }

    /// <summary>Glacial acetic acid, 1.049 g/mL.</summary>
    private sealed class AceticAcid() : Substance("acetic-acid")
    {
        private static readonly Solute Acid = new("acetic-acid", 60.052) { Hazards = [new("H314", 25), new("H315", 10, 25), new("H319", 10, 25)] };

        public override Phrase Noun { get; } = new("substance.acetic-acid", "acetic acid");

        public override ImmutableArray<string> Examples => ["acetic acid 100 %mass"];

        public override Message Gear => Substance.Formaldehyde.Gear;

        public override Message FirstAid => Substance.Formaldehyde.FirstAid;

        public override Solute Active => Acid;

        public override Fluid Of(double percent, StrengthBasis basis) => new(this, percent, StrengthBasis.Mass, new((Acid, percent / 100)));

        internal override IEnumerable<FluidWord> Words => Called("acetic acid");

        internal override IEnumerable<string> Canonical => ["acetic acid"];

        internal override Checked<Fluid> Read(in WrittenFluid written, in FluidWord word) => new(Of(written.Percent ?? 100, StrengthBasis.Mass), []);

        internal override string NameOf(Fluid fluid) => $"acetic acid {StrengthText.Of(fluid)}";

        internal override double Density(in Composition composition, double celsius) => 998 + 51 * composition[Acid];

        internal override double DensityDoubt(in Composition composition, double celsius) => 20;

        internal override Fluid DiluentOf(Fluid target) => Fluid.DistilledWater;
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
