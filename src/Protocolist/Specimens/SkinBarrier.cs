namespace Protocolist.Specimens;

/// <summary>How well the outside of a body lets fixative through.</summary>
public enum SkinBarrier
{
    /// <summary>Wet or thin skin: fluid goes in from everywhere.</summary>
    Open,

    /// <summary>Small scales or thin cuticle: slower, but it goes in.</summary>
    Slow,

    /// <summary>Hair, feathers, thick or scaly skin, fat: count on cuts, cavities and depots only.</summary>
    Hide,

    /// <summary>Shell, armour, plates: nothing goes in but through openings.</summary>
    Armour,
}
