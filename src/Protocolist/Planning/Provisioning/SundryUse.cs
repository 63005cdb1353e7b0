using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>
/// One thing over the whole plan: the stock that serves it, how often it is used, and what that wears out. Complete when <see cref="Of"/> returns.
/// </summary>
/// <param name="sundry">What the first step that uses it asks for.</param>
/// <param name="stock">The stock that serves; null where the bench lists none.</param>
internal sealed class SundryUse(Sundry sundry, StockMaterial? stock)
{
    /// <summary>Most things are used in one step alone.</summary>
    private (int Step, long Uses) first;

    private List<(int Step, long Uses)>? others;

    public Sundry Sundry { get; } = sundry;

    public StockMaterial? Stock { get; } = stock;

    /// <summary>In how many steps it is used.</summary>
    public int Steps { get; private set; }

    /// <summary>The place of one of those steps, and times that a piece is used there.</summary>
    public (int Step, long Uses) this[int at] => at == 0 ? first : others![at - 1];

    public long AllUses { get; private set; }

    public WasteClass? Waste => Sundry.Waste;

    public Message Name => Stock?.Name ?? Sundry.Name;

    /// <summary>A tool of which nothing says how long it lasts does not wear; a consumable is used once.</summary>
    public Wear? Wear => Stock switch
    {
        null => Wear.SingleUse,
        { Kind: MaterialKind.Tool } tool => tool.Items[0].Wear,
        var consumable => consumable.Items[0].Wear ?? Wear.SingleUse,
    };

    /// <summary>Pieces that have to be there.</summary>
    public long Needed => AllUses == 0 ? 0 : Wear is { } wear ? (SeenAlready + AllUses + wear.LastsUses - 1) / wear.LastsUses : 1;

    /// <summary>Pieces that are used up.</summary>
    public long UsedUp => Wear is { } wear ? (SeenAlready + AllUses) / wear.LastsUses : 0;

    /// <summary>Uses of the piece in hand that the plan begins with and of the one that it ends with, where it is not used up: for its cost.</summary>
    public long UsesBeyond => Wear is not { LastsUses: > 1 } wear ? 0 : UsedUp == 0 ? AllUses : (SeenAlready + AllUses) % wear.LastsUses;

    private long SeenAlready
    {
        get
        {
            foreach (var item in Stock?.Items ?? [])
            {
                if (item.OnHand.Units > 0) return item.Wear?.UsedSoFar ?? 0;
            }

            return 0;
        }
    }

    /// <summary>How often a step uses it.</summary>
    public long UsesOf(int step)
    {
        var sum = 0L;
        for (var i = 0; i < Steps; i++)
        {
            if (this[i].Step == step) sum += this[i].Uses;
        }

        return sum;
    }

    /// <summary>What several plans use of one stock together.</summary>
    public static SundryUse Together(StockMaterial stock, long times)
    {
        var use = new SundryUse(default, stock);
        use.Add((-1, times));
        return use;
    }

    /// <summary>All things of a plan, in the order of their first use.</summary>
    public static List<SundryUse> Of(ImmutableArray<DraftStep> steps, int animals, SundryShelf shelf)
    {
        var (all, needs) = (new List<SundryUse>(steps.Length), new List<SundryNeed>(8));
        for (var step = 0; step < steps.Length; step++)
        {
            if (steps[step].IsCare) continue;
            needs.Clear();
            SundryNeeds.Of(steps[step], animals, needs);
            foreach (var (sundry, times) in needs) Find(all, sundry, shelf.Find(sundry)).Add(step, times);
        }

        return all;
    }

    private static SundryUse Find(List<SundryUse> all, Sundry sundry, StockMaterial? stock)
    {
        foreach (var use in all)
        {
            if (stock is null ? use.Stock is null && use.Sundry == sundry : use.Stock == stock) return use;
        }

        all.Add(new(sundry, stock));
        return all[^1];
    }

    /// <summary>Gloves are listed by the piece or by the pair.</summary>
    private void Add(int step, long times)
    {
        var pieces = Stock is { IsByThePair: true } ? (times + 1) / 2 : times;
        Add((step, pieces));
    }

    private void Add((int Step, long Uses) use)
    {
        if (Steps++ == 0) first = use;
        else (others ??= new(4)).Add(use);
        AllUses += use.Uses;
    }
}
