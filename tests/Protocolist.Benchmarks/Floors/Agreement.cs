using System.Globalization;
using Protocolist.Plans;

namespace Protocolist.Benchmarks.Floors;

/// <summary>A floor that works something else out is none: its numbers are held against those of the plan.</summary>
internal static class Agreement
{
    /// <summary>What differs by more than a thousandth part; empty where the floor is a floor.</summary>
    public static IReadOnlyList<string> Differences(PlanNumbers floor, Plan plan)
    {
        var differences = new List<string>();
        var (inject, slits, fix, house, recipe) = (plan.Step("inject-fixative")!, plan.Step("slits")!, plan.Step("fix")!, plan.Step("house")!, plan.Recipes[0]);
        Same("dose", floor.DoseMl, inject.Volume?.Milliliters);
        for (var i = 0; i < inject.Sites.Length; i++)
        {
            Same($"sites {i}", floor.Sites[i].Count, inject.Sites[i].Sites);
            Same($"site {i}", floor.Sites[i].SiteMl, inject.Sites[i].PerSite.Milliliters);
        }

        foreach (var (name, i) in (ReadOnlySpan<(string, int)>)[("neck", 0), ("chest", 1), ("abdomen", 2), ("forelimbs", 3), ("hindlimbs", 4), ("tail", 5)])
        {
            var cut = slits.Cuts.First(c => c.Region.ToString() == name);
            Same($"cuts {name}", floor.Cuts[i].Count, cut.Count);
            Same($"depth {name}", floor.Cuts[i].DepthMm, cut.Depth?.Millimeters);
        }

        Same("least soak", floor.SoakLowH, fix.Least.TotalHours);
        Same("most soak", floor.SoakHighH, fix.Most?.TotalHours);
        Same("fix", floor.FixMl, fix.Volume?.Milliliters);
        Same("house", floor.HouseMl, house.Volume?.Milliliters);
        Same("mixed", floor.MixedMl, recipe.Volume.Milliliters);
        Same("stock", floor.StockMl, recipe.Parts.First(p => p.Fluid is { HasFormaldehyde: true }).Volume?.Milliliters);
        Same("water", floor.WaterMl, recipe.Parts.First(p => p.Fluid is { IsWater: true }).Volume?.Milliliters);
        Same("acid", floor.AcidG, recipe.Parts.First(p => p.Stock == "phosphate-acid").Mass.Grams);
        Same("basic", floor.BasicG, recipe.Parts.First(p => p.Stock == "phosphate-basic").Mass.Grams);
        Same("cash", floor.CashMinor, plan.Costs.Cash?.Minor);
        Same("used", floor.UsedMinor, plan.Costs.Used?.Minor);
        Same("wear", floor.WearMinor, plan.Costs.Wear?.Minor);
        Same("labour", floor.LabourMinor, plan.Costs.Labour?.Minor);
        Same("disposal", floor.DisposalMinor, plan.Costs.Disposal?.Minor);
        Same("total", floor.TotalMinor, plan.Costs.Total?.Minor);
        Same("care fluid", floor.CareFluidMinor, plan.Costs.CareFluidByYear?.Minor);
        var dated = plan.Steps.Where(s => s.Start is not null).ToList();
        for (var i = 0; i < dated.Count; i++)
        {
            Same($"start {dated[i].Id}", floor.Steps[i].From, LocalMinutes(dated[i].Start));
            Same($"end {dated[i].Id}", floor.Steps[i].To, LocalMinutes(dated[i].End));
        }

        Same("looks", floor.Looks.Count, fix.Inspections.Length);
        (string, List<DateOnly>)[] care =
            [("round", floor.Rounds), ("yearly-test", floor.Tests), ("seal-renew", floor.Seals), ("first-check", [floor.FirstCheck])];
        foreach (var (id, dates) in care)
            if (!dates.SequenceEqual(plan.Care.First(c => c.Id == id).Dates.Select(d => d.ToDateOnly()))) differences.Add($"dates of {id}");
        return differences;

        void Same(string what, double ours, double? theirs)
        {
            if (theirs is not { } other || Math.Abs(ours - other) > 1e-3 * Math.Max(Math.Abs(other), 1e-9))
                differences.Add(string.Create(CultureInfo.InvariantCulture, $"{what}: {ours} by hand, {theirs} in the plan"));
        }
    }

    private static double? LocalMinutes(NodaTime.OffsetDateTime? moment) =>
        moment is { } some ? (some.LocalDateTime.ToDateTimeUnspecified() - DateTime.UnixEpoch).TotalMinutes : null;
}
