using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Specimens;
using Protocolist.Specimens.Groups;

namespace Protocolist.Plans;

/// <summary>
/// What a plan cannot say, whether it was read from a file or made by a program: parts that are not there, amounts below nothing, times that
/// run backwards, days that nobody means. Each is told with its path in the plan's JSON.
/// </summary>
internal static class PlanFaults
{
    private static readonly Phrase Backwards = new("plan-impossible.backwards", "'{path}' ends before it begins");
    private static readonly Phrase UnknownZone = new("unknown-zone.plan", "there is no time zone '{zone}'");
    private static readonly Phrase OfSpecimen = new("plan-impossible.specimen", "'{path}': {why}");
    private static readonly Phrase Unbalanced = new(
        "plan-impossible.books", "the books of '{path}' do not add up: what is used and left is not what was there and bought");

    /// <summary>Everything that is wrong with it in itself, as errors.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="zones">The time zones by id; null where the plan's is not asked for.</param>
    public static ImmutableArray<Finding> Of(Plan plan, IDateTimeZoneProvider? zones = null)
    {
        var faults = new FaultyParts();
        faults.Needs("protocol", plan.Protocol);
        faults.Needs("specimen", plan.Specimen);
        faults.Needs("costs", plan.Costs);
        faults.Needs("bench", plan.Bench);
        faults.Names("zone", plan.Zone);
        if (plan.Protocol is { } protocol)
        {
            faults.Names("protocol.id", protocol.Id);
            faults.Names("protocol.title", protocol.Title);
            faults.Counted("protocol.revision", protocol.Revision);
            foreach (var (path, file) in faults.Each("protocol.files", protocol.Files))
            {
                faults.Names($"{path}.name", file.Name);
                faults.Names($"{path}.text", file.Text);
            }

            if (protocol.Files is { IsDefault: false, IsEmpty: true }) faults.Needs("protocol.files", null);
        }

        if (plan.Specimen is { } specimen)
        {
            foreach (var finding in specimen.BeyondLimits().Concat(Untold(specimen, plan.Findings)))
                faults.Add(OfSpecimen.With(("path", $"specimen.{finding.Subject}"), ("why", finding.Message)));
        }

        faults.Day("start", plan.Start);
        faults.Day("end", plan.End);
        faults.Day("earliestStart", plan.EarliestStart);
        faults.Day("loggedUntil", plan.LoggedUntil);
        faults.Day("by", plan.By);
        var wishes = plan.Wishes ?? PlanWishes.None;

        // No soak at all is as impossible as less than none.
        foreach (var (step, soak) in wishes.Soaks) faults.Time($"wishes.soakHours.{step}", soak == Duration.Zero ? -Duration.Epsilon : soak);
        foreach (var (step, day) in wishes.Dates) faults.Day($"wishes.dates.{step}", day);
        if (plan.Settled is { } settled)
        {
            foreach (var (step, vessel) in settled.Vessels) faults.Names($"settled.vessels.{step}", vessel);
            foreach (var (fluid, supply) in settled.Supplies) faults.Names($"settled.supplies.{fluid}", supply);
            if (settled.Posture is { } posture && !PostureRows.IsKept(posture))
                faults.Add(FaultyParts.Impossible.With(("path", "settled.posture"), ("value", posture)));
        }

        faults.Counted("revision", plan.Revision);
        foreach (var (path, step) in faults.Each("steps", plan.Steps)) Step(path, step, faults);
        if (plan.Steps is { IsDefault: false, IsEmpty: true }) faults.Needs("steps", null);
        faults.Unique("steps", plan.Steps, s => s?.Id);
        foreach (var (path, figure) in faults.Each("figures", plan.Figures))
        {
            faults.Names($"{path}.id", figure.Id);
            faults.Whole($"{path}.inputs", figure.Inputs);
        }

        foreach (var (path, recipe) in faults.Each("recipes", plan.Recipes))
        {
            faults.Volume($"{path}.volumeMl", recipe.Volume);
            if (recipe.At.DegreesCelsius is not (> -100 and < 200)) faults.Add(FaultyParts.Impossible.With(("path", $"{path}.atC"), ("value", recipe.At)));
            faults.Whole($"{path}.for", recipe.For);
            foreach (var (below, part) in faults.Each($"{path}.parts", recipe.Parts))
            {
                faults.Volume($"{below}.volumeMl", part.Volume);
                faults.Mass($"{below}.massG", part.Mass);
                if (part is { Fluid: null, Salt: null }) faults.Needs($"{below}.fluid", null);
            }
        }

        foreach (var (path, purchase) in faults.Each("purchases", plan.Purchases))
        {
            faults.Said($"{path}.item", purchase.Item);
            faults.Amount($"{path}.pack", purchase.Pack);
            faults.Counted($"{path}.count", purchase.Count);
            faults.Counted($"{path}.leadDays", purchase.LeadDays);
            faults.Sum($"{path}.price", purchase.Price);
            faults.Whole($"{path}.for", purchase.For);
        }

        foreach (var (path, waste) in faults.Each("waste", plan.Waste))
        {
            faults.Amount($"{path}.amount", waste.Amount);
            faults.Counted($"{path}.uses", waste.Uses);
            faults.Said($"{path}.destination", waste.Destination);
            faults.Needs($"{path}.step", waste.Step);
        }

        foreach (var (path, move) in faults.Each("fluids", plan.Fluids))
        {
            faults.Volume($"{path}.volumeMl", move.Volume);
            faults.Counted($"{path}.filling", move.Filling);
            faults.Counted($"{path}.batches", move.Batches);
            faults.Needs($"{path}.mixedIn", move.MixedIn);
            faults.Time($"{path}.mixingMinutes", move.Mixing);
        }

        foreach (var (path, care) in faults.Each("care", plan.Care))
        {
            faults.Names($"{path}.id", care.Id);
            faults.Said($"{path}.what", care.What);
            faults.Day($"{path}.on", care.On);
            if (care.EveryMonths is { } months && months is < 1 or > 1200)
                faults.Add(FaultyParts.Impossible.With(("path", $"{path}.everyMonths"), ("value", months)));
            faults.There($"{path}.dates", care.Dates);
            foreach (var day in care.Dates.AsSpan()) faults.Day($"{path}.dates", day);
        }

        faults.There("label", plan.Label);
        foreach (var (path, finding) in faults.Each("findings", plan.Findings))
        {
            faults.Names($"{path}.id", finding.Id);
            faults.Needs($"{path}.source", finding.Source);
            faults.Whole($"{path}.figures", finding.Figures);
            faults.Said($"{path}.message", finding.Message);
        }

        foreach (var (path, material) in faults.Each("materials", plan.Materials))
        {
            faults.There($"{path}.draws", material.Draws);
            faults.Whole($"{path}.for", material.For);
            faults.Amount($"{path}.onHand", material.OnHand);
            faults.Amount($"{path}.bought", material.Bought);
            faults.Amount($"{path}.used", material.Used);
            faults.Amount($"{path}.unusable", material.Unusable);
            faults.Amount($"{path}.reserve", material.Reserve);
            faults.Counted($"{path}.uses", material.Uses);
            faults.Names($"{path}.id", material.Id);
            faults.Said($"{path}.name", material.Name);
            if (material.Used.Units + material.Left.Units != material.OnHand.Units + material.Bought.Units) faults.Add(Unbalanced.With(("path", path)));
            foreach (var draw in material.Draws.AsSpan()) faults.Amount($"{path}.draws", draw.Amount);
        }

        foreach (var (path, change) in faults.Each("changes", plan.Changes)) faults.Said($"{path}.what", change.What);
        foreach (var (path, withdrawn) in faults.Each("withdrawn", plan.Withdrawn))
        {
            faults.Names($"{path}.id", withdrawn.Id);
            faults.Said($"{path}.title", withdrawn.Title);
            faults.Counted($"{path}.sequence", withdrawn.Sequence);
            faults.Counted($"{path}.mostInspections", withdrawn.MostInspections);
            faults.Day($"{path}.start", withdrawn.Start);
            faults.Counted($"{path}.mostChanges", withdrawn.MostChanges);
        }

        if (plan.Costs is { } costs) Costs(costs, faults);
        if (faults.IsEmpty) References(plan, faults);
        return zones is null || plan.Zone is null || zones.GetZoneOrNull(plan.Zone) is not null
            ? faults.All()
            : faults.All().Add(Finding.Error("unknown-zone", UnknownZone.With(("zone", Excerpt.Of(plan.Zone))), FaultyParts.MakeAgain));
    }

    /// <summary>What names a step or a figure names one that the plan has. Looked at where all else is right.</summary>
    private static void References(Plan plan, FaultyParts faults)
    {
        var steps = plan.Steps.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        var figures = plan.Figures.Select(f => f.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var (path, step) in faults.Each("steps", plan.Steps)) faults.Knows($"{path}.figures", step.Figures, figures);
        foreach (var (path, figure) in faults.Each("figures", plan.Figures)) faults.Knows($"{path}.inputs", figure.Inputs, figures);
        foreach (var (path, finding) in faults.Each("findings", plan.Findings)) faults.Knows($"{path}.figures", finding.Figures, figures);
        foreach (var (path, recipe) in faults.Each("recipes", plan.Recipes)) faults.Knows($"{path}.for", recipe.For, steps);
        foreach (var (path, purchase) in faults.Each("purchases", plan.Purchases)) faults.Knows($"{path}.for", purchase.For, steps);
        foreach (var (path, material) in faults.Each("materials", plan.Materials)) faults.Knows($"{path}.for", material.For, steps);
        foreach (var (path, waste) in faults.Each("waste", plan.Waste).Where(w => w.Item.Step.Length > 0)) faults.Knows($"{path}.step", waste.Step, steps);
        foreach (var (path, move) in faults.Each("fluids", plan.Fluids))
        {
            if (move.From.Kind == FluidPlaceKind.Step) faults.Knows($"{path}.from", move.From.Step, steps);
            if (move.To.Kind == FluidPlaceKind.Step) faults.Knows($"{path}.to", move.To.Step, steps);
        }
    }

    /// <summary>What cannot be of the specimen. A plan is made of one that contradicts itself, and says so; one that keeps silent was not planned.</summary>
    private static IEnumerable<Finding> Untold(Specimen specimen, ImmutableArray<Finding> findings) =>
        from rule in SpecimenRules.All
        where rule.IsBroken(specimen) && !findings.IsDefault && !findings.Any(f => f?.Id == rule.Id)
        select Finding.Error(rule.Id, rule.Message(specimen), rule.Remedy) with { Subject = rule.Subject };

    private static void Step(string path, Step step, FaultyParts faults)
    {
        faults.Names($"{path}.id", step.Id);
        faults.Said($"{path}.title", step.Title);
        faults.Needs($"{path}.source", step.Source);
        faults.Day($"{path}.start", step.Start);
        faults.Day($"{path}.end", step.End);
        if (step.Start is { } start && step.End is { } end && end.ToInstant() < start.ToInstant()) faults.Add(Backwards.With(("path", path)));
        if (step.Start is null != step.End is null) faults.Needs(step.Start is null ? $"{path}.start" : $"{path}.end", null);
        faults.Time($"{path}.leastHours", step.Least);
        faults.Time($"{path}.mostHours", step.Most);
        faults.Time($"{path}.handsOnMinutes", step.HandsOn);
        faults.Volume($"{path}.volumeMl", step.Volume);
        faults.Counted($"{path}.changes", step.Changes);
        faults.Counted($"{path}.sequence", step.Sequence);
        faults.Counted($"{path}.mostInspections", step.MostInspections);
        faults.Counted($"{path}.mostChanges", step.MostChanges);
        faults.Time($"{path}.lookMinutes", step.Look);
        faults.Time($"{path}.changeMinutes", step.Change);
        foreach (var (below, site) in faults.Each($"{path}.sites", step.Sites))
        {
            faults.Said($"{below}.region", site.Region);
            faults.Counted($"{below}.sites", site.Sites);
            faults.Counted($"{below}.syringeMl", site.SyringeMl);
            faults.Counted($"{below}.needleGauge", site.NeedleGauge);
            faults.Counted($"{below}.needleMm", site.NeedleMm);
            faults.Volume($"{below}.perSiteLowMl", site.PerSiteLow);
            faults.Volume($"{below}.perSiteMl", site.PerSite);
            faults.Volume($"{below}.perSiteHighMl", site.PerSiteHigh);
            faults.Volume($"{below}.totalMl", site.Total);
        }

        foreach (var (below, cut) in faults.Each($"{path}.cuts", step.Cuts))
        {
            faults.Said($"{below}.region", cut.Region);
            faults.Counted($"{below}.count", cut.Count);
            faults.Length($"{below}.lengthMm", cut.Length);
            faults.Length($"{below}.depthMm", cut.Depth);
            faults.Length($"{below}.spacingMm", cut.Spacing);
        }

        faults.There($"{path}.instructions", step.Instructions);
        faults.There($"{path}.lookFor", step.LookFor);
        faults.There($"{path}.cautions", step.Cautions);
        faults.There($"{path}.inspections", step.Inspections);
        foreach (var (below, material) in faults.Each($"{path}.materials", step.Materials))
        {
            faults.Names($"{below}.id", material.Id);
            faults.Said($"{below}.name", material.Name);
            faults.Volume($"{below}.volumeMl", material.Volume);
            faults.Counted($"{below}.pieces", material.Pieces);
        }

        faults.Whole($"{path}.figures", step.Figures);
        faults.There($"{path}.inspections", step.Inspections);
        faults.There($"{path}.changesAt", step.ChangesAt);
        foreach (var at in step.ChangesAt.AsSpan()) faults.Day($"{path}.changesAt", at);
        foreach (var at in step.Inspections.AsSpan()) faults.Day($"{path}.inspections", at);
    }

    private static void Costs(PlanCosts costs, FaultyParts faults)
    {
        foreach (var (name, sum) in (ReadOnlySpan<(string, Money?)>)
        [
            ("cash", costs.Cash), ("used", costs.Used), ("labour", costs.Labour), ("disposal", costs.Disposal),
            ("leftOnShelf", costs.LeftOnShelf), ("wear", costs.Wear),
            ("total", costs.Total), ("bySpecimen", costs.BySpecimen), ("careLabourByYear", costs.CareLabourByYear), ("careFluidByYear", costs.CareFluidByYear),
            ("careByYear", costs.CareByYear), ("overTenYears", costs.OverTenYears),
        ])
        {
            faults.Sum($"costs.{name}", sum);
        }

        faults.Volume("costs.topUpByYearMl", costs.TopUpByYear);
        foreach (var (path, disposal) in faults.Each("costs.disposalByClass", costs.DisposalByClass)) faults.Sum($"{path}.cost", disposal.Cost);
    }
}
