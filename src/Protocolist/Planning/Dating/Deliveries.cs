using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;

namespace Protocolist.Planning.Dating;

/// <summary>When something that a step needs is there.</summary>
internal sealed record Delivery(Message Item, int LeadDays, Instant At, string Step)
{
    /// <summary>Whether the step can begin without it, and only a change of its fluid waits.</summary>
    public bool IsForChanges { get; init; }

    /// <summary>For how many fillings of the step the shelf suffices without it.</summary>
    public int Fillings { get; init; }

    private static readonly Phrase TooLate = new(
        "delivery-comes-too-late",
        "{item} is bought with {days} {days|day|days} of waiting, until {at}; the body cannot wait so long for '{step}' within the protocol's windows, "
        + "and the dates take it as there in time");
    private static readonly Phrase BorrowIt = new(
        "delivery-comes-too-late.remedy",
        "borrow it or fetch it sooner; else keep the body on ice for a day or two at most, or freeze it now and thaw it when the delivery is there "
        + "(freezing spoils tissue); do not cut it before all is at hand");

    public Finding ComesTooLate(DateTimeZone zone) => Finding.Warning(
        TooLate.Id,
        TooLate.With(("item", Item), ("days", LeadDays), Argument.At("at", At, zone), Argument.Id("step", Step)),
        BorrowIt) with
    { Subject = Step };
}

/// <summary>What must be bought first: a step that uses it cannot begin before it is there, or not end, where only its changes of fluid need it.</summary>
internal static class Deliveries
{
    /// <summary>
    /// For each open step the last delivery that it waits for; empty where none waits. What is on the shelf goes to the first steps; the step at which
    /// it runs out waits. Lead times are calendar days from the start of the plan; what comes is there in the morning.
    /// </summary>
    public static ImmutableArray<Delivery?> Of(Provisioned provisioned, List<DraftStep> open, LocalDate ordered, Bench bench)
    {
        if (provisioned.Books.BuyNothing) return [];
        var (purchases, materials) = (provisioned.Books.Purchases, provisioned.Books.Materials);
        Delivery?[]? deliveries = null;
        for (var i = 0; i < purchases.Length; i++)
        {
            var bought = purchases[i];
            var (days, isFirst) = Slowest(purchases, i);
            if (days == 0 || !isFirst) continue;
            deliveries ??= new Delivery?[open.Count];
            var at = ordered.PlusDays(days).AtStartOfDayInZone(bench.Opening.Zone).ToInstant();
            var left = OnHand(materials, bought.Id);
            foreach (var step in provisioned.Draft.Steps)
            {
                var filling = step.Vessel?.Vessel.Id == bought.Id ? 1 : Share(step, provisioned.Choice, bought.Id);
                if (filling <= 0) continue;
                var (beyondFirst, fillings) = (left - filling, (int)Math.Clamp(left / filling, 0, 1 + step.Changes));
                left -= filling * (1 + step.Changes);
                if (left >= 0 || Place(open, step.Id) is not (>= 0 and var waiting)) continue;
                var delivery = new Delivery(bought.Item, days, at, step.Id) { IsForChanges = beyondFirst >= 0, Fillings = fillings };
                if (deliveries[waiting] is not { } other || IsHarder(delivery, other)) deliveries[waiting] = delivery;
            }
        }

        return deliveries is null || Array.TrueForAll(deliveries, d => d is null) ? [] : [.. deliveries];
    }

    /// <summary>What keeps a step from beginning before what keeps it from ending, then the later one.</summary>
    private static bool IsHarder(Delivery one, Delivery other) => one.IsForChanges == other.IsForChanges ? other.At < one.At : other.IsForChanges;

    /// <summary>Where a step that nobody has begun stands among the open ones; below 0 where it does not.</summary>
    private static int Place(List<DraftStep> open, string step)
    {
        for (var i = 0; i < open.Count; i++)
        {
            if (open[i].Id == step && open[i].Progress is null) return i;
        }

        return -1;
    }

    /// <summary>The longest wait for a pack of the same material, and whether this is the first of its packs.</summary>
    private static (int Days, bool IsFirst) Slowest(ImmutableArray<PlannedPurchase> purchases, int at)
    {
        var (days, isFirst) = (0, true);
        for (var i = 0; i < purchases.Length; i++)
        {
            if (purchases[i].Id != purchases[at].Id) continue;
            days = Math.Max(days, purchases[i].LeadDays);
            isFirst &= i >= at;
        }

        return (days, isFirst);
    }

    /// <summary>What is there of a material, in m3 or kg.</summary>
    private static double OnHand(ImmutableArray<PlannedMaterial> materials, string id)
    {
        foreach (var material in materials)
        {
            if (material.Id == id) return InSi(material.OnHand);
        }

        return 0;
    }

    /// <summary>How much of a material goes into one filling of a step, in m3 or kg.</summary>
    private static double Share(DraftStep step, RecipeChoice choice, string material)
    {
        if (step.Volume is not { } volume) return 0;
        foreach (var recipe in choice.Recipes)
        {
            if (!recipe.Need.Steps.Contains(step.Id) || recipe.Need.Made.CubicMeters <= 0) continue;
            var whole = 0.0;
            foreach (var (part, from) in recipe.Way.Parts)
            {
                if (from?.Id == material) whole += InSi(recipe.AmountOf(part));
            }

            return whole * volume.CubicMeters / recipe.Need.Made.CubicMeters;
        }

        return 0;
    }

    private static double InSi(Amount amount) => amount.Kind switch
    {
        AmountKind.Volume => amount.Volume.CubicMeters,
        AmountKind.Mass => amount.Mass.Kilograms,
        _ => 0,
    };
}
