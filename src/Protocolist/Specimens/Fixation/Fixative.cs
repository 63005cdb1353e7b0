namespace Protocolist.Specimens.Fixation;

/// <summary>What fixes, as far as its way through tissue goes.</summary>
internal enum Fixative
{
    /// <summary>Formalin of about 10 %, buffered or not: about 4 % formaldehyde.</summary>
    Formaldehyde,

    /// <summary>Ethanol of 90 %vol and more.</summary>
    StrongEthanol,

    /// <summary>Ethanol of about 70 to 80 %vol.</summary>
    Ethanol,
}
