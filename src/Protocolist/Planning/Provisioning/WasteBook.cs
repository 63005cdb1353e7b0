using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Provisioning;

/// <summary>All that leaves a plan, by class, each lot with its way and a named destination; and where every volume of fluid comes from and goes to.</summary>
/// <param name="Lots">What leaves.</param>
/// <param name="Moves">Every volume. What enters a step leaves it, or stays where the plan says.</param>
internal sealed record WasteBook(ImmutableArray<PlannedWaste> Lots, ImmutableArray<FluidMove> Moves)
{
    /// <summary>How long somebody is busy mixing.</summary>
    public Duration Mixing { get; private init; }

    /// <summary>Less than this is not mixed by itself: its salts cannot be weighed. The project's choice.</summary>
    private static readonly UnitsNet.Volume LeastMixed = UnitsNet.Volume.FromMilliliters(100);

    private static readonly Phrase NoContainer = new("waste-needs-a-container", "the bench names no container for waste of the class {classes}");

    private static readonly Phrase NoContainerRemedy = new(
        "waste-needs-a-container.remedy",
        "set one up for each class, closed and labelled, before the first step; name it in the bench file under 'waste: containers:'");

    private static readonly Phrase Drained = new("drained-under-permit", "{amount} {what} goes to the drain under '{permit}'");
    private static readonly Phrase DrainedRemedy = new("drained-under-permit.remedy", "see that the permission is in writing and still holds");

    private static readonly Phrase Kept = new(
        "fixative-kept",
        "{amount} of {what} is kept in {destination}; it will have served {served} of the {most} specimens that this bench allows");

    private static readonly Phrase KeptRemedy = new(
        "fixative-kept.remedy",
        "before it serves again see that it is clear, measure its pH (6.5 or more) and enter it as stock with its uses; "
        + "it goes only into fixative of the same buffering");

    /// <summary>Routes everything.</summary>
    /// <param name="provisioned">The fluids, how they are made, and the bench.</param>
    /// <param name="sundries">The things.</param>
    /// <param name="steps">The dated steps with their fluids and volumes.</param>
    /// <param name="findings">Takes notes: what is kept, what is drained, and for what there is no container.</param>
    public static WasteBook Of(Provisioned provisioned, List<SundryUse> sundries, ImmutableArray<DraftStep> steps, List<Finding> findings)
    {
        var (needs, choice, day, stock) = (provisioned.Needs, provisioned.Choice, provisioned.Day, provisioned.Day.Stock);
        var (first, unnamed, mixing) = (findings.Count, 0, Duration.Zero);
        var (lots, moves) = (ImmutableArray.CreateBuilder<PlannedWaste>(steps.Length), ImmutableArray.CreateBuilder<FluidMove>(2 * steps.Length));
        var classes = SpentClasses.Of(steps, provisioned.Draft.Body);
        foreach (var need in needs)
        {
            var recipe = choice.RecipeOf(need);
            var served = 1 + MostUses(recipe);
            var isMade = recipe is not null || !need.Fluid.IsWater;
            var (isMixed, isTogether) = (recipe is { Way.Parts.Length: > 1 }, false);
            var from = new FluidPlace(isMade ? FluidPlaceKind.Recipe : FluidPlaceKind.Tap);
            for (var use = 0; use < need.Uses.Length; use++)
            {
                var at = need.Uses[use].Step;
                var step = steps[at];
                var here = new FluidPlace(FluidPlaceKind.Step, step.Id);
                var last = lots.Count;
                for (var filling = 0; filling <= step.Changes; filling++)
                {
                    var (whole, again, fresh) = (step.Volume!.Value, filling == 0 ? Again(step) : null, Fresh(step, filling));
                    if (fresh > UnitsNet.Volume.Zero)
                    {
                        moves.Add(isMixed && !isTogether
                            ? Mixed(need, fresh, from, here, filling, at, UpToEnough(need, steps, use, filling))
                            : Moved(need, fresh, from, here, filling));
                        isTogether = fresh < LeastMixed;
                    }

                    if (again is not null) moves.Add(Moved(need, again.Volume, new(FluidPlaceKind.Step, again.Step), here));
                    var kept = ServedAgain(steps, step);
                    if (kept < whole)
                        moves.Add(Moved(need, whole - kept, here, Away(need, steps, at, filling, whole - kept, served, last), filling));
                }
            }

            if (!isMade) continue;
            var jugs = need.Fluid.IsWater || Amount.Of(need.Dead).Units == 0
                ? new FluidPlace(FluidPlaceKind.Jugs)
                : new(FluidPlaceKind.Waste, Destination: stock.RouteOf(need.Fluid.WasteClass).Destination);
            moves.Add(Moved(need, need.Dead, from, jugs));
            moves.Add(Moved(need, need.Spare, from, new(FluidPlaceKind.Reserve)));
        }

        foreach (var need in needs)
        {
            if (!need.Fluid.IsWater) Pour(need, need.Fluid.WasteClass, need.Dead, "", served: 0, lots.Count);
        }

        foreach (var use in sundries)
        {
            if (use.Waste is not { } @class || use.Wear is not { LastsUses: 1 }) continue;
            for (var i = 0; i < use.Steps; i++)
            {
                var (at, pieces) = use[i];
                var amount = Amount.Of(pieces);
                if (RouteOf(@class, amount, served: 0) is { } route)
                    lots.Add(new(@class, amount, route.Way, route.Destination, steps[at].Id) { What = use.Name });
            }
        }

        if (unnamed != 0 && !stock.Bench.Stock.IsEmpty)
        {
            var named = Argument.Messages("classes", Waste.ByWord.Where(c => (unnamed & (1 << (int)c)) != 0).Select(c => (Message)Waste.Words(c)));
            findings.Add(Finding.Note(NoContainer.Id, NoContainer.With(named), NoContainerRemedy));
        }

        foreach (var lot in lots)
        {
            if (lot.Way is WasteWay.KeptForReuse or WasteWay.DrainedWhereAllowed) findings.Add(NoteOf(lot, stock));
        }

        Distinct.From(findings, first);
        return new(lots.DrainToImmutable(), moves.DrainToImmutable()) { Mixing = mixing };

        FluidMove Moved(FluidNeed need, UnitsNet.Volume volume, FluidPlace from, FluidPlace to, int filling = 0) =>
            new(need.Fluid, Grid.On(volume), from, to) { ForImmersion = need.ForImmersion, Filling = filling };

        FluidMove Mixed(FluidNeed need, UnitsNet.Volume volume, FluidPlace from, FluidPlace to, int filling, int at, UnitsNet.Volume together)
        {
            var made = together * (need.Made / need.Asked);
            var (vessel, batches) = MixingVessel.For(steps, at, filling, made, day);
            var time = WorkMinutes.Mixing(need.Fluid, made, batches);
            mixing += time;
            return new(need.Fluid, Grid.On(volume), from, to)
            {
                ForImmersion = need.ForImmersion,
                Filling = filling,
                MixedIn = vessel?.Name ?? "",
                Batches = batches,
                Mixing = time,
            };
        }

        FluidPlace Away(FluidNeed need, ImmutableArray<DraftStep> steps, int at, int filling, UnitsNet.Volume volume, int served, int from)
        {
            var step = steps[at];
            if (step.Kind is StageKind.Inject) return new(FluidPlaceKind.Body);
            if (step.Kind is StageKind.House && filling == step.Changes) return new(FluidPlaceKind.FinalVessel);
            return Pour(need, classes.Of(at, filling), volume, step.Id, Keeps(step, served, stock) ? served : 0, from) is { } to
                ? new(FluidPlaceKind.Waste, Destination: to.Destination)
                : new(FluidPlaceKind.TooLittle);
        }

        // What a step pours off of one class is one lot, however often it is poured.
        WasteRoute? Pour(FluidNeed need, WasteClass @class, UnitsNet.Volume volume, string step, int served, int from)
        {
            var amount = Amount.Of(volume);
            if (RouteOf(@class, amount, served) is not { } route) return null;
            for (var i = from; i < lots.Count; i++)
            {
                if (lots[i].Class != @class) continue;
                lots[i] = lots[i] with { Amount = lots[i].Amount + amount };
                return route;
            }

            lots.Add(new(@class, amount, route.Way, route.Destination, step) { Fluid = need.Fluid, ForImmersion = need.ForImmersion, Uses = served });
            return route;
        }

        WasteRoute? RouteOf(WasteClass @class, Amount amount, int served)
        {
            if (amount.Units == 0) return null;
            var route = served > 0 ? stock.KeptFixative! : stock.RouteOf(@class);
            if (!route.IsNamed) unnamed |= 1 << (int)@class;
            return route;
        }
    }

    private static Finding NoteOf(PlannedWaste lot, PreparedStock stock)
    {
        var (amount, what) = (lot.Amount.Fact("amount"), (Argument)("what", lot.What));
        if (lot.Way == WasteWay.DrainedWhereAllowed) return Finding.Note(Drained.Id, Drained.With(amount, what, ("permit", lot.Destination)), DrainedRemedy);
        var facts = Kept.With(amount, what, ("destination", lot.Destination), ("served", lot.Uses), ("most", stock.Bench.WasteRules.FixativeUses));
        return Finding.Note(Kept.Id, facts, KeptRemedy);
    }

    /// <summary>What a step pours off; null where nothing is collected of it.</summary>
    public PlannedWaste? PouredOff(string step)
    {
        foreach (var lot in Lots)
        {
            if (lot.Step == step && lot.Amount.Kind != AmountKind.Count) return lot;
        }

        return null;
    }

    private static BathAgain? Again(DraftStep step) => (step.Work as SoakWork)?.Again;

    /// <summary>What one filling of a step takes of the recipe or the tap.</summary>
    private static UnitsNet.Volume Fresh(DraftStep step, int filling) =>
        filling == 0 && Again(step) is { } again ? step.Volume!.Value - again.Volume : step.Volume!.Value;

    /// <summary>A filling, and with one that is too little to be mixed alone those that follow until there is enough.</summary>
    private static UnitsNet.Volume UpToEnough(FluidNeed need, ImmutableArray<DraftStep> steps, int use, int filling)
    {
        var sum = UnitsNet.Volume.Zero;
        for (; use < need.Uses.Length; use++, filling = 0)
        {
            var step = steps[need.Uses[use].Step];
            for (; filling <= step.Changes; filling++)
            {
                var fresh = Fresh(step, filling);
                sum += fresh;
                if (fresh >= LeastMixed) return sum;
            }
        }

        return sum;
    }

    /// <summary>How much of a step's fluid serves in a later one.</summary>
    private static UnitsNet.Volume ServedAgain(ImmutableArray<DraftStep> steps, DraftStep step)
    {
        if (step.Work is not SoakWork { ServesAgainIn.Length: > 0 }) return UnitsNet.Volume.Zero;
        foreach (var later in steps)
        {
            if (later.Work is SoakWork { Again: { } again } && again.Step == step.Id) return again.Volume;
        }

        return UnitsNet.Volume.Zero;
    }

    /// <summary>Only fixative that a whole body lay in is kept, and only while it may serve another; what ran out of a body by syringe is not.</summary>
    private static bool Keeps(DraftStep step, int served, PreparedStock stock) =>
        stock.KeptFixative is not null && step is { Kind: StageKind.Immerse, Fluid.HasFormaldehyde: true } && served < stock.Bench.WasteRules.FixativeUses;

    /// <summary>How often the most used part of a recipe has served.</summary>
    private static int MostUses(ChosenRecipe? recipe)
    {
        var most = 0;
        foreach (var (part, material) in recipe?.Way.Parts ?? [])
        {
            if (part.Fluid is not null) most = Math.Max(most, material?.MostUses ?? 0);
        }

        return most;
    }
}
