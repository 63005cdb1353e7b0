namespace Protocolist.Fluids;

/// <summary>What becomes of waste.</summary>
public enum WasteWay
{
    /// <summary>Kept, labelled, for another specimen.</summary>
    KeptForReuse,

    /// <summary>Collected as hazardous waste by those licensed for it.</summary>
    CollectedAsHazardous,

    /// <summary>Collected as sharps or biological waste by those licensed for it.</summary>
    CollectedAsClinical,

    /// <summary>To the drain under a named local permission, never otherwise.</summary>
    DrainedWhereAllowed,
}
