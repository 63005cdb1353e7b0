using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Purchasing;
using Protocolist.Plans;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Planning.Batching;

/// <summary>What many plans need together. It grows with the kinds of fluids and things, not with the plans; its state can be kept and taken up again.</summary>
/// <remarks>Not safe for several threads at once.</remarks>
public sealed class JointNeeds
{
    private static readonly Phrase BoughtInRounds = new("bought-in-rounds", "so much is wanted that it is bought in {rounds} equal rounds");
    private static readonly Phrase BoughtInRoundsRemedy = new("bought-in-rounds.remedy", "order each round when the one before is used up");
    private static readonly Phrase NotEnoughVessels = new("not-enough-vessels", "{wanted} specimens end in '{id}', and {free} are free");
    private static readonly Phrase NotEnoughVesselsRemedy = new(
        "not-enough-vessels.remedy",
        "get more of them, or let some specimens share a vessel as a lot");

    /// <summary>A recipe is solved for so much at most, L; beyond it the purchase is made in equal rounds.</summary>
    private const double MostLitres = 400_000;

    private readonly SortedDictionary<string, double> litres = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, long> uses = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, long> vessels = new(StringComparer.Ordinal);
    private long apartMinor;

    /// <summary>Starts with nothing.</summary>
    public JointNeeds()
    {
    }

    /// <summary>Takes up what was kept.</summary>
    /// <param name="state">What <see cref="State"/> gave.</param>
    /// <exception cref="ArgumentException">An amount or a count is negative or endless.</exception>
    public JointNeeds(JointNeedsState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (state.Litres.Values.Any(l => !(l >= 0 && double.IsFinite(l))) || state.Uses.Values.Concat(state.Vessels.Values).Append(state.ApartMinor).Any(n => n < 0))
            throw new ArgumentException("An amount or a count is negative or endless.", nameof(state));
        foreach (var (fluid, amount) in state.Litres) litres[fluid] = amount;
        foreach (var (thing, count) in state.Uses) uses[thing] = count;
        foreach (var (vessel, count) in state.Vessels) vessels[vessel] = count;
        apartMinor = state.ApartMinor;
    }

    /// <summary>All that is known so far, to be kept.</summary>
    public JointNeedsState State => new(litres.ToImmutableSortedDictionary(StringComparer.Ordinal), uses.ToImmutableSortedDictionary(StringComparer.Ordinal), vessels.ToImmutableSortedDictionary(StringComparer.Ordinal), apartMinor);

    /// <summary>Adds one plan.</summary>
    /// <param name="plan">The plan.</param>
    public void Add(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        foreach (var recipe in plan.Recipes)
        {
            var fluid = FluidUse.FluidOf(recipe.Fluid);
            litres[fluid] = litres.GetValueOrDefault(fluid) + recipe.Volume.Liters;
        }

        foreach (var thing in plan.Materials.Where(m => m.Kind is "tool" or "consumable")) uses[thing.Id] = uses.GetValueOrDefault(thing.Id) + thing.Uses;
        if (plan.Steps.LastOrDefault(s => s.Kind == Protocols.StageKind.House)?.Materials.FirstOrDefault(m => m.From == "vessel") is { } vessel) vessels[vessel.Id] = vessels.GetValueOrDefault(vessel.Id) + 1;
        apartMinor += plan.Costs.Cash?.Minor ?? 0;
    }

    /// <summary>The shopping list for all plans together: recipes solved anew for the whole, the shelf drawn on once, packs chosen for the sum.</summary>
    /// <param name="bench">The workplace.</param>
    /// <param name="on">The day of use.</param>
    /// <returns>The list; findings as for one plan, and <c>not-enough-vessels</c> (warning), <c>bought-in-rounds</c> (note).</returns>
    public JointList List(Bench bench, LocalDate on)
    {
        ArgumentNullException.ThrowIfNull(bench);
        var rounds = (long)Math.Max(1, Math.Ceiling(litres.Values.DefaultIfEmpty(0).Sum() / MostLitres));
        var findings = new List<Finding>(Vessels(bench, on));
        if (rounds > 1) findings.Add(Finding.Note("bought-in-rounds", BoughtInRounds.With(("rounds", rounds)), BoughtInRoundsRemedy));
        var first = Round(bench, on, rounds, findings);
        var later = rounds > 1 ? Round(bench with { Stock = [.. bench.Stock.Select(i => i with { OnHand = Amount.Zero(i.OnHand.Kind) })] }, on, rounds, findings) : null;
        var purchases = first.Purchases.Concat(later?.Purchases.Select(p => p with { Count = (int)Math.Min(int.MaxValue, p.Count * (rounds - 1)), Price = p.Price is { } price ? price * (rounds - 1) : null }) ?? [])
            .GroupBy(p => (p.Item, p.Pack, p.LeadDays)).Select(g => g.First() with { Count = g.Sum(p => p.Count), Price = g.All(p => p.Price is not null) ? Money.Sum(g.Select(p => p.Price!), g.First().Price!.Currency) : null, For = [] });
        ImmutableArray<PlannedPurchase> list = [.. purchases, .. BoughtVessels(bench, on, findings)];
        var priced = list.Where(p => p.Price is not null && (bench.Currency is null || p.Price.Currency == bench.Currency)).ToList();
        return new(
            list,
            bench.Currency is { } currency ? Money.Sum(priced.Select(p => p.Price!), currency) : null,
            bench.Currency is { } own ? Money.OfMinor(apartMinor, own) : null,
            [.. findings.DistinctBy(f => (f.Id, f.Message))]);
    }

    private MaterialBook Round(Bench bench, LocalDate on, long rounds, List<Finding> findings)
    {
        var stock = StockBook.Of(bench.Stock);
        ImmutableArray<FluidUse> fluids =
        [
            .. litres.Select(l => (Fluid: Fluid.Read(l.Key).Value, Litres: l.Value)).Where(l => l.Fluid is not null && l.Litres > 0)
                .Select(l => new FluidUse(l.Fluid!, [("all", Volume.FromLiters(l.Litres / rounds))]) { MadeTogether = Volume.FromLiters(l.Litres / rounds) }),
        ];
        ImmutableArray<Thing> things =
        [
            .. uses.Select(u => (Id: u.Key, Item: bench.Stock.FirstOrDefault(i => Slug.Of(i.Id) == u.Key), Uses: u.Value)).Where(u => u.Item is not null)
                .Select(u => new Thing(u.Item!.Id, u.Item.Substance, [.. bench.Stock.Where(i => i.Substance == u.Item.Substance && i.Kind == u.Item.Kind)], [("all", (u.Uses + rounds - 1) / rounds)])),
        ];
        var rates = new ExchangeRates(bench.Currency ?? ProvisionPass.AnyCurrency(bench), bench.ExchangeRates);
        var recipes = RecipeBook.Choose(fluids, [.. things.Select(t => t.AsNeed())], stock, [.. things.Select(t => t.AsProduct(on))], bench, rates, on, ImmutableSortedDictionary<string, string>.Empty);
        var materials = MaterialBook.Of(recipes, things, stock, rates, on);
        findings.AddRange(recipes.Findings);
        findings.AddRange(materials.Findings);
        return materials;
    }

    /// <summary>Final vessels that are wanted beyond the free ones, where they can be bought.</summary>
    private IEnumerable<PlannedPurchase> BoughtVessels(Bench bench, LocalDate on, List<Finding> findings)
    {
        var rates = new ExchangeRates(bench.Currency ?? ProvisionPass.AnyCurrency(bench), bench.ExchangeRates);
        foreach (var (id, wanted) in vessels)
        {
            var lacking = wanted - (bench.FreeVessels(on).FirstOrDefault(v => v.Id == id)?.Count ?? 0);
            if (lacking <= 0 || bench.Vessels.FirstOrDefault(v => v.Id == id) is not { Price: { } one } vessel) continue;
            var price = rates.Convert(one);
            if (price is null) findings.Add(rates.Lacking(one.Currency, $"'{id}'"));
            yield return new(vessel.Name, Amount.Of(1).ToString(), (int)Math.Min(int.MaxValue, lacking), price is null ? null : price * lacking, vessel.LeadDays);
        }
    }

    private IEnumerable<Finding> Vessels(Bench bench, LocalDate on)
    {
        foreach (var (id, wanted) in vessels)
        {
            var free = bench.FreeVessels(on).FirstOrDefault(v => v.Id == id)?.Count ?? 0;
            if (wanted > free && bench.Vessels.Any(v => v.Id == id && v.Price is not null)) continue;
            if (wanted > free)
                yield return Finding.Warning("not-enough-vessels", NotEnoughVessels.With(("wanted", wanted), ("id", id), ("free", free)), NotEnoughVesselsRemedy);
        }
    }
}

/// <summary>What <see cref="JointNeeds"/> knows, for keeping.</summary>
/// <param name="Litres">Fluid → litres to be made.</param>
/// <param name="Uses">Thing → times that a piece is used.</param>
/// <param name="Vessels">Vessel id → specimens that end in it.</param>
/// <param name="ApartMinor">Cash of all plans if each bought for itself and found the whole shelf untouched, in smallest coins of the bench's currency.</param>
public sealed record JointNeedsState(
    ImmutableSortedDictionary<string, double> Litres,
    ImmutableSortedDictionary<string, long> Uses,
    ImmutableSortedDictionary<string, long> Vessels,
    long ApartMinor);

/// <summary>One shopping list for many plans.</summary>
/// <param name="Purchases">What to buy.</param>
/// <param name="Cost">What it costs; null where the bench has no prices.</param>
/// <param name="ApartAtLeast">
/// What it would cost at the least if each plan bought for itself: the sum of their own purchases, each reckoned as if it alone drew on the shelf. Plans that
/// come later would find less there, so that the truth is this or more; with an empty shelf it is this. It may lie below <paramref name="Cost"/>, and the
/// difference is then no loss. Null where the bench has no prices.
/// </param>
/// <param name="Findings">What is to be said of it.</param>
public sealed record JointList(ImmutableArray<PlannedPurchase> Purchases, Money? Cost, Money? ApartAtLeast, ImmutableArray<Finding> Findings);
