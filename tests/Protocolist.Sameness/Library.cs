using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Protocolist.Benches;
using Protocolist.Benches.Disposal;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Safety;
using Protocolist.Logs;
using Protocolist.Notation;
using Protocolist.Planning;
using Protocolist.Planning.Batching;
using Protocolist.Planning.Revising;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Proving;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Specimens;
using static Protocolist.Sameness.Facts;

namespace Protocolist.Sameness;

/// <summary>
/// The one place that knows the library: from a case to its facts. When the library's types change, this file is written anew, and says
/// the same of the same. Facts are taken from the plan as its JSON is read back, because what is behind the last place of that form is no fact.
/// </summary>
internal sealed class Library
{
    private static readonly LocalDateTimePattern Start = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");

    private static readonly string[] Units = ["mL", "g", "pieces"];

    private readonly Planner bundled = new(Shelf.Bundled());
    private readonly Planner house;
    private readonly Dictionary<string, PreparedBench> benches;

    public Library(string folder)
    {
        house = new(Shelf.BundledWith([SourcesIn(Path.Combine(folder, "house"))]));
        benches = SourcesIn(Path.Combine(folder, "benches"))
            .ToDictionary(s => s.Name, s => new PreparedBench(BenchReader.Read(s, DateTimeZoneProviders.Tzdb).Value!), StringComparer.Ordinal);
        benches[""] = new(Bench.Empty(DateTimeZone.Utc));
    }

    public IEnumerable<Facts> FactsOf(Case asked) => asked.Ask switch
    {
        Ask.Plan => [Made(asked.Key, Planned(asked))],
        Ask.Revise => Revised(asked),
        Ask.Compare => [Compared(asked)],
        Ask.Batch => Batched(asked),
        _ => [Checked(asked.Key)],
    };

    private static ImmutableArray<SourceText> SourcesIn(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*.yaml").Order(StringComparer.Ordinal).Select(f => new SourceText(Path.GetFileName(f), File.ReadAllText(f)))];

    private static ImmutableSortedDictionary<string, string> Sorted(IDictionary<string, string> pairs) =>
        pairs.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private Planner PlannerOf(Case asked) => asked.House ? house : bundled;

    private PlanRequest Request(Case asked, Specimen specimen) => new(specimen, benches[asked.Bench], Start.Parse(asked.Start).Value)
    {
        Choices = Sorted(asked.Choose),
        Wishes = new() { Vessels = Sorted(asked.Vessels), Supplies = Sorted(asked.Supplies) },
        By = asked.By.Length == 0 ? null : LocalDatePattern.Iso.Parse(asked.By).Value,
    };

    private Checked<Plan> Planned(Case asked)
    {
        var specimen = SpecimenReader.Read(new("specimen.yaml", asked.Specimen));
        var made = specimen.Value is { } read ? PlannerOf(asked).Plan(Request(asked, read)) : null;
        return new(made?.Value, [.. specimen.Findings, .. made?.Findings ?? []]);
    }

    private IEnumerable<Facts> Revised(Case asked)
    {
        var made = Planned(asked);
        yield return Made(asked.Key, made);
        for (var i = 0; i < asked.Logs.Length && made.Value is { } plan; i++)
        {
            var name = $"{asked.Key}/log-{i + 1}";
            var log = LogReader.Read(new("log.yaml", asked.Logs[i]), DateTimeZoneProviders.Tzdb[plan.Zone]);
            var revised = log.Value is null ? null : PlannerOf(asked).Revise(plan, log.Value, benches[asked.Bench]);
            made = new(revised?.Value?.Plan, [.. log.Findings, .. revised?.Findings ?? []]);
            var facts = Made(name, made);
            foreach (var change in revised?.Value?.Changes ?? []) facts.Line("changes", "changed", change.Step);
            yield return facts;
        }
    }

    private Facts Compared(Case asked)
    {
        var facts = new Facts(asked.Key);
        var compared = PlannerOf(asked).Compare(Request(asked, SpecimenReader.Read(new("specimen.yaml", asked.Specimen)).Value!));
        Found(facts, compared.Findings);
        foreach (var way in compared.Value?.Ways ?? [])
        {
            facts.Line(
                "head", $"choices={Pairs(way.Choices)}", $"vessels={Pairs(way.Vessels)}", $"supplies={Pairs(way.Supplies)}", $"startable={way.Startable}",
                Number(way.Days), Number(way.HandsOnHours), Cost(way.CostNow), Cost(way.OverTenYears), Number(way.FormaldehydeStockLitres),
                Number(way.FlammableAlcoholLitres), $"errors={way.Errors}", $"warnings={way.Warnings}", $"dominated={way.DominatedBy is not null}");
        }

        return facts;
    }

    private IEnumerable<Facts> Batched(Case asked)
    {
        var request = new BatchRequest(PlannerOf(asked), benches[asked.Bench], Start.Parse(asked.Start).Value);
        var needs = new JointNeeds();
        foreach (var row in Batch.Open(new StringReader(asked.Specimen), "table.csv", request).Value!.Rows())
        {
            yield return Made($"{asked.Key}/row-{row.Number}", new(row.Plan, row.Findings));
            if (row.Plan is { } plan) needs.Add(plan);
        }

        var (joint, list) = (new Facts($"{asked.Key}/joint"), needs.List(request.Bench.Bench, request.Start.Date));
        Bought(joint, list.Purchases);
        joint.Line("costs", "cost", Cost(list.Cost));
        joint.Line("costs", "apart-at-least", Cost(list.ApartAtLeast));
        Found(joint, list.Findings);
        yield return joint;
    }

    private static Facts Checked(string key)
    {
        var facts = new Facts(key);
        Found(facts, FileCheck.Run(BundledProtocols.Sources(), DateTimeZoneProviders.Tzdb, strict: true, proveAll: true));
        return facts;
    }

    private static Facts Made(string key, Checked<Plan> made)
    {
        var facts = new Facts(key);
        if (made.Value is null)
        {
            facts.Line("head", "no plan");
            Found(facts, made.Findings);
            return facts;
        }

        var plan = PlanJson.Read(new("plan.json", PlanJson.Write(made.Value))).Value!;
        var ids = plan.Steps.Select(s => s.Id).Concat(plan.Withdrawn.Select(w => w.Id)).ToHashSet(StringComparer.Ordinal);
        string StepOr(string id) => ids.Contains(id) ? id : "-";

        facts.Line(
            "head", plan.Protocol.Id, $"choices={Pairs(plan.Choices)}", $"startable={plan.Startable}", Time(plan.Start), Time(plan.End),
            $"zone={plan.Zone}", $"revision={plan.Revision}", $"logged={Time(plan.LoggedUntil)}");
        foreach (var step in plan.Steps) Stepped(facts, step);
        foreach (var recipe in plan.Recipes)
        {
            var name = recipe.Name.ToString();
            facts.Line("recipes", name, Number(recipe.Volume.Milliliters), $"for={List(recipe.For.Order(StringComparer.Ordinal))}");
            foreach (var part in recipe.Parts)
            {
                var (poured, weighed) = (Number(part.Volume?.Milliliters), Number(part.Mass.Grams));
                facts.Line("recipes", name, "part", part.Name.ToString(), poured, weighed, $"stock={part.Stock}");
            }
        }

        foreach (var move in plan.Fluids) facts.Line("fluids", move.Fluid.Name, StepOr(move.From.Step), StepOr(move.To.Step), Number(move.Volume.Milliliters));
        Bought(facts, plan.Purchases);
        foreach (var m in plan.Materials)
        {
            var draws = m.Draws.Select(d => $"{StockOf(d)} {Measured(d.Amount)}");
            facts.Line(
                "materials", m.Id, Units[(int)m.OnHand.Kind], Measured(m.OnHand), Measured(m.Bought), Measured(m.Used), Measured(m.Left), Measured(m.Unusable),
                Measured(m.Reserve), Number(m.Uses), $"for={List(m.For.Order(StringComparer.Ordinal))}", $"draws={List(draws)}");
        }

        Costed(facts, plan.Costs);
        foreach (var waste in plan.Waste)
        {
            var (poured, pieces) = waste.Amount.Kind == AmountKind.Count ? (0, waste.Amount.Units) : (waste.Amount.Volume.Milliliters, 0L);
            var way = EnumWords<WasteWay>.Of(waste.Way);
            facts.Line("waste", waste.ClassWords.ToString(), way, StepOr(waste.Step), Number(poured), Number(pieces), Number(waste.Uses));
        }

        foreach (var care in plan.Care) facts.Line("care", care.Id, Day(care.On), Number(care.EveryMonths), List(care.Dates.Select(d => Day(d))));
        foreach (var gone in plan.Withdrawn) facts.Line("changes", "withdrawn", gone.Id, Time(gone.Start), Number(gone.Sequence), Number(gone.MostInspections));
        Found(facts, made.Findings);
        foreach (var figure in plan.Figures)
        {
            if (figure.Exact.Length == 0) facts.Line("words", figure.Id, figure.Value);
            else facts.Line("figures", [figure.Id, .. Si(figure.Exact)]);
        }

        return facts;
    }

    private static void Stepped(Facts facts, Step step)
    {
        facts.Line(
            "steps", step.Id, StageGrammar.Of(step.Kind).Word, EnumWords<StepState>.Of(step.State), Time(step.Start), Time(step.End),
            Minutes(step.Least), Minutes(step.Most), Minutes(step.HandsOn),
            $"fluid={step.Fluid}", Number(step.Volume?.Milliliters), Number(step.Changes), $"vessel={step.Vessel}", $"sequence={step.Sequence}",
            $"most-inspections={step.MostInspections}");
        foreach (var site in step.Sites)
        {
            facts.Line(
                "steps", step.Id, "site", site.Region.ToString(), Number(site.Sites), Number(site.PerSiteLow.Milliliters), Number(site.PerSite.Milliliters),
                Number(site.PerSiteHigh.Milliliters), Number(site.Total.Milliliters));
        }

        foreach (var cut in step.Cuts)
        {
            var (length, depth, spacing) = (cut.Length?.Millimeters, cut.Depth?.Millimeters, cut.Spacing?.Millimeters);
            facts.Line("steps", step.Id, "cut", cut.Region.ToString(), Number(cut.Count), Number(length), Number(depth), Number(spacing));
        }

        if (!step.Inspections.IsEmpty) facts.Line("steps", step.Id, "look", List(step.Inspections.Select(i => Time(i))));
        foreach (var material in step.Materials) facts.Line("steps", step.Id, "needs", material.Id, material.FromWords.ToString());
        if (!step.Figures.IsEmpty) facts.Line("steps", step.Id, "figures", List(step.Figures.Order(StringComparer.Ordinal)));
        facts.Line("steps", step.Id, "count", $"cautions={step.Cautions.Length}", $"look-for={step.LookFor.Length}");
    }

    private static void Bought(Facts facts, ImmutableArray<PlannedPurchase> purchases)
    {
        foreach (var p in purchases)
        {
            facts.Line(
                "purchases", p.Item.ToString(), p.Pack.ToString(), Number(p.Count), Cost(p.Price), Number(p.LeadDays),
                $"for={List(p.For.Order(StringComparer.Ordinal))}");
        }
    }

    private static void Costed(Facts facts, PlanCosts costs)
    {
        foreach (var (name, cost) in ((string, Money?)[])
        [
            ("cash", costs.Cash), ("used", costs.Used), ("wear", costs.Wear), ("labour", costs.Labour), ("disposal", costs.Disposal), ("total", costs.Total),
            ("by-specimen", costs.BySpecimen), ("left-on-shelf", costs.LeftOnShelf), ("care-labour-by-year", costs.CareLabourByYear),
            ("care-fluid-by-year", costs.CareFluidByYear), ("care-by-year", costs.CareByYear), ("over-ten-years", costs.OverTenYears),
            .. costs.DisposalByClass.Select(d => ($"disposal of {EnumWords<WasteClass>.Of(d.Class)}", (Money?)d.Cost)),
        ]) facts.Line("costs", name, Cost(cost));
        facts.Line("costs", "top-up-by-year", Number(costs.TopUpByYear?.Milliliters));
    }

    private static void Found(Facts facts, IEnumerable<Finding> findings)
    {
        foreach (var finding in findings) facts.Line("findings", finding.Severity.ToString().ToLowerInvariant(), finding.Id, finding.Subject);
    }

    /// <summary>In SI units: which unit an exact text is written in is no fact.</summary>
    private static string[] Si(string exact) =>
        QuantityText.Read(exact, out var value) is null ? [Exact(value.Low), Exact(value.High), value.Dimension.ToString()] : [exact];

    private static string Measured(Amount amount) => Number(amount.Kind == AmountKind.Count ? amount.Units : amount.Units / 1000m);

    private static string StockOf(MaterialDraw draw) => draw.From switch
    {
        MaterialOrigin.Tap => "tap or source",
        MaterialOrigin.Purchase => "bought",
        MaterialOrigin.Lacking => "lacking",
        MaterialOrigin.NotListed => "to be found: the bench does not list it",
        _ => draw.Stock,
    };

    private static string Cost(Money? money) => money is null ? "-" : $"{Number(money.Minor)}{money.Currency}";
}
