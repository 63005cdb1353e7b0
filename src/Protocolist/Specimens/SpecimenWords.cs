namespace Protocolist.Specimens;

/// <summary>In what state the dead animal came.</summary>
public enum Condition
{
    /// <summary>Dead for hours at most, or kept cool since.</summary>
    Fresh,

    /// <summary>Kept at fridge temperature.</summary>
    Chilled,

    /// <summary>Still frozen: it must thaw first.</summary>
    Frozen,

    /// <summary>Was frozen, now thawed: soft, and it soaks up fluid unevenly.</summary>
    Thawed,

    /// <summary>Swollen by gas: open and inject at once.</summary>
    Bloated,

    /// <summary>Rotting: hair slips, skin comes off; rarely worth fixing whole.</summary>
    Decomposed,
}

/// <summary>What the specimen is for.</summary>
public enum IntendedUse
{
    /// <summary>To be looked at: one side stays whole.</summary>
    Display,

    /// <summary>To be handled and looked at by learners.</summary>
    Teaching,

    /// <summary>For study: a voucher.</summary>
    Research,

    /// <summary>Tissue is taken for DNA before any fixative touches it.</summary>
    TissueForDnaFirst,
}

/// <summary>Sex, where it is known.</summary>
public enum Sex
{
    /// <summary>Female.</summary>
    Female,

    /// <summary>Male.</summary>
    Male,

    /// <summary>Both at once.</summary>
    Hermaphrodite,
}

/// <summary>How far grown.</summary>
public enum LifeStage
{
    /// <summary>Egg or spawn.</summary>
    Egg,

    /// <summary>Embryo or foetus.</summary>
    Embryo,

    /// <summary>Larva, tadpole, nymph, fry.</summary>
    Larva,

    /// <summary>Young, chick, nestling, hatchling.</summary>
    Juvenile,

    /// <summary>Full grown.</summary>
    Adult,
}
