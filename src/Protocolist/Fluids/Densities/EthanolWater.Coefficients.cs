namespace Protocolist.Fluids.Densities;

// The coefficients of OIML R 22 (1975), as in the annex of Council Directive 76/766/EEC.
// Two misprints circulate that no density table can show, being worth 1e-5 and 3e-12 kg/m³: C1,1 with 1.69334..., and C2,3 ending in ...536933.
// The tests hold these literals, digit by digit, against a second transcription.
internal static partial class EthanolWater
{
    /// <summary>A1 to A12, kg/m³: the polynomial in the mass fraction at 20 °C.</summary>
    internal static ReadOnlySpan<double> A =>
    [
        9.982012300e2, -1.929769495e2, 3.891238958e2, -1.668103923e3, 1.352215441e4, -8.829278388e4,
        3.062874042e5, -6.138381234e5, 7.470172998e5, -5.478461354e5, 2.234460334e5, -3.903285426e4,
    ];

    /// <summary>B1 to B6, kg/(m³ K^k): water away from 20 °C.</summary>
    internal static ReadOnlySpan<double> B =>
    [
        -2.0618513e-1, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.1693540e-9, -9.9739231e-11,
    ];

    /// <summary>C1,1 to C1,11, kg/(m³ K).</summary>
    internal static ReadOnlySpan<double> C1 =>
    [
        1.693443461530087e-1, -1.046914743455169e1, 7.196353469546523e1, -7.047478054272792e2, 3.924090430035045e3, -1.210164659068747e4,
        2.248646550400788e4, -2.605562982188164e4, 1.852373922069467e4, -7.420201433430137e3, 1.285617841998974e3,
    ];

    /// <summary>C2,1 to C2,10, kg/(m³ K²).</summary>
    internal static ReadOnlySpan<double> C2 =>
    [
        -1.193013005057010e-2, 2.517399633803461e-1, -2.170575700536993e0, 1.353034988843029e1, -5.029988758547014e1,
        1.096355666577570e2, -1.422753946421155e2, 1.080435942856230e2, -4.414153236817392e1, 7.442971530188783e0,
    ];

    /// <summary>C3,1 to C3,9, kg/(m³ K³).</summary>
    internal static ReadOnlySpan<double> C3 =>
    [
        -6.802995733503803e-4, 1.876837790289664e-2, -2.002561813734156e-1, 1.022992966719220e0, -2.895696483903638e0,
        4.810060584300675e0, -4.672147440794683e0, 2.458043105903461e0, -5.411227621436812e-1,
    ];

    /// <summary>C4,1 to C4,4, kg/(m³ K⁴).</summary>
    internal static ReadOnlySpan<double> C4 =>
    [
        4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6,
    ];

    /// <summary>C5,1 and C5,2, kg/(m³ K⁵).</summary>
    internal static ReadOnlySpan<double> C5 =>
    [
        -2.788074354782409e-8, 1.345612883493354e-8,
    ];
}
