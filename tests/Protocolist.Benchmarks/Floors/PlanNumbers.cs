namespace Protocolist.Benchmarks.Floors;

internal readonly record struct Sites(int Count, double SiteMl, double TotalMl, double WantedMl);

internal readonly record struct Cut(int Count, double LengthMm, double DepthMm, double SpacingMm);

internal readonly record struct Purchase(int Large, int Small, double Amount, long Cost);

/// <summary>The numbers of a plan, and nothing else.</summary>
internal sealed class PlanNumbers
{
    public double VolumeMl, VolumeLowMl, VolumeHighMl, HalfMm, HalfLowMm, HalfHighMm;
    public double DoseMl, ReachLowMm, ReachHighMm, SoakLowH, SoakHighH, ModelLowH, ModelHighH;
    public double FixMl, FixLevelMm, FixLevelWithBodyMm, FixRatio, HouseMl, HouseRatio, AskedMl, SpillMl, MixedMl;
    public double StockMl, StockG, WaterMl, WaterG, AcidG, BasicG, ContractionMl, WasteMl;
    public Purchase Formalin, Acid, Basic;
    public long CashMinor, UsedMinor, WearMinor, LabourMinor, DisposalMinor, TotalMinor, CareFluidMinor;
    public int HandsOnMin;
    public bool IsLate;
    public DateOnly FirstCheck;

    public Sites[] Sites { get; } = new Sites[7];

    public Cut[] Cuts { get; } = new Cut[6];

    public (long From, long To)[] Steps { get; } = new (long From, long To)[11];

    public List<long> Looks { get; } = new(4);

    public List<DateOnly> Rounds { get; } = new(20);

    public List<DateOnly> Tests { get; } = new(10);

    public List<DateOnly> Seals { get; } = new(5);
}
