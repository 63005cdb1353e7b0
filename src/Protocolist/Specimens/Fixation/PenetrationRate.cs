namespace Protocolist.Specimens.Fixation;

/// <summary>K of d = K·√t in mm/√h at 20 °C.</summary>
/// <remarks>
/// Measured on cut blocks in hours, used for days: an extrapolation, so a band. Low is the slow end to plan with, nominal what was
/// measured, high the fastest anybody found. √(low · nominal) = 1.4 for muscle is what fits the times that museums keep.
/// </remarks>
internal static class PenetrationRate
{
    private const string Steicke = "Steicke et al. 2018, Eur J Histochem";
    private const string Slow = "low end: whole organs run slower (Start et al. 1992, J Clin Pathol 45:1120), judgement";

    // Steicke: bovine heart muscle 1.994, 1 to 10 h, n = 4; high: Baker 1958, gelatin gel, 3.6.
    private static readonly SourcedBand FormaldehydeMuscle = new(1.0, 2.0, 3.6, Steicke + " (heart muscle 1.994); " + Slow);

    // Steicke: bovine liver 2.153; low: Tellyesniczky 1926, liver pieces, 0.78; high: Helander 1994 at 25 degC.
    private static readonly SourcedBand FormaldehydeViscera = new(0.8, 2.1, 3.6, Steicke + " (liver 2.153); low end: Tellyesniczky 1926 (0.78)");

    // Baker 1958: gelatin and albumin gel 3.6; Medawar 1941: plasma clot 5.5; low end of jelly: judgement.
    private static readonly SourcedBand FormaldehydeJelly = new(2.0, 3.6, 5.5, "Baker 1958 (gel 3.6), Medawar 1941 (clot 5.5), both as in Hewlett 2002");

    // Steicke: heart 1.801, liver 2.113 in ethanol; nobody found faster.
    private static readonly SourcedBand StrongEthanolMuscle = new(1.0, 1.8, 1.8, Steicke + " (heart 1.801); " + Slow);
    private static readonly SourcedBand StrongEthanolViscera = new(0.8, 2.1, 2.1, Steicke + " (liver 2.113); " + Slow);

    // Dunster-Jones et al. 2018: 50 % is significantly slower than 100 %; the size of the drop at 70 % is unsure.
    private static readonly SourcedBand WeakEthanol = new(0.9, 1.6, 1.8, "Dunster-Jones et al. 2018 (weaker is slower); size of the drop unsure");

    /// <summary>The band for one tissue and fixative.</summary>
    /// <param name="tissue">What has to be crossed.</param>
    /// <param name="fixative">What crosses it.</param>
    /// <returns>mm per square root of an hour at 20 °C.</returns>
    public static SourcedBand Of(Tissue tissue, Fixative fixative) => (fixative, tissue) switch
    {
        (Fixative.Formaldehyde, Tissue.Muscle) => FormaldehydeMuscle,
        (Fixative.Formaldehyde, Tissue.Viscera) => FormaldehydeViscera,
        (Fixative.Formaldehyde, _) => FormaldehydeJelly,
        (Fixative.StrongEthanol, Tissue.Viscera) => StrongEthanolViscera,
        (Fixative.StrongEthanol, _) => StrongEthanolMuscle,
        _ => WeakEthanol,
    };
}
