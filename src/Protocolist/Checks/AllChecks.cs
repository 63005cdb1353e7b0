using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Checks;
using Protocolist.Checks.Body;
using Protocolist.Checks.Fluids;
using Protocolist.Checks.Labels;
using Protocolist.Checks.Law;
using Protocolist.Checks.People;
using Protocolist.Checks.Stock;
using Protocolist.Checks.Time;
using Protocolist.Checks.Vessels;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist;

/// <summary>Every check, each in a file of its own.</summary>
public static class AllChecks
{
    internal static ImmutableArray<PlanCheck> All { get; } =
    [
        AboveFlashPoint.Check,
        AcidOnBone.Check,
        AcidOnCalcareous.Check,
        AlcoholOnGelatinous.Check,
        AlcoholWeakenedByBody.Check,
        AnthraxSigns.Check,
        AvianInfluenza.Check,
        BleachOrAcidNearFormalin.Check,
        BloatedNotVented.Check,
        BodyWaits.Check,
        BufferDoesNotLast.Check,
        CareRoundMissing.Check,
        ClosureContradictsVessel.Check,
        ColourNotRecorded.Check,
        CoreOutOfReach.Check,
        Cramped.Check,
        CurrencyMissing.Check,
        DatesInIsoForm.Check,
        DecomposedIsSeldomWorthIt.Check,
        FirstLookMissing.Check,
        FixationTooShort.Check,
        FixativeOverItsMonth.Check,
        FixativeTooCold.Check,
        FixativeTooWeak.Check,
        FlammableQuantity.Check,
        FormaldehydeInTheAir.Check,
        FormalinFlag.Check,
        FormalinOnSpicules.Check,
        FormalinToTheDrain.Check,
        FormalinWithoutHood.Check,
        FrozenWithoutThaw.Check,
        GlassTooThin.Check,
        HeadspaceTooSmall.Check,
        HoldTooLong.Check,
        InjectionTooStrong.Check,
        InsideAndOutside.Check,
        IsopropanolOnLime.Check,
        JointLoad.Check,
        KeepingStrengthOutOfBand.Check,
        LabelIncomplete.Check,
        LabelMedia.Check,
        LargeLotInOneVessel.Check,
        LimeLongInFormalin.Check,
        LoneWork.Check,
        LongDay.Check,
        MaterialUnknown.Check,
        MeasurementsContradict.Check,
        MissingProvenance.Check,
        MixedAlcohols.Check,
        MixedBuffering.Check,
        NoTimeToCure.Check,
        NobodyWatches.Check,
        NotSubmerged.Check,
        OutOfClass.Check,
        Parasites.Check,
        PermitNotNoted.Check,
        PhDrift.Check,
        PostureNotSet.Check,
        PriceMissing.Check,
        ProtectedGroup.Check,
        RabiesProne.Check,
        RatioTooLow.Check,
        Refrozen.Check,
        ReusedFixativeDoubtful.Check,
        SafetyEquipmentNotListed.Check,
        SpentFluidOfAnotherBuffering.Check,
        StockExpired.Check,
        StockStrengthUnknown.Check,
        StoredFlammables.Check,
        StoredFormaldehyde.Check,
        SuppliesLate.Check,
        TankGlass.Check,
        ThawedIsNotHeld.Check,
        ThickAndUncut.Check,
        TissueForDnaAfterFormalin.Check,
        TooBigAStep.Check,
        TooLateAfterDeath.Check,
        UnknownCauseOfDeath.Check,
        UnknownDenaturant.Check,
        UnwashedIntoAlcohol.Check,
        VentilationUnknown.Check,
        VesselTooSmall.Check,
        WashNotChanged.Check,
        WashTooShort.Check,
        WasteWithoutDestination.Check,
        WaterUnfitForAlcohol.Check,
        .. PlanningChecks.All,
    ];

    private static readonly FrozenDictionary<string, PlanCheck> ById = All.ToFrozenDictionary(c => c.Id, StringComparer.Ordinal);

    private static readonly FrozenSet<string> Absorbed = All.SelectMany(c => c.Absorbs).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>What each check looks at, by id in alphabetical order.</summary>
    public static ImmutableArray<CheckDescription> Descriptions { get; } =
        [.. All.Select(c => new CheckDescription(c.Id, c.Protects, c.Severities, c.Source, c.ProtectsPeople)).OrderBy(c => c.Id, StringComparer.Ordinal)];

    /// <summary>Of those that checks say themselves, what they say whenever it was found: they add nothing to it and leave nothing out.</summary>
    private static readonly FrozenSet<string> SaidAsFound =
        PlanningChecks.All.Where(c => c.Absorbs is [var only] && only == c.Id).Select(c => c.Id).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a finding of an earlier pass stands in the finished plan under its id, whatever the checks find.</summary>
    internal static bool IsToldAsFound(string id) => !Absorbed.Contains(id) || SaidAsFound.Contains(id);

    /// <summary>The check of that id; null where there is none.</summary>
    internal static PlanCheck? Find(string id) => ById.GetValueOrDefault(id);

    /// <summary>
    /// All findings: of the passes before where no check says them itself, of every check, and of the protocol's own; as grave as the protocol wants them.
    /// </summary>
    internal static ImmutableArray<Finding> Review(ReviewCase plan)
    {
        var found = ImmutableArray.CreateBuilder<Finding>();
        foreach (var finding in plan.Earlier)
        {
            if (!Absorbed.Contains(finding.Id)) found.Add(finding);
        }

        foreach (var check in All)
        {
            foreach (var finding in check.Find(plan)) found.Add(Sourced(finding, check, plan.Plan));
        }

        found.AddRange(HouseChecks.Of(plan));
        return plan.Protocol.Severities.IsEmpty ? found.DrainToImmutable() : SeverityChanges.Of(found.DrainToImmutable(), plan.Protocol);
    }

    /// <summary>With the check's source where it has none of its own, and resting on those figures alone that this plan has, each once.</summary>
    private static Finding Sourced(Finding finding, PlanCheck check, Plan plan)
    {
        var figures = finding.Figures;
        for (var i = figures.Length - 1; i >= 0; i--)
        {
            if (figures.IndexOf(figures[i]) < i || plan.Figure(figures[i]) is null) figures = figures.RemoveAt(i);
        }

        if (finding.Source.Length > 0 && figures == finding.Figures) return finding;
        return finding with { Figures = figures, Source = finding.Source.Length > 0 ? finding.Source : check.Source };
    }
}
