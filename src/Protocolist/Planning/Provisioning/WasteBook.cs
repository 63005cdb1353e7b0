using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>All that leaves a plan, by class, each lot with its way and a named destination; and where every volume of fluid comes from and goes to.</summary>
/// <param name="Lots">What leaves.</param>
/// <param name="Moves">Every volume. What enters a step leaves it, or stays where the plan says.</param>
internal sealed record WasteBook(ImmutableArray<PlannedWaste> Lots, ImmutableArray<FluidMove> Moves)
{
    private static readonly Phrase NoContainer = new("waste-needs-a-container", "the bench names no container for waste of the class {classes}");

    private static readonly Phrase NoContainerRemedy = new(
        "waste-needs-a-container.remedy",
        "set one up for each class, closed and labelled, before the first step; name it in the bench file under 'waste: containers:'");

    private static readonly Phrase Drained = new("drained-under-permit", "{amount:amount} {what} goes to the drain under '{permit}'");
    private static readonly Phrase DrainedRemedy = new("drained-under-permit.remedy", "see that the permission is in writing and still holds");

    private static readonly Phrase Kept = new(
        "fixative-kept",
        "{amount:amount} of {what} is kept in {destination}; it will have served {served} of the {most} specimens that this bench allows");

    private static readonly Phrase KeptRemedy = new(
        "fixative-kept.remedy",
        "before it serves again see that it is clear, measure its pH (6.5 or more) and enter it as stock with its uses; "
        + "it goes only into fixative of the same buffering");

    /// <summary>Routes everything.</summary>
    /// <param name="needs">The fluids.</param>
    /// <param name="choice">How they are made.</param>
    /// <param name="sundries">The things.</param>
    /// <param name="steps">The steps with their fluids and volumes.</param>
    /// <param name="stock">The bench.</param>
    /// <param name="findings">Takes notes: what is kept, what is drained, and for what there is no container.</param>
    public static WasteBook Of(
        List<FluidNeed> needs, RecipeChoice choice, List<SundryUse> sundries, ImmutableArray<DraftStep> steps, PreparedStock stock, List<Finding> findings)
    {
        var (first, unnamed) = (findings.Count, 0);
        var (lots, moves) = (ImmutableArray.CreateBuilder<PlannedWaste>(steps.Length), ImmutableArray.CreateBuilder<FluidMove>(steps.Length));
        foreach (var need in needs)
        {
            var recipe = choice.RecipeOf(need);
            var served = 1 + MostUses(recipe);
            var isMade = recipe is not null || !need.Fluid.IsWater;
            var from = new FluidPlace(isMade ? FluidPlaceKind.Recipe : FluidPlaceKind.Tap);
            foreach (var (at, volume) in need.Uses)
            {
                var step = steps[at];
                var here = new FluidPlace(FluidPlaceKind.Step, step.Id);
                Move(need, volume, from, here);
                Move(need, volume, here, Away(need, step, at, volume, served));
            }

            if (!isMade) continue;
            var jugs = need.Fluid.IsWater || Amount.Of(need.Dead).Units == 0
                ? new FluidPlace(FluidPlaceKind.Jugs)
                : new(FluidPlaceKind.Waste, Destination: stock.RouteOf(need.Fluid.WasteClass).Destination);
            Move(need, need.Dead, from, jugs);
            Move(need, need.Spare, from, new(FluidPlaceKind.Reserve));
        }

        foreach (var need in needs)
        {
            if (!need.Fluid.IsWater) Pour(need, need.Fluid.WasteClass, need.Dead, "", served: 0);
        }

        foreach (var use in sundries)
        {
            if (use.Waste is not { } @class || use.Wear is not { LastsUses: 1 }) continue;
            for (var i = 0; i < use.Steps; i++)
            {
                var (at, pieces) = use[i];
                var amount = Amount.Of(pieces);
                if (RouteOf(@class, amount, served: 0) is { } route) Add(new(@class, amount, route.Way, route.Destination, steps[at].Id) { What = use.Name });
            }
        }

        if (unnamed != 0 && !stock.Bench.Stock.IsEmpty)
        {
            var classes = Argument.Messages("classes", Waste.ByWord.Where(c => (unnamed & (1 << (int)c)) != 0).Select(c => (Message)Waste.Words(c)));
            findings.Add(Finding.Note(NoContainer.Id, NoContainer.With(classes), NoContainerRemedy));
        }

        Distinct.From(findings, first);
        return new(lots.DrainToImmutable(), moves.DrainToImmutable());

        void Move(FluidNeed need, UnitsNet.Volume volume, FluidPlace from, FluidPlace to) =>
            moves.Add(new(need.Fluid, Grid.On(volume), from, to) { ForImmersion = need.ForImmersion });

        FluidPlace Away(FluidNeed need, DraftStep step, int at, UnitsNet.Volume volume, int served)
        {
            if (step.Kind is StageKind.Inject) return new(FluidPlaceKind.Body);
            if (step.Kind is StageKind.House) return new(FluidPlaceKind.FinalVessel);
            return Pour(need, ClassOf(steps, at), volume, step.Id, Keeps(step, served, stock) ? served : 0) is { } to
                ? new(FluidPlaceKind.Waste, Destination: to.Destination)
                : new(FluidPlaceKind.TooLittle);
        }

        WasteRoute? Pour(FluidNeed need, WasteClass @class, UnitsNet.Volume volume, string step, int served)
        {
            var amount = Amount.Of(volume);
            if (RouteOf(@class, amount, served) is not { } route) return null;
            Add(new(@class, amount, route.Way, route.Destination, step) { Fluid = need.Fluid, ForImmersion = need.ForImmersion, Uses = served });
            return route;
        }

        WasteRoute? RouteOf(WasteClass @class, Amount amount, int served)
        {
            if (amount.Units == 0) return null;
            var route = served > 0 ? stock.KeptFixative! : stock.RouteOf(@class);
            if (!route.IsNamed) unnamed |= 1 << (int)@class;
            return route;
        }

        void Add(PlannedWaste lot)
        {
            lots.Add(lot);
            if (lot.Way is WasteWay.KeptForReuse or WasteWay.DrainedWhereAllowed) findings.Add(NoteOf(lot, stock));
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

    private static WasteClass ClassOf(ImmutableArray<DraftStep> steps, int at) =>
        !steps[at].Fluid!.IsWater ? steps[at].Fluid!.WasteClass : IsAfterFormaldehyde(steps, at) ? WasteClass.Formaldehyde : WasteClass.RinseWater;

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

    /// <summary>
    /// The first water after formalin carries formaldehyde and is collected with it; the washes that follow go where local rules allow. Common practice.
    /// </summary>
    private static bool IsAfterFormaldehyde(ImmutableArray<DraftStep> steps, int at)
    {
        for (var i = at - 1; i >= 0; i--)
        {
            if (steps[i] is { Fluid: { } fluid, Volume: not null }) return fluid.HasFormaldehyde;
        }

        return false;
    }
}
