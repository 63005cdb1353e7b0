using Protocolist.Quantities;

namespace Protocolist.Rules;

/// <summary>There is fixative enough for so much body, changes counted.</summary>
internal static class RatioFloor
{
    public const string Id = "ratio-too-low";
    public const string Source = "pathology guideline PMC9292019 (ten times); Michonneau 2017 (3 to 5 times); changes counted: common practice";

    /// <summary>Volumes of fluid to one of body: three to five are the least that is published (Michonneau 2017), ten are wanted (PMC9292019).</summary>
    public const double Least = 3;
    public const double Usual = 5;

    /// <summary>Less than a vessel can be filled to.</summary>
    private const double Slack = 0.01;

    /// <summary>The least volumes of fluid that one volume of body meets in all, over every ratio and number of changes that there may be.</summary>
    public static double Volumes(QuantityRange ratio, QuantityRange changes) => ratio.Low * (1 + Math.Max(0, changes.Low));

    /// <summary>Whether these are fewer than so many.</summary>
    public static bool IsBelow(double limit, double volumes) => volumes < limit - Slack;
}
