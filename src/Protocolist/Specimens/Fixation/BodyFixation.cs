using System.Collections.Immutable;
using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Specimens.Fixation;

/// <summary>How long one region takes.</summary>
/// <param name="Region">Which region.</param>
/// <param name="DepthMm">What is left to cross, mm.</param>
/// <param name="By">What brings the fluid there: <c>from outside</c>, <c>by the cavity</c>, <c>by cuts</c>, <c>by injection</c>.</param>
/// <param name="Time">The time, binding included.</param>
public sealed record RegionFixation(BodyRegion Region, double DepthMm, string By, TimeBand Time);

/// <summary>How long a body takes to be fixed to the core, with what is cut and injected.</summary>
public sealed record BodyFixation
{
    // A core that fluid needs so long to reach, at the measured rate and 20 degC, is at risk or lost: judgement. Fish of 30 cm are
    // fixed whole within a week by handbooks, which is 4 to 5 d; nobody reports a sound core after two weeks unreached.
    private const double RiskHours = 5 * 24;
    private const double LossHours = 14 * 24;

    /// <summary>The regions in the order of the group's table.</summary>
    public required ImmutableArray<RegionFixation> Regions { get; init; }

    /// <summary>The whole body: every region is done.</summary>
    public required TimeBand Time { get; init; }

    /// <summary>The region that is done last.</summary>
    public required RegionFixation Slowest { get; init; }

    /// <summary>What rules of thumb say of the same depth.</summary>
    public required ImmutableArray<RuleOfThumb> Thumbs { get; init; }

    /// <summary>The time to plan with, h: the model's safe end, or the soundest rule of thumb where that is longer.</summary>
    public double PlannedHours => Math.Max(Time.HighHours, Thumbs.Where(t => !t.OverPromises).Select(t => t.Hours).DefaultIfEmpty(0).Max());

    /// <summary>Reckons the time for a body.</summary>
    /// <param name="body">Its measure.</param>
    /// <param name="injections">How it is injected, or null.</param>
    /// <param name="cuts">How it is cut, or null.</param>
    /// <param name="fixative">The fixative.</param>
    /// <param name="temperatureC">Temperature of the bath, °C.</param>
    /// <returns>
    /// The time, or null outside 0 to 40 °C. Findings: those of <see cref="Warmth.Check"/>; <c>core-will-rot</c> (error),
    /// <c>core-may-rot</c>, <c>armour-closed</c> (warnings), <c>rule-over-promises</c> (note).
    /// </returns>
    public static Checked<BodyFixation> Of(
        BodyMeasure body, InjectionPlan? injections = null, CutPlan? cuts = null, Fixative fixative = Fixative.Formaldehyde, double temperatureC = 20)
    {
        if (Warmth.Check(temperatureC) is { } unfit) return new(null, [unfit]);
        var regions = body.Regions.Select(r => Region(
            body, r,
            injections?.Regions.FirstOrDefault(i => i.Region == r.Region),
            cuts?.Regions.FirstOrDefault(c => c.Region == r.Region),
            fixative, temperatureC)).ToImmutableArray();
        var slowest = regions.MaxBy(r => r.Time.HighHours)!;
        var fixation = new BodyFixation
        {
            Regions = regions,
            Time = regions.Select(r => r.Time).Aggregate((a, b) => a.AndAlso(b)),
            Slowest = slowest,
            Thumbs = RulesOfThumb.For(slowest.DepthMm),
        };
        return new(fixation, [.. Findings(body, fixation, injections, cuts, fixative, temperatureC)]);
    }

    private static RegionFixation Region(
        BodyMeasure body, RegionMeasure part, RegionInjection? injected, RegionCuts? cut, Fixative fixative, double temperatureC)
    {
        var half = part.HalfThickness.Nominal.Millimeters;
        var (depth, by) = (half, "from outside");
        void Offer(double mm, string how)
        {
            if (mm < depth) (depth, by) = (mm, how);
        }

        if (part.Region.IsCavity && (injected is not null || cut is { OpensCavity: true })) Offer(EffectiveDepth.CavityMm(half), "by the cavity");
        if (cut?.ReachMm is { } between) Offer(between, "by cuts");
        if (injected is not null) Offer(injected.ReachMm, "by injection");
        // Needle and knife are not counted on to leave less than custom spares: so a larger animal is never planned shorter.
        var floor = Math.Min(half, InjectionPlan.SparedUpToMm(part.Region, body.Group));
        if (depth < floor) depth = floor;
        var time = Penetration.FixationTime(depth, part.Region.Tissue, fixative, temperatureC);
        // A cavity lies within a wall of muscle: the slower of the two decides.
        if (part.Region.IsCavity) time = time.AndAlso(Penetration.FixationTime(depth, Tissue.Muscle, fixative, temperatureC));
        return new(part.Region, depth, by, time);
    }

    private static IEnumerable<Finding> Findings(
        BodyMeasure body, BodyFixation fixation, InjectionPlan? injections, CutPlan? cuts, Fixative fixative, double temperatureC)
    {
        var untouched = injections is null or { Regions.IsEmpty: true } && cuts is null or { Regions.IsEmpty: true };
        if (body.Group.Barrier is SkinBarrier.Armour && untouched)
        {
            yield return Finding.Warning("armour-closed", $"nothing goes through the shell or armour of a {body.Group.Name} left closed", "open, wedge or pierce it so that fluid gets in");
        }

        var keeps = Warmth.KeepingFactor(temperatureC);
        foreach (var region in fixation.Regions)
        {
            var reached = region.Time.LowHours - Warmth.Binding(fixative, temperatureC).LowHours;
            if (reached <= RiskHours * keeps) continue;
            var message = Invariant($"the middle of the {region.Region.Name}, {region.DepthMm:0} mm in, is reached after {reached / 24:0} days at best ({region.Time.LowHours / 24:0} days with binding)");
            var remedy = untouched && body.Group.Barrier >= SkinBarrier.Hide
                ? "cut and inject it: hair, scales and skin keep the fluid out besides"
                : "inject it, or cut it closer; keep it cold until it is reached";
            yield return reached > LossHours * keeps
                ? Finding.Error("core-will-rot", message + ": it will rot", remedy) with { Subject = region.Region.Id }
                : Finding.Warning("core-may-rot", message + ": it may rot", remedy) with { Subject = region.Region.Id };
        }

        if (fixation.Thumbs.Where(t => t.OverPromises && t.Hours < fixation.Time.LowHours).MaxBy(t => t.Hours) is { } rule)
        {
            yield return Finding.Note(
                "rule-over-promises",
                Invariant($"'{rule.Says}' would give {rule.Hours / 24:0.#} days for {fixation.Slowest.DepthMm:0} mm; the model gives {fixation.Time.LowHours / 24:0} to {fixation.Time.HighHours / 24:0}"),
                "the longer time is planned");
        }
    }
}
