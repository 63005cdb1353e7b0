using static System.FormattableString;

namespace Protocolist.Specimens.Measuring;

/// <summary>How an estimate is written: two figures are all that it is worth.</summary>
internal static class TwoFigures
{
    /// <summary>Such as 76, 0.85 or 12000.</summary>
    public static string Of(double value)
    {
        if (value is not (> 1e-12 and < 1e15)) return Invariant($"{value}");
        var step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 1);
        return Invariant($"{(decimal)(Math.Round(value / step) * step):0.############}");
    }
}
