using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Planning.Provisioning;

/// <summary>What a step may need beside fluids and vessels.</summary>
internal enum SundryKind
{
    Gloves,
    Goggles,
    Apron,
    Syringe,
    Needle,
    ScalpelBlade,
    Forceps,
    SampleTube,
    Label,
    GlassPlate,
    Weight,
    Thread,
    ScrewLid,
    SnapLid,
    Tape,
    NeutralCureSilicone,
    GroundStopper,
}

/// <summary>One sort of thing: of syringes the size in mL, of needles the gauge; 0 where no size is wanted.</summary>
internal readonly record struct Sundry(SundryKind Kind, int Size = 0)
{
    /// <summary>Its id in a plan whose bench does not list it.</summary>
    public string Id => Size == 0 ? Row.Id : FormattableString.Invariant($"{Row.Id}-{Size}-{Row.Unit.ToLowerInvariant()}");

    public Message Name => Size == 0 ? Row.Name : Sundries.Sized.With(("thing", Row.Name), ("size", Size), ("unit", Row.Unit));

    /// <summary>Whether it is thrown away as something that touched fixative, or as a sharp; null where it lasts.</summary>
    public WasteClass? Waste => Row.Waste;

    /// <summary>Whether a stock line that is called so serves.</summary>
    public bool IsCalled(string text) => Row.Words.Any(w => text.Contains(w, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether a stock line that is called so is of the wanted size.</summary>
    public bool IsSized(string text)
    {
        if (Size == 0) return false;
        var at = text.IndexOf(FormattableString.Invariant($"{Size} {Row.Unit}"), StringComparison.OrdinalIgnoreCase);
        return at == 0 || (at > 0 && !char.IsAsciiDigit(text[at - 1]) && text[at - 1] != '.');
    }

    /// <summary>Whether a stock line names a size in what this sort of thing is counted in: a digit before the unit.</summary>
    public bool SaysASize(string text)
    {
        var at = text.IndexOf(' ' + Row.Unit, StringComparison.OrdinalIgnoreCase);
        return at > 0 && char.IsAsciiDigit(text[at - 1]);
    }

    private Sundries.Row Row => Sundries.Rows[(int)Kind];
}

/// <summary>The catalogue of things: what people call them, and by which words a bench lists them.</summary>
internal static class Sundries
{
    public static readonly Phrase Sized = new("sundry.sized", "{thing} {size} {unit}");

    /// <summary>In the order of <see cref="SundryKind"/>.</summary>
    public static readonly ImmutableArray<Row> Rows =
    [
        new("gloves", "gloves", ["glove"]) { Waste = WasteClass.ContaminatedSolids },
        new("goggles", "goggles", ["goggle", "face shield"]),
        new("apron", "apron", ["apron", "coat"]),
        new("syringe", "syringe", ["syringe"]) { Waste = WasteClass.Sharps, Unit = "mL" },
        new("needle", "needle", ["needle"]) { Waste = WasteClass.Sharps, Unit = "G" },
        new("scalpel-blade", "scalpel blade", ["blade", "scalpel"]) { Waste = WasteClass.Sharps },
        new("forceps", "forceps", ["forceps", "tweezers"]),
        new("sample-tube", "sample tube", ["sample tube", "cryo", "vial"]),
        new("label", "label, inside and outside", ["label"]),
        new("glass-plate", "glass plate", ["glass plate"]),
        new("weight", "weight", ["weight"]),
        new("thread", "thread", ["thread"]),
        new("screw-lid", "screw lid", ["screw lid", "lid"]),
        new("snap-lid", "snap lid", ["snap lid", "lid"]),
        new("tape", "tape", ["tape"]),
        new("neutral-cure-silicone", "neutral-cure silicone", ["neutral-cure silicone", "silicone"]),
        new("ground-stopper", "ground stopper", ["ground stopper"]),
    ];

    /// <summary>The thing that a protocol names: what a body is mounted on, what closes a vessel.</summary>
    public static Sundry? Named(string word)
    {
        for (var kind = 0; kind < Rows.Length; kind++)
        {
            if (string.Equals(Rows[kind].Name.English, word, StringComparison.Ordinal)) return new((SundryKind)kind);
        }

        return null;
    }

    /// <summary>One row of the catalogue.</summary>
    /// <param name="Id">Its id in a plan.</param>
    /// <param name="Name">What it is called.</param>
    /// <param name="Words">A stock line whose text holds one of them serves.</param>
    public sealed record Row(string Id, Phrase Name, ImmutableArray<string> Words)
    {
        public Row(string id, string name, ImmutableArray<string> words)
            : this(id, new Phrase("sundry." + id, name), words)
        {
        }

        public WasteClass? Waste { get; init; }

        /// <summary>What its size is counted in.</summary>
        public string Unit { get; init; } = "";
    }
}
