using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids.Substances;

/// <summary>A working solution of formaldehyde, buffered or not: "formalin" by parts of stock, "formaldehyde" by its own content.</summary>
internal sealed class Formaldehyde() : FormaldehydeSolution("formaldehyde")
{
    /// <summary>Strongest working solution, in percent: a "formalin" above this is somebody's stock.</summary>
    public const double Strongest = 30;

    // "4 % formalin" is used for 4 parts of stock (1.6 % formaldehyde) and for 4 % formaldehyde (10 parts of stock); 3.7 % likewise.
    private const double AmbiguousFrom = 3.5;
    private const double AmbiguousTo = 4.2;

    private static readonly Phrase WriteFormalin = new("strength-missing.formalin.remedy", "write it as 'formalin 10 %', parts of stock");
    private static readonly Phrase WriteFormaldehyde = new("strength-missing.formaldehyde.remedy", "write it as 'formaldehyde 4 % w/v'");
    private static readonly Phrase ByVolume = new(
        "strength-basis-unfit.formaldehyde", "'{text}' gives formaldehyde by volume, which may mean parts of stock or its own content");

    private static readonly Phrase WriteEither = new("strength-basis-unfit.formaldehyde.remedy", "write '{parts}' or '{content}'");
    private static readonly Phrase NoBasis = new("strength-basis-missing.formaldehyde", "'{text}' does not say on which basis; read as % w/v");
    private static readonly Phrase WriteName = new("strength-basis-missing.formaldehyde.remedy", "write '{name}'");
    private static readonly Phrase TooStrong = new("strength-out-of-range.formaldehyde", "'{text}' is as strong as a stock, not as a working solution");
    private static readonly Phrase BottleOrLabel = new(
        "strength-out-of-range.formaldehyde.remedy", "write 'formaldehyde stock 37 %mass', or what the bottle's label says; '100 % formalin' is the stock");

    private static readonly Phrase BottleItself = new(
        "strength-out-of-range.formaldehyde.remedy-bottle",
        "write 'formaldehyde stock {percent:0.###} {basis}' if it is the bottle's own strength; '100 % formalin' is the stock");

    private static readonly Phrase Ambiguous = new(
        "ambiguous-formalin-strength",
        "'{text}' may mean {percent:0.##} parts of stock in 100, which is {content:0.#} g/L formaldehyde (taken here), "
        + "or {percent:0.##} % formaldehyde, which is {parts:0.#} parts");

    private static readonly Phrase SayWhich = new("ambiguous-formalin-strength.remedy", "say which is meant: '{parts}' or '{content}'");

    /// <summary>How a buffering is written before "formalin" and "formaldehyde", the canonical spelling first.</summary>
    private static readonly (Buffering Buffering, string[] Before, string[] After)[] Bufferings =
    [
        (Buffering.Phosphate,
            ["neutral buffered", "phosphate-buffered", "phosphate buffered neutral", "neutral phosphate-buffered", "buffered neutral"], []),
        (Buffering.PhosphateSodiumHydroxide, ["phosphate-NaOH buffered", "modified millonig", "millonig"], []),
        (Buffering.Borax, ["borax-buffered", "borax"], ["with borax"]),
        (Buffering.SeaWater, ["sea-water", "seawater"], ["in sea water", "in seawater"]),
        (Buffering.Hexamine, ["hexamine-buffered", "hexamine", "hexamethylenetetramine-buffered"], ["with hexamine"]),
        (Buffering.MarbleChips, ["marble-chip", "marble chips", "calcium-carbonate"], ["over marble chips", "with marble chips"]),
    ];

    public override Phrase Noun { get; } = new("substance.formaldehyde", "formalin");

    public override ImmutableArray<string> Examples =>
        ["formalin 10 %", "formaldehyde 4 % w/v", .. Bufferings.Select(b => $"{b.Before[0]} formalin 10 %")];

    public override Fluid Of(double percent, StrengthBasis basis) => Of(percent, basis, Buffering.None, SeaWaterDensity.OceanSalinity);

    /// <summary>A working solution, above 0 to 30 parts of stock or % w/v.</summary>
    public static Fluid Of(double percent, StrengthBasis basis, Buffering buffering, double salinity)
    {
        percent = Fluid.Rounded(percent, 0.001, Strongest);
        var gramsPerLitre = basis switch
        {
            StrengthBasis.PartsOfStock => percent / 100 * Fluid.ReferenceStock.Composition[Gas] * Fluid.ReferenceStock.DensityAt(20),
            StrengthBasis.WeightPerVolume => 10 * percent,
            _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "A working solution's strength is by parts of stock or weight per volume."),
        };
        salinity = buffering is Buffering.SeaWater ? Substances.SeaWater.Salinity(salinity) : 0;
        return new(Formaldehyde, percent, basis, Working(gramsPerLitre, buffering, salinity), buffering, salinity);
    }

    internal override IEnumerable<FluidWord> Words
    {
        get
        {
            foreach (var countsStock in (bool[])[true, false])
            {
                var noun = countsStock ? "formalin" : "formaldehyde";
                yield return new(noun, this, CountsStock: countsStock);
                yield return new($"unbuffered {noun}", this, CountsStock: countsStock);
                foreach (var (buffering, before, after) in Bufferings)
                {
                    foreach (var words in before) yield return new($"{words} {noun}", this, buffering, countsStock);
                    foreach (var words in after) yield return new($"{noun} {words}", this, buffering, countsStock);
                }
            }

            yield return new("nbf", this, Buffering.Phosphate, true);
        }
    }

    internal override IEnumerable<string> Canonical =>
    [
        .. Bufferings.Select(b => $"{b.Before[0]} formalin"), .. Bufferings.Select(b => $"{b.Before[0]} formaldehyde"), "formalin", "formaldehyde",
    ];

    internal override Checked<Fluid> Read(in WrittenFluid written, in FluidWord word)
    {
        var (salinity, buffering) = (SeaWaterDensity.OceanSalinity, word.Buffering);
        if (buffering is Buffering.SeaWater)
        {
            if (Substances.SeaWater.Salinity(written, out salinity) is { } fault) return fault;
        }
        else if (written.Extra.Length > 0)
        {
            return FluidName.Leftover(written);
        }

        if (written.Percent is not { } percent) return FluidName.NoStrength(written, word.CountsStock ? WriteFormalin : WriteFormaldehyde);
        if (FluidName.Outside(written, percent) is { } outside) return outside;
        if (percent > Strongest) return AsStrongAsStock(written, percent);
        if (written.Basis is StrengthBasis.Volume && !word.CountsStock)
        {
            return FluidName.Fault(
                "strength-basis-unfit",
                ByVolume.With(("text", written.Text)),
                WriteEither.With(
                    ("parts", Of(percent, StrengthBasis.PartsOfStock, buffering, salinity).Name),
                    ("content", Of(percent, StrengthBasis.WeightPerVolume, buffering, salinity).Name)),
                written.Where);
        }

        if (written.Basis is StrengthBasis.PartsOfStock || (word.CountsStock && written.Basis is StrengthBasis.None or StrengthBasis.Volume))
        {
            var formalin = Of(percent, StrengthBasis.PartsOfStock, buffering, salinity);
            return written.Basis is StrengthBasis.None && IsAmbiguous(percent) ? new(formalin, [WhichIsMeant(written, formalin)]) : new(formalin, []);
        }

        var perVolume = written.Basis is StrengthBasis.Mass ? PerVolume(percent, buffering, salinity) : percent;
        if (perVolume > Strongest) return AsStrongAsStock(written, percent);
        var fluid = Of(perVolume, StrengthBasis.WeightPerVolume, buffering, salinity);
        if (written.Basis is not StrengthBasis.None) return new(fluid, []);
        var told = Finding.Warning("strength-basis-missing", NoBasis.With(("text", written.Text)), WriteName.With(("name", fluid.Name)), written.Where);
        return new(fluid, [told]);
    }

    internal override string NameOf(Fluid fluid)
    {
        var isParts = fluid.Basis is StrengthBasis.PartsOfStock;
        var strength = isParts && IsAmbiguous(fluid.Strength) ? $"{StrengthText.Of(fluid)} of stock" : StrengthText.Of(fluid);
        return $"{Before(fluid.Buffering)}{(isParts ? "formalin" : "formaldehyde")} {strength}{Substances.SeaWater.SalinityOf(fluid)}";
    }

    /// <summary>Methanol rides along from the stock, 12 parts for 37 of formaldehyde; the mass of a litre comes from its own density.</summary>
    private static Composition Working(double gramsPerLitre, Buffering buffering, double salinity)
    {
        var saltGramsPerLitre = BufferRecipe.AnhydrousGramsPerLitre(buffering, gramsPerLitre);
        const double methanolPerFormaldehyde = FormaldehydeWater.ReferenceMethanol / FormaldehydeWater.ReferenceStock;
        var perLitre = 1000.0;
        // The mass of a litre hangs on its composition and that on the mass; each round gains two digits or more.
        for (var round = 0; ; round++)
        {
            var formaldehyde = gramsPerLitre / perLitre;
            var composition = new Composition(
                (Gas, formaldehyde),
                (Methanol, formaldehyde * methanolPerFormaldehyde),
                (Solute.SeaSalt, Math.Max(0, 1 - formaldehyde / FormaldehydeWater.ReferenceStock) * salinity / 1000),
                (Solute.BufferSalts, saltGramsPerLitre / perLitre));
            var next = Formaldehyde.Density(composition, 20);
            if (round == 11 || next.Equals(perLitre)) return composition;
            perLitre = next;
        }
    }

    private static string Before(Buffering buffering) =>
        buffering is Buffering.None ? ""
        : Array.Find(Bufferings, b => b.Buffering == buffering).Before is [var usual, ..] ? usual + " "
        : throw new ArgumentOutOfRangeException(nameof(buffering), buffering, "This is no way to buffer.");

    /// <summary>Whether a bare "formalin n %" could as well mean n % formaldehyde.</summary>
    private static bool IsAmbiguous(double percent) => percent is >= AmbiguousFrom and <= AmbiguousTo;

    private static Finding WhichIsMeant(in WrittenFluid written, Fluid formalin) => Finding.Warning(
        "ambiguous-formalin-strength",
        Ambiguous.With(
            ("text", written.Text),
            ("percent", formalin.Strength),
            ("content", formalin.FormaldehydeGramsPerLitre!.Value),
            ("parts", 1000 * formalin.Strength / Fluid.ReferenceStock.FormaldehydeGramsPerLitre!.Value)),
        SayWhich.With(
            ("parts", formalin.Name),
            ("content", Of(formalin.Strength, StrengthBasis.WeightPerVolume, formalin.Buffering, Math.Max(2, formalin.Salinity)).Name)),
        written.Where);

    /// <summary>Percent w/v of percent by mass, through the density, which hangs on the strength itself: each round gains two digits.</summary>
    private static double PerVolume(double percent, Buffering buffering, double salinity)
    {
        var perVolume = percent;
        for (var round = 0; round < 8; round++)
            perVolume = percent * Of(Math.Min(perVolume, Strongest), StrengthBasis.WeightPerVolume, buffering, salinity).DensityAt(20) / 1000;
        return perVolume;
    }

    private static Checked<Fluid> AsStrongAsStock(in WrittenFluid written, double percent)
    {
        var isPerVolume = written.Basis is StrengthBasis.WeightPerVolume;
        var canBeStock = percent <= (isPerVolume ? Substances.FormaldehydeStock.StrongestPerVolume : Substances.FormaldehydeStock.StrongestByMass);
        return FluidName.Fault(
            "strength-out-of-range",
            TooStrong.With(("text", written.Text)),
            canBeStock ? BottleItself.With(("percent", percent), ("basis", isPerVolume ? "% w/v" : "%mass")) : BottleOrLabel,
            written.Where);
    }
}
