namespace Protocolist.Specimens;

/// <summary>Which length of an animal the trade means by "its length".</summary>
public enum LengthKind
{
    /// <summary>Tip to tip, tail and fins included; of a scorpion with tail and sting.</summary>
    Total,

    /// <summary>Fishes: snout to the end of the backbone, without the tail fin.</summary>
    Standard,

    /// <summary>Reptiles and amphibians: snout to vent.</summary>
    SnoutVent,

    /// <summary>Mammals: nose to the root of the tail.</summary>
    HeadBody,

    /// <summary>Turtles and decapods: along the carapace.</summary>
    Carapace,

    /// <summary>Cephalopods: along the mantle, on the back.</summary>
    Mantle,

    /// <summary>Rays, jellyfish, echinoderms: across the disc, bell or test; sea stars from arm tip to arm tip.</summary>
    Disc,

    /// <summary>Snails and bivalves: the greatest length of the shell.</summary>
    Shell,

    /// <summary>Bats: along the folded forearm, elbow to wrist.</summary>
    Forearm,

    /// <summary>Crabs and horseshoe crabs: across the carapace.</summary>
    CarapaceWidth,

    /// <summary>Eggs: across, without the jelly.</summary>
    EggDiameter,

    /// <summary>Octopuses: along the mantle, on the belly side.</summary>
    VentralMantle,

    /// <summary>Scorpions: the body without its tail.</summary>
    Body,
}
