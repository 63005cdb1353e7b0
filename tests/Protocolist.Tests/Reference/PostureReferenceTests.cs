using Protocolist.Specimens;
using Protocolist.Specimens.Groups;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>Postures against geometry and measured animals.</summary>
public class PostureReferenceTests
{
    /// <summary>
    /// A flat spiral whose turns touch is Archimedes' spiral of pitch d: from the inner radius a to the outer b its middle line is the integral of
    /// √(r² + (d/2π)²) over the angle, and r grows by d a turn. Summed here in small steps, from a hole two bodies wide; half a turn before its end it
    /// is half a body nearer to the centre.
    /// </summary>
    [Theory]
    [InlineData(1000, 25)]
    [InlineData(420, 9)]
    [InlineData(150, 6)]
    public void Coil_is_as_wide_as_the_spiral_of_its_length(double lengthMm, double thickMm)
    {
        var (middle, laid, step) = (1.5 * thickMm, 0.0, 0.001);
        while (laid < lengthMm)
        {
            var perRadian = thickMm / (2 * Math.PI);
            laid += Math.Sqrt((middle * middle) + (perRadian * perRadian)) * step;
            middle += perRadian * step;
        }

        Assert.InRange(Posture.Across(lengthMm, thickMm) / ((2 * middle) - (thickMm / 2) + thickMm), 0.98, 1.02);
    }

    /// <summary>A snake of 1 m, 25 mm thick, coiled by a museum's rule of thumb: √(4 · L · 1.15 · d / π), 191 mm (common practice).</summary>
    [Fact]
    public void Coil_of_a_metre_is_about_as_wide_as_the_rule_of_thumb() => Assert.InRange(Posture.Across(1000, 25), 0.9 * 191, 1.1 * 191);

    /// <summary>Stretched hind legs of anurans: 1.40 (1.06 to 1.65) of snout to vent, 4574 animals, so that the stretched animal is 2.06 to 2.65 long.</summary>
    [Fact]
    public void Stretched_frog_is_as_long_as_frogs_with_their_legs()
    {
        var frog = BodyMeasure.Of(new Specimen { Id = "S-1", Group = "frog", SnoutVentLength = Length.FromMillimeters(60), Posture = "stretched" }).Value!;
        Assert.InRange(PostureRows.Ways(frog)[0].Length.Millimeters / 60, 2.06, 2.65);
    }

    /// <summary>Wing span: small bats of 5 g about 0.21 m (Norberg &amp; Rayner 1987, as quoted; their relation holds fruit bats too).</summary>
    [Fact]
    public void Spread_bat_is_as_wide_as_small_bats()
    {
        var bat = BodyMeasure.Of(new Specimen { Id = "S-1", Group = "bat", Mass = Mass.FromGrams(5), Posture = "wings-spread" }).Value!;
        Assert.InRange(PostureRows.Ways(bat)[0].Width.Millimeters, 190, 240);
    }
}
