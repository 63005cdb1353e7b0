
namespace Protocolist;

/// <summary>The kinds of work a protocol is made of, in the trade's own words.</summary>
public enum StageKind
{
    /// <summary>Briefly washing off blood, mud, mucus or fixative.</summary>
    Rinse,

    /// <summary>Letting a frozen body soften in the cold.</summary>
    Thaw,

    /// <summary>Keeping the body cold until work can begin.</summary>
    Hold,

    /// <summary>Taking tissue, measurements or photographs before anything is changed.</summary>
    Sample,

    /// <summary>Cutting so that fluid gets in.</summary>
    Slit,

    /// <summary>Injecting fluid.</summary>
    Inject,

    /// <summary>Setting the posture before it hardens.</summary>
    Pose,

    /// <summary>Lying in fixative.</summary>
    Immerse,

    /// <summary>Washing fixative out with water.</summary>
    Wash,

    /// <summary>One strength of a series of alcohols.</summary>
    Bath,

    /// <summary>Tying, weighting or hanging the body for its final vessel.</summary>
    Mount,

    /// <summary>Moving into the final vessel.</summary>
    House,

    /// <summary>Closing the final vessel.</summary>
    Seal,

    /// <summary>Labelling inside and outside.</summary>
    Label,

    /// <summary>Looking whether all is well.</summary>
    Inspect,

    /// <summary>Bringing a fluid back to its level or strength.</summary>
    TopUp,

    /// <summary>Seeing to spent fluid.</summary>
    Discard,

    /// <summary>Anything else.</summary>
    Task,
}
