namespace Protocolist.Plans;

/// <content>What a step cannot say.</content>
internal static partial class PlanFaults
{
    private static void Step(string path, Step step, Faults faults)
    {
        faults.Names($"{path}.id", step.Id);
        faults.Needs($"{path}.source", step.Source);
        faults.Day($"{path}.start", step.Start);
        faults.Day($"{path}.end", step.End);
        if (step.Start is { } start && step.End is { } end && end.ToInstant() < start.ToInstant()) faults.Add(Backwards.With(("path", path)));
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
            faults.Counted($"{below}.sites", site.Sites);
            faults.Volume($"{below}.perSiteLowMl", site.PerSiteLow);
            faults.Volume($"{below}.perSiteMl", site.PerSite);
            faults.Volume($"{below}.perSiteHighMl", site.PerSiteHigh);
            faults.Volume($"{below}.totalMl", site.Total);
        }

        foreach (var (below, cut) in faults.Each($"{path}.cuts", step.Cuts))
        {
            faults.Counted($"{below}.count", cut.Count);
            faults.Length($"{below}.lengthMm", cut.Length);
            faults.Length($"{below}.depthMm", cut.Depth);
            faults.Length($"{below}.spacingMm", cut.Spacing);
        }

        faults.There($"{path}.instructions", step.Instructions);
        faults.There($"{path}.lookFor", step.LookFor);
        faults.There($"{path}.cautions", step.Cautions);
        foreach (var (below, material) in faults.Each($"{path}.materials", step.Materials))
        {
            faults.Needs($"{below}.id", material.Id);
            faults.Needs($"{below}.from", material.From);
            faults.Volume($"{below}.volumeMl", material.Volume);
            if (material.Pieces < 0) faults.Add(Impossible.With(("path", $"{below}.pieces"), ("value", material.Pieces)));
        }

        faults.Whole($"{path}.figures", step.Figures);
        faults.There($"{path}.inspections", step.Inspections);
        faults.There($"{path}.changesAt", step.ChangesAt);
        foreach (var at in step.ChangesAt.AsSpan()) faults.Day($"{path}.changesAt", at);
        foreach (var at in step.Inspections.AsSpan()) faults.Day($"{path}.inspections", at);
    }
}
