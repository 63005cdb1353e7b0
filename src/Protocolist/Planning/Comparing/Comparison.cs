using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning.Comparing;

/// <summary>All lawful choices of one specimen's protocol side by side.</summary>
/// <param name="SpecimenId">The specimen.</param>
/// <param name="Protocol">The protocol that serves it.</param>
/// <param name="Ways">One for each combination of choices, in the order of the protocol's options.</param>
public sealed record Comparison(string SpecimenId, PlanProtocol Protocol, ImmutableArray<ComparedWay> Ways)
{
    /// <summary>Combinations that are planned at most.</summary>
    public const int MostWays = 256;

    /// <summary>Plans every combination of choices. What the request has chosen already stays as it is.</summary>
    /// <param name="request">Specimen, shelf, bench, start, and the choices that are settled.</param>
    /// <returns>
    /// The comparison, or why there is none: as <see cref="Planner.Plan"/>. Findings: <c>choices-not-all-compared</c> (note) beyond <see cref="MostWays"/>
    /// combinations, <c>choice-cannot-be-planned</c> (note) for one that no plan can be made of.
    /// </returns>
    public static Checked<Comparison> Of(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var first = Planner.Plan(request);
        if (first.Value is not { } plan) return new(null, first.Findings);
        var protocol = request.Shelf.Protocols.First(p => p.Id == plan.Protocol.Id);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var ways = ImmutableArray.CreateBuilder<ComparedWay>();
        var combinations = Combinations(protocol, request.Choices).Take(MostWays + 1).ToList();
        if (combinations.Count > MostWays)
            findings.Add(Finding.Note("choices-not-all-compared", $"'{protocol.Id}' leaves more than {MostWays} combinations of choices; the first {MostWays} are compared", "settle some of them with --choose"));
        foreach (var choices in combinations.Take(MostWays))
        {
            var made = Planner.Plan(request with { Choices = choices });
            if (made.Value is { } way) ways.Add(Judge(way, Letters(ways.Count)));
            else findings.Add(Finding.Note("choice-cannot-be-planned", $"{string.Join(", ", choices.Select(c => $"{c.Key} {c.Value}"))}: {made.Findings.FirstOrDefault(f => f.Severity == Severity.Error)?.Message ?? "no plan"}", ""));
        }

        return new(new(request.Specimen.Id, plan.Protocol, [.. ways.Select(w => w with { DominatedBy = ways.FirstOrDefault(w.IsDominatedBy)?.Name })]), findings.ToImmutable());
    }

    private static IEnumerable<ImmutableSortedDictionary<string, string>> Combinations(Protocol protocol, ImmutableSortedDictionary<string, string> settled)
    {
        IEnumerable<ImmutableSortedDictionary<string, string>> all = [settled];
        foreach (var choice in protocol.Choices.Where(c => !settled.ContainsKey(c.Name)))
            all = all.SelectMany(sofar => choice.Options.Select(option => sofar.SetItem(choice.Name, option)));
        return all;
    }

    private static ComparedWay Judge(Plan plan, string name) => new()
    {
        Name = name,
        Choices = plan.Choices,
        Startable = plan.Startable,
        Days = plan.Start is { } start && plan.End is { } end ? (end.ToInstant() - start.ToInstant()).TotalDays : null,
        HandsOnHours = plan.Steps.Sum(s => s.HandsOn.TotalHours),
        CostNow = plan.Costs.Cash,
        OverTenYears = plan.Costs.OverTenYears,
        FormaldehydeStockLitres = plan.Recipes.SelectMany(r => r.Parts).Sum(StockEquivalent),
        FlammableAlcoholLitres = plan.Recipes.SelectMany(r => r.Parts).Where(p => FluidOf(p) is { AlcoholVolumePercent: >= 24 }).Sum(p => p.Volume?.Liters ?? 0),
        Errors = plan.Findings.Count(f => f.Severity == Severity.Error),
        Warnings = plan.Findings.Count(f => f.Severity == Severity.Warning),
        Remarks = KeepingRemarks.Of(plan),
    };

    /// <summary>Litres of the reference stock that hold as much formaldehyde as this part.</summary>
    private static double StockEquivalent(RecipePart part) =>
        FluidOf(part) is { HasFormaldehyde: true, FormaldehydeGramsPerLitre: { } grams } ? (part.Volume?.Liters ?? 0) * grams / (Fluid.ReferenceStock.FormaldehydeGramsPerLitre ?? grams) : 0;

    private static Fluid? FluidOf(RecipePart part)
    {
        // Used fixative carries the bottle's id behind its name.
        var at = part.Name.IndexOf(" (", StringComparison.Ordinal);
        return part.Volume is null ? null : Fluid.Read(at < 0 ? part.Name : part.Name[..at]).Value ?? Fluid.Read(part.Name).Value;
    }

    /// <summary>A to Z, AA to ZZ ...</summary>
    private static string Letters(int number) => number < 26 ? ((char)('A' + number)).ToString() : Letters(number / 26 - 1) + Letters(number % 26);
}
