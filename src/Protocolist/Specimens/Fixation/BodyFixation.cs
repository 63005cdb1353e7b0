using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Specimens.Fixation;

/// <summary>How long one region takes.</summary>
/// <param name="Region">Which region.</param>
/// <param name="DepthMm">What is left to cross, mm.</param>
/// <param name="By">What brings the fluid there: <see cref="FromOutside"/>, <see cref="ByCavity"/>, <see cref="ByCuts"/> or <see cref="ByInjection"/>.</param>
/// <param name="Time">The time, binding included.</param>
internal sealed record RegionFixation(BodyRegion Region, double DepthMm, Phrase By, TimeBand Time)
{
    /// <summary>Through the skin alone.</summary>
    public static Phrase FromOutside { get; } = new("fixed-from-outside", "from outside");

    /// <summary>From the body cavity, opened or filled.</summary>
    public static Phrase ByCavity { get; } = new("fixed-by-cavity", "by the cavity");

    /// <summary>From cuts close enough to count on.</summary>
    public static Phrase ByCuts { get; } = new("fixed-by-cuts", "by cuts");

    /// <summary>From what is injected.</summary>
    public static Phrase ByInjection { get; } = new("fixed-by-injection", "by injection");
}

/// <summary>How long a body takes to be fixed to the core, with what is cut and injected.</summary>
internal sealed record BodyFixation
{
    // A core that fluid needs so long to reach, at the measured rate and 20 degC, is at risk or lost: judgement. Fish of 30 cm are
    // fixed whole within a week by handbooks, which is 4 to 5 d; nobody reports a sound core after two weeks unreached.
    private const double RiskHours = 5 * 24;
    private const double LossHours = 14 * 24;

    private const string Reached = "the middle of the {region}, {depth:0 mm} in, is reached after {reached:0 days} at best ({fixed:0 days} with binding)";

    private static readonly Phrase Armoured = new("armour-closed", "nothing goes through the shell or armour of {group:a} left closed");
    private static readonly Phrase ArmouredRemedy = new("armour-closed.remedy", "open, wedge or pierce it so that fluid gets in");
    private static readonly Phrase WillRot = new("core-will-rot", Reached + ": it will rot{others}");
    private static readonly Phrase MayRot = new("core-may-rot", Reached + ": it may rot{others}");
    private static readonly Phrase OthersToo = new("core-will-rot.others", "; too late too: {regions}");
    private static readonly Phrase CutAndInject =
        new("core-will-rot.remedy-whole", "cut and inject it: hair, scales and skin keep the fluid out besides");
    private static readonly Phrase CutCloser = new("core-will-rot.remedy", "inject it, or cut it closer; keep it cold until it is reached");
    private static readonly Phrase NeverOpened = new(
        "core-will-rot.remedy-unopened", "such a body is not opened: change the fluid often, keep it cold, and divide a large one where that is allowed");

    private static readonly Phrase OverPromises = new(
        "rule-over-promises", "'{rule}' would give {says:0.# days} for {depth:0 mm}; the model gives {low:0} to {high:0}");
    private static readonly Phrase LongerIsPlanned = new("rule-over-promises.remedy", "the longer time is planned");

    /// <summary>The regions in the order of the group's table.</summary>
    public required ImmutableArray<RegionFixation> Regions { get; init; }

    /// <summary>The whole body: every region is done.</summary>
    public required TimeBand Time { get; init; }

    /// <summary>The region that is done last.</summary>
    public required RegionFixation Slowest { get; init; }

    /// <summary>What rules of thumb say of the depth of the slowest region.</summary>
    public ImmutableArray<RuleOfThumb> Thumbs => RulesOfThumb.For(Slowest.DepthMm);

    /// <summary>The time to plan with, h: the model's safe end, or the soundest rule of thumb where that is longer.</summary>
    public double PlannedHours => Math.Max(Time.HighHours, RulesOfThumb.SoundHours(Slowest.DepthMm));

    /// <summary>Works out the time for a body.</summary>
    /// <param name="body">Its measure.</param>
    /// <param name="injections">How it is injected, or null.</param>
    /// <param name="cuts">How it is cut, or null.</param>
    /// <param name="fixative">The fixative.</param>
    /// <param name="temperatureC">Temperature of the bath, °C.</param>
    /// <returns>
    /// The time, or null outside 0 to 40 °C. Findings: those of <see cref="Warmth.Check"/>; <c>core-will-rot</c> (error) or
    /// <c>core-may-rot</c>, of the region that is reached last, <c>armour-closed</c> (warnings), <c>rule-over-promises</c> (note).
    /// </returns>
    public static Checked<BodyFixation> Of(
        BodyMeasure body, InjectionPlan? injections = null, CutPlan? cuts = null, Fixative fixative = Fixative.Formaldehyde, double temperatureC = 20)
    {
        ArgumentNullException.ThrowIfNull(body);
        if (Warmth.Check(temperatureC) is { } unfit) return new(null, [unfit]);
        var bath = new FixingBath(fixative, temperatureC);
        var regions = new RegionFixation[body.Regions.Length];
        var slowest = 0;
        TimeBand time = default;
        for (var i = 0; i < regions.Length; i++)
        {
            var part = body.Regions[i];
            regions[i] = Region(body.Group, part, Injected(injections, part.Region), CutInto(cuts, part.Region), bath);
            time = i == 0 ? regions[i].Time : time.AndAlso(regions[i].Time);
            if (regions[i].Time.HighHours > regions[slowest].Time.HighHours) slowest = i;
        }

        var fixation = new BodyFixation { Regions = ImmutableCollectionsMarshal.AsImmutableArray(regions), Time = time, Slowest = regions[slowest] };
        return new(fixation, Findings(body, fixation, injections, cuts, bath, Warmth.KeepingFactor(temperatureC)));
    }

    private static RegionInjection? Injected(InjectionPlan? injections, BodyRegion region)
    {
        if (injections is null) return null;
        foreach (var injected in injections.Regions)
        {
            if (injected.Region == region) return injected;
        }

        return null;
    }

    private static RegionCuts? CutInto(CutPlan? cuts, BodyRegion region)
    {
        if (cuts is null) return null;
        foreach (var cut in cuts.Regions)
        {
            if (cut.Region == region) return cut;
        }

        return null;
    }

    private static RegionFixation Region(TaxonGroup group, in RegionMeasure part, RegionInjection? injected, RegionCuts? cut, FixingBath bath)
    {
        var (region, half) = (part.Region, part.HalfThickness.Nominal.Millimeters);
        var (depth, by) = (half, RegionFixation.FromOutside);
        if (region.IsCavity && (injected is not null || cut is { OpensCavity: true }))
            Shorten(ref depth, ref by, EffectiveDepth.CavityMm(half), RegionFixation.ByCavity);
        if (cut?.ReachMm is { } between) Shorten(ref depth, ref by, between, RegionFixation.ByCuts);
        if (injected is not null) Shorten(ref depth, ref by, injected.ReachMm, RegionFixation.ByInjection);

        // Needle and knife are not counted on to leave less than custom spares: so a larger animal is never planned shorter.
        var floor = Math.Min(half, InjectionPlan.SparedUpToMm(region, group));
        if (depth < floor) depth = floor;
        var time = bath.Time(depth, region.Tissue);

        // A cavity lies within a wall of muscle: the slower of the two decides.
        if (region.IsCavity) time = time.AndAlso(bath.Time(depth, Tissue.Muscle));
        return new(region, depth, by, time);
    }

    private static void Shorten(ref double depth, ref Phrase by, double mm, Phrase way)
    {
        if (mm < depth) (depth, by) = (mm, way);
    }

    private static ImmutableArray<Finding> Findings(
        BodyMeasure body, BodyFixation fixation, InjectionPlan? injections, CutPlan? cuts, FixingBath bath, double keeps)
    {
        var group = body.Group;
        ImmutableArray<Finding> findings = [];
        var untouched = injections is null or { Regions.IsEmpty: true } && cuts is null or { Regions.IsEmpty: true };
        if (group.Barrier is SkinBarrier.Armour && untouched)
            findings = findings.Add(Finding.Warning("armour-closed", Armoured.With(("group", group.Name)), ArmouredRemedy));

        if (Late(fixation, bath, keeps) is { Count: > 0 } late)
        {
            var remedy = !BodyKind.Of(body).Allows(Gestures.Cut) ? NeverOpened : untouched && group.Barrier >= SkinBarrier.Hide ? CutAndInject : CutCloser;
            findings = findings.Add(TooLate(late, bath, keeps, remedy));
        }

        if (RulesOfThumb.OverPromising(fixation.Slowest.DepthMm, fixation.Time.LowHours) is { } rule)
        {
            var message = OverPromises.With(
                ("rule", rule.Says), Hours("says", rule.Hours), ("depth", Length.FromMillimeters(fixation.Slowest.DepthMm)),
                ("low", fixation.Time.LowHours / 24), ("high", fixation.Time.HighHours / 24));
            findings = findings.Add(Finding.Note("rule-over-promises", message, LongerIsPlanned));
        }

        return findings;
    }

    /// <summary>The regions whose middle is reached too late, the last of all first.</summary>
    private static List<RegionFixation>? Late(BodyFixation fixation, FixingBath bath, double keeps)
    {
        List<RegionFixation>? late = null;
        foreach (var region in fixation.Regions)
        {
            if (region.Time.LowHours - bath.Binding.LowHours <= RiskHours * keeps) continue;
            late ??= [];
            var at = late.FindIndex(l => l.Time.LowHours < region.Time.LowHours);
            late.Insert(at < 0 ? late.Count : at, region);
        }

        return late;
    }

    /// <summary>Said once: of the region that is reached last, the others named.</summary>
    private static Finding TooLate(List<RegionFixation> late, FixingBath bath, double keeps, Phrase remedy)
    {
        var last = late[0];
        var reached = last.Time.LowHours - bath.Binding.LowHours;
        var others = late.Count == 1 ? default : OthersToo.With(Argument.Messages("regions", late.Skip(1).Select(l => (Message)l.Region.Name)));
        Argument[] facts =
        [
            ("region", last.Region.Name), ("depth", Length.FromMillimeters(last.DepthMm)), Hours("reached", reached), Hours("fixed", last.Time.LowHours),
            ("others", others),
        ];
        var finding = reached > LossHours * keeps
            ? Finding.Error("core-will-rot", WillRot.With(facts), remedy)
            : Finding.Warning("core-may-rot", MayRot.With(facts), remedy);
        return finding with { Subject = last.Region.Id };
    }

    private static Argument Hours(string name, double hours) => Argument.Of(name, hours * 3600, Dimension.OfTime);
}
