using System.Globalization;
using Protocolist.Fluids.Densities;

namespace Protocolist.Tests.Reference;

/// <summary>The ethanol coefficients digit by digit, and against a second, independently fitted formula.</summary>
public class OimlCoefficientTests
{
    // OIML R 22 (1975), printed form: significand and power of ten, as in the annex of Council Directive 76/766/EEC.
    private const string A =
        """
        9.982012300e2 -1.929769495e2 3.891238958e2 -1.668103923e3 1.352215441e4 -8.829278388e4
        3.062874042e5 -6.138381234e5 7.470172998e5 -5.478461354e5 2.234460334e5 -3.903285426e4
        """;

    private const string B =
        """
        -2.0618513e-1 -5.2682542e-3 3.6130013e-5 -3.8957702e-7 7.1693540e-9 -9.9739231e-11
        """;

    private const string C1 =
        """
        1.693443461530087e-1 -1.046914743455169e1 7.196353469546523e1 -7.047478054272792e2 3.924090430035045e3 -1.210164659068747e4
        2.248646550400788e4 -2.605562982188164e4 1.852373922069467e4 -7.420201433430137e3 1.285617841998974e3
        """;

    private const string C2 =
        """
        -1.193013005057010e-2 2.517399633803461e-1 -2.170575700536993e0 1.353034988843029e1 -5.029988758547014e1 1.096355666577570e2
        -1.422753946421155e2 1.080435942856230e2 -4.414153236817392e1 7.442971530188783e0
        """;

    private const string C3 =
        """
        -6.802995733503803e-4 1.876837790289664e-2 -2.002561813734156e-1 1.022992966719220e0 -2.895696483903638e0 4.810060584300675e0
        -4.672147440794683e0 2.458043105903461e0 -5.411227621436812e-1
        """;

    private const string C4 =
        """
        4.075376675622027e-6 -8.763058573471110e-6 6.515031360099368e-6 -1.515784836987210e-6
        """;

    private const string C5 =
        """
        -2.788074354782409e-8 1.345612883493354e-8
        """;

    // Bettin and Spieweck 1990, PTB-Mitteilungen 100, 457 (as quoted in ABNT NBR 5992): powers of p - 0.5.
    private const string PtbA =
        """
        913.76673 -221.75948 -59.61786 146.82019 -566.5175 621.18006
        3782.4439 -9745.3133 -9573.4653 32677.808 8763.7383 -39026.437
        """;

    private const string PtbB =
        """
        -0.7943755 -0.0012168407 3.5017833e-06 1.770944e-07 -3.4138828e-09 -9.9880242e-11
        """;

    private const string PtbC1 =
        """
        -0.39158709 1.1518337 -5.0416999 13.381608 4.5899913 -118.21
        190.5402 339.81954 -900.32344 -349.32012 1285.9318
        """;

    private const string PtbC2 =
        """
        -0.00012083196 -0.0057466248 0.12030894 -0.23519694 -1.0362738 2.1804505
        4.2763108 -6.8624848 -6.9384031 7.4460428
        """;

    private const string PtbC3 =
        """
        -3.8683211e-05 -0.00020911429 0.0026713888 0.0041042045 -0.049364385 -0.017952946
        0.29012506 0.023001712 -0.54150139
        """;

    private const string PtbC4 =
        """
        -5.6024906e-07 -1.2649169e-06 3.486395e-06 -1.5168726e-06
        """;

    private const string PtbC5 =
        """
        -1.4441741e-08 1.3470542e-08
        """;

    public static TheoryData<string, string> Sets() => new()
    {
        { nameof(A), A }, { nameof(B), B }, { nameof(C1), C1 }, { nameof(C2), C2 }, { nameof(C3), C3 }, { nameof(C4), C4 }, { nameof(C5), C5 },
    };

    [Theory]
    [MemberData(nameof(Sets))]
    public void Literals_are_the_published_ones_digit_by_digit(string set, string published)
    {
        var ours = set switch
        {
            nameof(A) => EthanolWater.A,
            nameof(B) => EthanolWater.B,
            nameof(C1) => EthanolWater.C1,
            nameof(C2) => EthanolWater.C2,
            nameof(C3) => EthanolWater.C3,
            nameof(C4) => EthanolWater.C4,
            _ => EthanolWater.C5,
        };
        // Equal to the last bit: a misprint worth 1e-5 kg/m³ must not pass.
        Assert.Equal(Numbers(published), ours.ToArray());
    }

    [Fact]
    public void The_two_digits_that_circulate_misprinted_are_right_here()
    {
        Assert.StartsWith("0.16934434", EthanolWater.C1[0].ToString("R", CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.EndsWith("536993", EthanolWater.C2[2].ToString("R", CultureInfo.InvariantCulture), StringComparison.Ordinal);
    }

    [Fact]
    public void Density_is_within_a_hundredth_of_the_second_formula_over_the_whole_field()
    {
        double[] a = Numbers(PtbA), b = Numbers(PtbB);
        double[][] c = [Numbers(PtbC1), Numbers(PtbC2), Numbers(PtbC3), Numbers(PtbC4), Numbers(PtbC5)];
        var worst = 0.0;
        for (var percent = 0; percent <= 100; percent++)
        {
            for (var celsius = -20; celsius <= 40; celsius += 2)
                worst = Math.Max(worst, Math.Abs(Ptb(a, b, c, percent / 100.0, celsius) - EthanolWater.Density(percent / 100.0, celsius)));
        }

        Assert.InRange(worst, 0.005, 0.0095);
    }

    private static double Ptb(double[] a, double[] b, double[][] c, double p, double celsius)
    {
        double y = p - 0.5, t = celsius - 20, sum = 0;
        for (var k = 0; k < a.Length; k++) sum += a[k] * Math.Pow(y, k);
        for (var k = 0; k < b.Length; k++) sum += b[k] * Math.Pow(t, k + 1);
        for (var i = 0; i < c.Length; i++)
        {
            for (var k = 0; k < c[i].Length; k++) sum += c[i][k] * Math.Pow(y, k + 1) * Math.Pow(t, i + 1);
        }

        return sum;
    }

    private static double[] Numbers(string text) =>
        [.. text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
}
