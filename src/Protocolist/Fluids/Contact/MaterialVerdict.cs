using Protocolist.Findings;

namespace Protocolist.Fluids.Contact;

/// <summary>Which part of a vessel a material serves as.</summary>
internal enum VesselPart
{
    /// <summary>Walls and bottom.</summary>
    Wall,

    /// <summary>The lid.</summary>
    Lid,

    /// <summary>Liner, gasket or sealant.</summary>
    Seal,

    /// <summary>What holds the specimen inside.</summary>
    Mount,
}

/// <summary>How a material bears a fluid.</summary>
internal enum MaterialGrade
{
    /// <summary>For decades.</summary>
    Lasting,

    /// <summary>For months, while fixing or moving; not to keep a specimen in.</summary>
    ForAWhile,

    /// <summary>Not at all: it harms the specimen, the seal or people.</summary>
    Unfit,
}

/// <summary>What is known of one material in one fluid, with its source.</summary>
/// <param name="Grade">How it bears the fluid.</param>
/// <param name="Reason">Why.</param>
/// <param name="Source">Who says so.</param>
internal sealed record MaterialVerdict(MaterialGrade Grade, Phrase Reason, string Source);
