namespace Protocolist.Specimens;

/// <summary>What fixative has to pass through.</summary>
public enum Tissue
{
    /// <summary>Muscle, and a whole body taken as one.</summary>
    Muscle,

    /// <summary>Liver, spleen, kidney, gut: the viscera.</summary>
    Viscera,

    /// <summary>Jelly: medusae, comb jellies, egg masses.</summary>
    Jelly,
}
