using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids.Substances;

/// <summary>Formaldehyde as it is bought: 30 to 40 % by mass, with methanol, to be diluted.</summary>
internal sealed class FormaldehydeStock() : FormaldehydeSolution("formaldehyde-stock")
{
    /// <summary>Weakest solution that is taken as a stock, in percent.</summary>
    public const double Weakest = 10;

    /// <summary>Strongest stock that is read, percent by mass.</summary>
    public const int StrongestByMass = 50;

    /// <summary>Strongest stock that is read, % w/v: 50 % by mass is 55.3 g in 100 mL beside 20 % methanol and more beside less (Walker's tables).</summary>
    public const int StrongestPerVolume = 54;

    private const double MostMethanol = 20;

    // Without methanol 85 °C, with 10 to 15 % 56, with 15 % 50 (safety data sheets).
    private static readonly MonotoneCurve ByMethanol = new([0, 12, 15], [85, 56, 50]);

    private static readonly Phrase ReadTheBottle = new("strength-missing.stock.remedy", "read it off the bottle and write it as '{example}'");
    private static readonly Phrase WriteMethanol = new("unexpected-text.stock.remedy", "write 'methanol 10 %mass' or 'methanol-free' there, or nothing");
    private static readonly Phrase TooMuchMethanol = new("strength-out-of-range.methanol", "'{text}' has more methanol than any stock");
    private static readonly Phrase GiveMethanol = new("strength-out-of-range.methanol.remedy", "give 0 to {most} %mass");
    private static readonly Phrase UnfitBasis = new("strength-basis-unfit.stock", "'{text}' gives a stock on a basis that is not used for it");
    private static readonly Phrase GiveMassOrPerVolume = new("strength-basis-unfit.stock.remedy", "give %mass or % w/v, as in '{example}'");
    private static readonly Phrase NoStock = new("strength-out-of-range.stock", "'{text}' is no stock: {percent:0.###} % is outside {least} to {most}");
    private static readonly Phrase StockOrWorking = new(
        "strength-out-of-range.stock.remedy", "write '{example}', or 'formaldehyde 4 % w/v' for a working solution");

    private static readonly Phrase NoBasis = new(
        "strength-basis-missing.stock", "'{text}' does not say by mass or by volume; read as %mass, {content:0} g/L");

    private static readonly Phrase WriteName = new("strength-basis-missing.stock.remedy", "write '{name}', or '% w/v'");

    private static readonly Argument Example = ("example", "formaldehyde stock 37 %mass");

    public override Phrase Noun { get; } = new("substance.formaldehyde-stock", "formaldehyde stock");

    public override ImmutableArray<string> Examples => ["formaldehyde stock 37 %mass"];

    public override bool IsConcentrate => true;

    public override Fluid Of(double percent, StrengthBasis basis) => Of(percent, basis, 100 * FormaldehydeWater.ReferenceMethanol);

    /// <summary>A stock of 10 to 50 % by mass or 10 to 57 % w/v, with methanol of 0 to 20 % by mass.</summary>
    public static Fluid Of(double percent, StrengthBasis basis, double methanolMassPercent)
    {
        percent = Fluid.Rounded(percent, Weakest, basis is StrengthBasis.Mass ? StrongestByMass : 57);
        var methanol = Fluid.Rounded(methanolMassPercent, 0, MostMethanol);
        var mass = basis switch
        {
            StrengthBasis.Mass => percent / 100,
            StrengthBasis.WeightPerVolume => FormaldehydeWater.MassFractionOfGramsPerLitre(10 * percent, methanol / 100, 20),
            _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "A stock's strength is by mass or weight per volume."),
        };
        if (double.IsNaN(mass)) throw new ArgumentOutOfRangeException(nameof(percent), percent, "No stock of this methanol content is so strong.");
        return new(FormaldehydeStock, percent, basis, new((Gas, mass), (Methanol, methanol / 100)), detail: methanol);
    }

    internal override IEnumerable<FluidWord> Words =>
        Called(
            "formaldehyde stock", "formalin stock", "stock formaldehyde", "stock formalin", "concentrated formaldehyde", "concentrated formalin",
            "formaldehyde solution");

    internal override IEnumerable<string> Canonical => ["formaldehyde stock"];

    internal override Checked<Fluid> Read(in WrittenFluid written, in FluidWord word)
    {
        if (written.Percent is not { } percent) return FluidName.NoStrength(written, ReadTheBottle.With(Example));
        var methanol = written.Methanol;
        if (string.Equals(written.Extra, "methanol-free", StringComparison.OrdinalIgnoreCase)) methanol = 0;
        else if (written.Extra.Length > 0 && methanol is null) return FluidName.Leftover(written, WriteMethanol);
        if (methanol > MostMethanol) return Fault(written, "strength-out-of-range", TooMuchMethanol, GiveMethanol.With(("most", MostMethanol)));
        if (written.Basis is StrengthBasis.Volume or StrengthBasis.PartsOfStock)
            return Fault(written, "strength-basis-unfit", UnfitBasis, GiveMassOrPerVolume.With(Example));

        var basis = written.Basis is StrengthBasis.WeightPerVolume ? StrengthBasis.WeightPerVolume : StrengthBasis.Mass;
        var most = basis is StrengthBasis.Mass ? StrongestByMass : StrongestPerVolume;
        if (!(percent >= Weakest && percent <= most))
        {
            return FluidName.Fault(
                "strength-out-of-range",
                NoStock.With(("text", written.Text), ("percent", percent), ("least", Weakest), ("most", most)),
                StockOrWorking.With(Example),
                written.Where);
        }

        var fluid = Of(percent, basis, methanol ?? 100 * FormaldehydeWater.ReferenceMethanol);
        if (written.Basis is not StrengthBasis.None) return new(fluid, []);
        return new(fluid, [Finding.Warning(
            "strength-basis-missing",
            NoBasis.With(("text", written.Text), ("content", fluid.FormaldehydeGramsPerLitre!.Value)),
            WriteName.With(("name", fluid.Name)),
            written.Where)]);
    }

    internal override string NameOf(Fluid fluid) => $"formaldehyde stock {StrengthText.Of(fluid)}{MethanolOf(fluid)}";

    internal override double? FlashPoint(Fluid fluid) => ByMethanol.At(fluid.MethanolMassPercent);

    // From memory.
    internal override string Transport(Fluid fluid, int? flammableCategory) =>
        flammableCategory is not null ? "UN 1198 formaldehyde solution, flammable" : fluid.FormaldehydeMassPercent >= 25 ? "UN 2209 formaldehyde solution" : "";

    private static Checked<Fluid> Fault(in WrittenFluid written, string id, Phrase message, Message remedy) =>
        FluidName.Fault(id, message.With(("text", written.Text)), remedy, written.Where);

    private static string MethanolOf(Fluid fluid) => fluid.Detail switch
    {
        0 => ", methanol-free",
        100 * FormaldehydeWater.ReferenceMethanol => "",
        var percent => $", methanol {StrengthText.Number(percent, 3)} %mass",
    };
}
