using System.Collections.Immutable;
using Protocolist.Plans;

namespace Protocolist.Benchmarks.Floors;

/// <summary>The floor under holding a plan: every record and every list of it made once more, from values that are there. No word is made.</summary>
internal static class Records
{
    public static Plan Again(Plan plan) => plan with
    {
        Protocol = plan.Protocol with { },
        Steps = All(plan.Steps, s => s with
        {
            Sites = All(s.Sites, x => x with { }),
            Cuts = All(s.Cuts, x => x with { }),
            Instructions = All(s.Instructions, x => x),
            LookFor = All(s.LookFor, x => x),
            Inspections = All(s.Inspections, x => x),
            Materials = All(s.Materials, x => x with { }),
            Cautions = All(s.Cautions, x => x),
            Figures = All(s.Figures, x => x),
        }),
        Recipes = All(plan.Recipes, r => r with { Method = All(r.Method, x => x), Parts = All(r.Parts, x => x with { }), For = All(r.For, x => x) }),
        Purchases = All(plan.Purchases, p => p with { For = All(p.For, x => x) }),
        Materials = All(plan.Materials, m => m with { Draws = All(m.Draws, x => x with { }), For = All(m.For, x => x) }),
        Costs = plan.Costs with { DisposalByClass = All(plan.Costs.DisposalByClass, x => x with { }) },
        Findings = All(plan.Findings, f => f with { Figures = All(f.Figures, x => x) }),
        Waste = All(plan.Waste, x => x with { }),
        Fluids = All(plan.Fluids, x => x with { }),
        Label = All(plan.Label, x => x),
        Care = All(plan.Care, c => c with { Dates = All(c.Dates, x => x) }),
        Changes = All(plan.Changes, x => x with { }),
        Withdrawn = All(plan.Withdrawn, x => x with { }),
        Figures = All(plan.Figures, f => new Figure(f.Origin, f.Answer)),
    };

    private static ImmutableArray<T> All<T>(ImmutableArray<T> items, Func<T, T> again)
    {
        if (items.IsEmpty) return items;
        var made = ImmutableArray.CreateBuilder<T>(items.Length);
        foreach (var item in items) made.Add(again(item));
        return made.MoveToImmutable();
    }
}
