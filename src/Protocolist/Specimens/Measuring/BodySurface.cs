namespace Protocolist.Specimens.Measuring;

/// <summary>The outside of a body.</summary>
internal static class BodySurface
{
    // Thomsen's approximation of the area of an ellipsoid, within 1.1 %: published by K. Thomsen 2004, from memory.
    private const double P = 1.6075;

    /// <summary>In cm²: an ellipsoid of the group's proportions and that volume, 15 % more for what sticks out, up to half as much again (judgement).</summary>
    public static Spread Of(BodyShape shape, Spread volumeMl)
    {
        double Smooth(double ml)
        {
            // An ellipsoid fills π/6 of its box; stretch the box so that volume and proportions hold.
            var length = Math.Cbrt(ml / (Math.PI / 6 * shape.HeightPerLength * shape.WidthPerLength));
            var (a, b, c) = (length / 2, length * shape.HeightPerLength / 2, length * shape.WidthPerLength / 2);
            return 4 * Math.PI * Math.Pow((Math.Pow(a * b, P) + Math.Pow(a * c, P) + Math.Pow(b * c, P)) / 3, 1 / P);
        }

        return new(Smooth(volumeMl.Low), Smooth(volumeMl.Nominal) * 1.15, Smooth(volumeMl.High) * 1.5, false, "ellipsoid of that volume", shape.Source);
    }
}
