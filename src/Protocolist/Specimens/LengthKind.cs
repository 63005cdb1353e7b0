namespace Protocolist.Specimens;

/// <summary>Which length of an animal the trade means by "its length".</summary>
public enum LengthKind
{
    /// <summary>Tip to tip, tail and fins included.</summary>
    Total,

    /// <summary>Fishes: snout to the end of the backbone, without the tail fin.</summary>
    Standard,

    /// <summary>Reptiles and amphibians: snout to vent.</summary>
    SnoutVent,

    /// <summary>Mammals: nose to the root of the tail.</summary>
    HeadBody,

    /// <summary>Turtles and decapods: along the carapace.</summary>
    Carapace,

    /// <summary>Cephalopods: along the mantle.</summary>
    Mantle,

    /// <summary>Rays, jellyfish, echinoderms: across the disc, bell or test.</summary>
    Disc,

    /// <summary>Snails and bivalves: the greatest length of the shell.</summary>
    Shell,
}
