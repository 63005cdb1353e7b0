using System.Collections.Immutable;
using System.Runtime.InteropServices;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Planning.Batching;

/// <summary>
/// What many plans need together. It grows with the kinds of fluids and things, not with the plans; its state can be kept and taken up again.
/// </summary>
/// <remarks>Not safe for several threads at once.</remarks>
internal sealed class JointNeeds
{
    /// <summary>A recipe is solved for so much at most, L; beyond it the purchase is made in equal rounds.</summary>
    private const double MostLitres = 400_000;

    private static readonly Phrase InRounds = new("bought-in-rounds", "so much is wanted that it is bought in {rounds} equal rounds");
    private static readonly Phrase InRoundsRemedy = new("bought-in-rounds.remedy", "order each round when the one before is used up");
    private static readonly Phrase TooFew = new("not-enough-vessels", "{wanted} specimens end in '{vessel}', of which {free} can be had now");
    private static readonly Phrase TooFewRemedy = new("not-enough-vessels.remedy", "get more of them, or let some specimens share a vessel as a lot");

    private readonly Dictionary<string, double> litres = new(StringComparer.Ordinal);
    private readonly Dictionary<string, long> uses = new(StringComparer.Ordinal);
    private readonly Dictionary<string, long> vessels = new(StringComparer.Ordinal);
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
        var counts = state.Uses.Values.Concat(state.Vessels.Values).Append(state.ApartMinor);
        if (state.Litres.Values.Any(l => !(l >= 0 && double.IsFinite(l))) || counts.Any(n => n < 0))
            throw new ArgumentException("An amount or a count is negative or endless.", nameof(state));
        foreach (var (fluid, amount) in state.Litres) litres[fluid] = amount;
        foreach (var (thing, count) in state.Uses) uses[thing] = count;
        foreach (var (vessel, count) in state.Vessels) vessels[vessel] = count;
        apartMinor = state.ApartMinor;
    }

    /// <summary>All that is known so far, to be kept.</summary>
    public JointNeedsState State => new(
        litres.ToImmutableSortedDictionary(StringComparer.Ordinal),
        uses.ToImmutableSortedDictionary(StringComparer.Ordinal),
        vessels.ToImmutableSortedDictionary(StringComparer.Ordinal),
        apartMinor);

    /// <summary>Adds one plan.</summary>
    /// <param name="plan">The plan.</param>
    public void Add(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        foreach (var recipe in plan.Recipes) CollectionsMarshal.GetValueRefOrAddDefault(litres, recipe.Fluid.Name, out _) += recipe.Volume.Liters;
        foreach (var thing in plan.Materials)
        {
            if (thing.Kind is MaterialKind.Tool or MaterialKind.Consumable) CollectionsMarshal.GetValueRefOrAddDefault(uses, thing.Id, out _) += thing.Uses;
        }

        if (plan.Steps.LastOrDefault(s => s.Kind == StageKind.House)?.Materials.FirstOrDefault(m => m.From == MaterialOrigin.Vessel) is { } vessel)
            CollectionsMarshal.GetValueRefOrAddDefault(vessels, vessel.Id, out _)++;
        apartMinor += plan.Costs.Cash?.Minor ?? 0;
    }

    /// <summary>The shopping list for all plans together: recipes solved anew for the whole, the shelf drawn on once, packs chosen for the sum.</summary>
    /// <param name="bench">The workplace.</param>
    /// <param name="on">The day of use.</param>
    /// <param name="substances">The substances that there are; null for the bundled ones.</param>
    /// <returns>The list; findings as for one plan, and <c>not-enough-vessels</c> (warning), <c>bought-in-rounds</c> (note).</returns>
    public JointList List(Bench bench, LocalDate on, SubstanceCatalogue? substances = null)
    {
        ArgumentNullException.ThrowIfNull(bench);
        var rounds = (long)Math.Max(1, Math.Ceiling(ById(litres).Sum(l => l.Value) / MostLitres));
        var (day, findings) = (PreparedStock.Of(bench, substances).On(on), new List<Finding>());
        Lacking(day, findings);
        if (rounds > 1) findings.Add(Finding.Note(InRounds.Id, InRounds.With(("rounds", rounds)), InRoundsRemedy));
        var purchases = new List<PlannedPurchase>(Round(day, rounds, substances, findings));
        if (rounds > 1)
        {
            var empty = bench with { Stock = [.. bench.Stock.Select(i => i with { OnHand = Amount.Zero(i.OnHand.Kind) })] };
            purchases.AddRange(Round(PreparedStock.Of(empty, substances).On(on), rounds, substances, findings).Select(p => Times(p, rounds - 1)));
        }

        ImmutableArray<PlannedPurchase> list = [.. purchases.GroupBy(p => (p.Id, p.Item, p.Pack, p.LeadDays)).Select(Sum), .. BoughtVessels(day, findings)];
        var priced = list.Where(p => p.Price is not null && (bench.Currency is null || p.Price.Currency == bench.Currency)).ToList();
        Distinct.From(findings, 0);
        return new(
            list,
            bench.Currency is { } currency ? Money.Sum(priced.Select(p => p.Price!), currency) : null,
            bench.Currency is { } own ? Money.OfMinor(apartMinor, own) : null,
            [.. findings]);
    }

    private ImmutableArray<PlannedPurchase> Round(StockDay day, long rounds, SubstanceCatalogue? substances, List<Finding> findings)
    {
        List<FluidNeed> fluids =
        [
            .. ById(litres).Select(l => (Fluid: Fluid.Read(l.Key, known: substances).Value, Litres: l.Value)).Where(l => l.Fluid is not null && l.Litres > 0)
                .Select(l => FluidNeed.Together(l.Fluid!, Volume.FromLiters(l.Litres / rounds))),
        ];
        List<SundryUse> things =
        [
            .. ById(uses).Select(u => (Stock: ThingOf(u.Key, day), Uses: u.Value))
                .Where(u => u.Stock is not null).Select(u => SundryUse.Together(u.Stock!, (u.Uses + rounds - 1) / rounds)),
        ];
        var choice = RecipeChoice.Of(fluids, day, ImmutableSortedDictionary<string, string>.Empty, findings);
        return MaterialBooks.Of(choice, day, findings).With(things, _ => "all", findings).Purchases;
    }

    private static IEnumerable<KeyValuePair<string, T>> ById<T>(Dictionary<string, T> sums) => sums.OrderBy(s => s.Key, StringComparer.Ordinal);

    private static StockMaterial? ThingOf(string id, StockDay day) =>
        day.Stock.Materials.FirstOrDefault(m => m.Measure == AmountKind.Count && m.Items.Any(i => i.Id == id));

    private static PlannedPurchase Times(PlannedPurchase one, long rounds) =>
        one with { Count = (int)Math.Min(int.MaxValue, one.Count * rounds), Price = one.Price is { } price ? price * rounds : null };

    private static PlannedPurchase Sum(IEnumerable<PlannedPurchase> alike)
    {
        var all = alike.ToList();
        var price = all.TrueForAll(p => p.Price is not null) ? Money.Sum(all.Select(p => p.Price!), all[0].Price!.Currency) : null;
        return all[0] with { Count = all.Sum(p => p.Count), Price = price, For = [] };
    }

    /// <summary>Final vessels that are wanted beyond the free ones, where they can be bought.</summary>
    private IEnumerable<PlannedPurchase> BoughtVessels(StockDay day, List<Finding> findings)
    {
        foreach (var (id, wanted) in ById(vessels))
        {
            var lacking = wanted - FreeOf(id, day);
            if (lacking <= 0 || day.Stock.Bench.Vessels.FirstOrDefault(v => v.Id == id) is not { Price: { } one } vessel) continue;
            var price = day.Stock.Rates.Convert(one);
            if (price is null) findings.Add(day.Stock.Rates.LackingOf(one.Currency, Message.Text(id)));
            var (count, cost) = ((int)Math.Min(int.MaxValue, lacking), price is null ? null : price * lacking);
            yield return new(Message.Text(vessel.Name), Amount.Of(1), count, cost, vessel.LeadDays) { Id = id };
        }
    }

    private void Lacking(StockDay day, List<Finding> findings)
    {
        foreach (var (id, wanted) in ById(vessels))
        {
            var free = FreeOf(id, day);
            if (wanted <= free || day.Stock.Bench.Vessels.Any(v => v.Id == id && v.Price is not null)) continue;
            findings.Add(Finding.Warning(TooFew.Id, TooFew.With(("wanted", wanted), Argument.Id("vessel", id), ("free", free)), TooFewRemedy));
        }
    }

    private static int FreeOf(string id, StockDay day) => day.FreeVessels.FirstOrDefault(v => v.Vessel.Id == id)?.Vessel.Count ?? 0;
}

/// <summary>What <see cref="JointNeeds"/> knows, for keeping.</summary>
/// <param name="Litres">Fluid → litres to be made.</param>
/// <param name="Uses">Thing → times that a piece is used.</param>
/// <param name="Vessels">Vessel id → specimens that end in it.</param>
/// <param name="ApartMinor">Cash of all plans if each bought for itself and found the whole shelf untouched, in smallest coins of the bench's currency.</param>
internal sealed record JointNeedsState(
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
internal sealed record JointList(ImmutableArray<PlannedPurchase> Purchases, Money? Cost, Money? ApartAtLeast, ImmutableArray<Finding> Findings);
