using FsCheck;
using FsCheck.Fluent;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Properties.Specimens;

/// <summary>An animal of any group, from a gram to sixty kilograms, and how it might be treated.</summary>
public sealed record Animal(string Group, double Grams, double More, double Celsius, double Warmer, double Dose, double SpacingMm, bool Inject, bool Cut, bool Cover);

public static class Animals
{
    public static Arbitrary<Animal> Any() =>
        (from @group in Gen.Elements<string>(Kinds.Bundled.Groups.Select(g => g.Id))
         from log in Gen.Choose(0, 4778) // 10^4.778 = 60 kg
         from more in Gen.Choose(0, 3000)
         from cold in Gen.Choose(0, 400)
         from warm in Gen.Choose(0, 400)
         from dose in Gen.Choose(30, 250)
         from spacing in Gen.Choose(5, 120)
         from inject in Gen.Elements(true, false)
         from cut in Gen.Elements(true, false)
         from cover in Gen.Elements(true, false)
         select new Animal(@group, Math.Pow(10, log / 1000.0), 1 + (more / 1000.0), Math.Min(cold, warm) / 10.0, Math.Max(cold, warm) / 10.0, dose, spacing, inject, cut, cover))
        .ToArbitrary();
}

[FsCheck.Xunit.Properties(Arbitrary = [typeof(Animals)], MaxTest = 500)]
public class BodyProperties
{
    [Property]
    public bool More_mass_never_means_less_time(Animal a)
    {
        var (light, heavy) = (Time(a, a.Grams, a.Celsius), Time(a, a.Grams * a.More, a.Celsius));
        return NotLess(light, heavy);
    }

    [Property]
    public bool More_mass_never_means_a_thinner_body(Animal a) =>
        Body(a, a.Grams * a.More).HalfThickness.Nominal >= Body(a, a.Grams).HalfThickness.Nominal;

    [Property]
    public bool More_length_never_means_less_mass_and_more_mass_never_less_length(Animal a)
    {
        var mm = a.SpacingMm * 3;
        var (shorter, longer) = (Reckoned(mm), Reckoned(mm * a.More));
        var (light, heavy) = (Body(a, a.Grams), Body(a, a.Grams * a.More));
        return longer.Mass.Nominal >= shorter.Mass.Nominal && longer.Length.Nominal >= shorter.Length.Nominal && heavy.Length.Nominal >= light.Length.Nominal
            && heavy.Width.Nominal >= light.Width.Nominal && heavy.Height.Nominal >= light.Height.Nominal;

        BodyMeasure Reckoned(double length) =>
            BodyMeasure.Of(new Specimen { Id = "x", Group = a.Group, Length = Length.FromMillimeters(length) }).Value!;
    }

    [Property]
    public bool More_mass_at_one_length_never_means_a_thinner_body(Animal a) =>
        Long(a, a.Grams * a.More).HalfThickness.Nominal >= Long(a, a.Grams).HalfThickness.Nominal;

    [Property]
    public bool Every_estimate_is_a_number_within_its_band(Animal a)
    {
        BodyMeasure[] bodies =
        [
            Body(a, a.Grams), Long(a, a.Grams), BodyMeasure.Of(new Specimen { Id = "x", Group = a.Group, Length = Length.FromMillimeters(a.SpacingMm) }).Value!,
        ];
        return bodies.All(b =>
            IsBand(b.Mass.Low.Grams, b.Mass.Nominal.Grams, b.Mass.High.Grams)
            && IsBand(b.Volume.Low.Milliliters, b.Volume.Nominal.Milliliters, b.Volume.High.Milliliters)
            && new[] { b.Length, b.TotalLength, b.Height, b.Width, b.HalfThickness }.All(e => IsBand(e.Low.Meters, e.Nominal.Meters, e.High.Meters)));

        static bool IsBand(double low, double nominal, double high) => low > 0 && low <= nominal && nominal <= high && double.IsFinite(high);
    }

    [Property]
    public bool Fewer_cuts_never_mean_less_time(Animal a)
    {
        var body = Body(a, a.Grams);
        var injections = a.Inject ? InjectionPlan.For(body, new(a.Dose)).Value : null;
        TimeBand With(CutPlan? cuts) => BodyFixation.Of(body, injections, cuts, temperatureC: a.Celsius).Value!.Time;
        var close = With(CutPlan.For(body, a.SpacingMm, a.Cover).Value);
        var wide = With(CutPlan.For(body, a.SpacingMm * a.More, a.Cover).Value);
        return NotLess(close, wide) && NotLess(wide, With(null));
    }

    [Property]
    public bool Less_injected_never_means_less_time(Animal a)
    {
        var body = Body(a, a.Grams);
        TimeBand With(double? dose) => BodyFixation.Of(body, dose is null ? null : InjectionPlan.For(body, new(dose)).Value, temperatureC: a.Celsius).Value!.Time;
        return NotLess(With(a.Dose * a.More), With(a.Dose)) && NotLess(With(a.Dose), With(null));
    }

    [Property]
    public bool Colder_is_never_faster(Animal a) => NotLess(Time(a, a.Grams, a.Warmer), Time(a, a.Grams, a.Celsius));

    [Property]
    public bool Bands_are_in_order(Animal a)
    {
        var time = Time(a, a.Grams, a.Celsius);
        var body = Body(a, a.Grams);
        return time.LowHours <= time.NominalHours && time.NominalHours <= time.HighHours
            && body.Volume.Low <= body.Volume.Nominal && body.Volume.Nominal <= body.Volume.High
            && body.HalfThickness.Low <= body.HalfThickness.Nominal && body.HalfThickness.Nominal <= body.HalfThickness.High;
    }

    [Property]
    public bool Regions_add_up_to_the_body(Animal a)
    {
        var body = Body(a, a.Grams);
        return Math.Abs((body.Regions.Sum(r => r.Volume.Nominal.Milliliters) / body.Volume.Nominal.Milliliters) - 1) < 1e-9;
    }

    [Property]
    public bool What_is_injected_adds_up_and_is_near_the_dose(Animal a)
    {
        var body = Body(a, a.Grams);
        var plan = InjectionPlan.For(body, new(a.Dose)).Value!;
        var most = plan.Regions.Sum(r => r.SiteMl * r.Region.Count); // one site more a part, by rounding up
        return plan.TotalMl <= (a.Dose * a.Grams / 1000) + most + 1e-9
            && plan.Regions.All(r => r.Sites >= r.Region.Count && r.SiteMl > 0 && r.TotalMl > 0);
    }

    [Property]
    public bool Depth_and_time_undo_each_other(Animal a)
    {
        var hours = a.Grams;
        var k = a.More;
        return Math.Abs(Penetration.HoursToReach(Penetration.DepthMm(hours, k), k) - hours) < 1e-9 * hours;
    }

    [Property]
    public bool Safeguard_keeps_its_word(Animal a)
    {
        var body = Body(a, a.Grams);
        var hours = 50 + (a.SpacingMm * 10);
        var plan = SafeguardPlan.For(body, hours, temperatureC: a.Celsius).Value!;
        // The slowest tissue, at the depth called safe, is done in the time asked for.
        return body.Regions.All(r =>
            Penetration.FixationTime(plan.SafeDepthMm, r.Region.Tissue, Fixative.Formaldehyde, a.Celsius).HighHours <= hours + 1e-6);
    }

    [Property]
    public bool Measuring_finds_nothing_wrong_with_an_animal_of_its_own_proportions(Animal a)
    {
        var body = Body(a, a.Grams);
        var again = new Specimen
        {
            Id = "again",
            Group = a.Group,
            Mass = body.Mass.Nominal,
            Thickness = body.HalfThickness.Nominal * 2,
            DisplacementVolume = body.Volume.Nominal,
        };
        return BodyMeasure.Of(again).Findings.IsEmpty;
    }

    private static BodyMeasure Long(Animal a, double grams) => BodyMeasure.Of(new Specimen
    {
        Id = "x",
        Group = a.Group,
        Mass = Mass.FromGrams(grams),
        Length = Length.FromMillimeters(a.SpacingMm * 3),
    }).Value!;

    private static BodyMeasure Body(Animal a, double grams) =>
        BodyMeasure.Of(new Specimen { Id = "x", Group = a.Group, Mass = Mass.FromGrams(grams) }).Value!;

    private static TimeBand Time(Animal a, double grams, double celsius)
    {
        var body = Body(a, grams);
        return BodyFixation.Of(
            body, a.Inject ? InjectionPlan.For(body, new(a.Dose)).Value : null, a.Cut ? CutPlan.For(body, a.SpacingMm, a.Cover).Value : null,
            temperatureC: celsius).Value!.Time;
    }

    // The last bits of a cube root may differ.
    private static bool NotLess(TimeBand shorter, TimeBand longer) =>
        longer.LowHours >= shorter.LowHours * (1 - 1e-12) && longer.NominalHours >= shorter.NominalHours * (1 - 1e-12)
        && longer.HighHours >= shorter.HighHours * (1 - 1e-12);
}
