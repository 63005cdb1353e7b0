using Protocolist.Fluids.Mixing;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

/// <summary>Alligation by mass, worked by hand: the fewest liquids, then the least cost, then the first.</summary>
public class BlendSolverTests
{
    private const double Endless = double.PositiveInfinity;

    // 10 kg of 0.4 out of 0.8 and water: 5 kg each.
    [Fact]
    public void Two_liquids_share_the_mass_by_their_strengths() => Assert.Equal([5, 5], BlendSolver.Solve([new(0.8, Endless, 0), new(0, Endless, 0)], 10, 4)!);

    [Fact]
    public void One_liquid_of_the_strength_is_taken_alone()
    {
        Assert.Equal([0, 10, 0], BlendSolver.Solve([new(0.8, Endless, 0), new(0.4, Endless, 99), new(0, Endless, 0)], 10, 4)!);
        // Just enough is enough.
        Assert.Equal([0, 10], BlendSolver.Solve([new(0.8, Endless, 0), new(0.4, 10, 99)], 10, 4)!);
        // Too little of it: 0.8 and water are two liquids, that bottle with both would be three.
        var masses = BlendSolver.Solve([new(0.8, Endless, 0), new(0.4, 8, 0), new(0, Endless, 0)], 10, 4)!;
        Assert.Equal([5, 0, 5], masses.Select(m => Math.Round(m, 9)));
    }

    [Fact]
    public void Two_part_bottles_of_the_strength_are_poured_together()
    {
        Assert.Equal([5, 5], BlendSolver.Solve([new(0.4, 5, 1), new(0.4, 5, 1)], 10, 4)!);
        Assert.Equal([6, 4], BlendSolver.Solve([new(0.4, 9, 1), new(0.4, 4, 0.5)], 10, 4)!);
    }

    // A hundred-thousandth of the mass off is the same strength, alone; one and a half is not.
    [Fact]
    public void A_liquid_very_near_the_strength_is_that_strength()
    {
        Assert.Equal([10, 0, 0], BlendSolver.Solve([new(0.4 + 0.9e-5, Endless, 0), new(0.8, Endless, 0), new(0, Endless, 0)], 10, 4)!);
        var corrected = BlendSolver.Solve([new(0.4 + 1.1e-5, Endless, 0), new(0.8, Endless, 0), new(0, Endless, 0)], 10, 4)!;
        Assert.Equal(2, corrected.Count(m => m > 0));
    }

    [Fact]
    public void Among_as_few_the_cheapest_is_taken_and_among_equals_the_first()
    {
        // 5 kg of 0.8 at 2 are dearer than 4 kg of 1.0 at 2.4: 10 against 9.6.
        Assert.Equal([0, 4, 6], BlendSolver.Solve([new(0.8, Endless, 2), new(1, Endless, 2.4), new(0, Endless, 0)], 10, 4)!);
        Assert.Equal([5, 0, 5], BlendSolver.Solve([new(0.8, Endless, 2), new(1, Endless, 2.6), new(0, Endless, 0)], 10, 4)!);
        Assert.Equal([5, 0, 5], BlendSolver.Solve([new(0.8, Endless, 2), new(0.8, Endless, 2), new(0, Endless, 0)], 10, 4)!);
        // The water has its price as well: 6 kg at 1 make the stronger dearer, 9.6 + 6 against 10 + 5.
        Assert.Equal([5, 0, 5], BlendSolver.Solve([new(0.8, Endless, 2), new(1, Endless, 2.4), new(0, Endless, 1)], 10, 4)!);
    }

    // 3 kg of 0.8 and 4 kg of 0.6 must be parted with water; one is taken whole: all of the cheap 0.6 (4 kg, 2.4) and 2 kg of the dear 0.8; or all of the cheap 0.8 and 2.667 kg of the dear 0.6.
    [Theory]
    [InlineData(5, 1, 2, 4, 4)]
    [InlineData(1, 5, 3, 2.6666667, 4.3333333)]
    public void The_cheap_part_bottle_is_the_one_taken_whole(double dearFirst, double second, double a, double b, double water)
    {
        var masses = BlendSolver.Solve([new(0.8, 3, dearFirst), new(0.6, 4, second), new(0, Endless, 0)], 10, 4)!;
        Assert.Equal(a, masses[0], 1e-6);
        Assert.Equal(b, masses[1], 1e-6);
        Assert.Equal(water, masses[2], 1e-6);
    }

    [Fact]
    public void What_cannot_be_reached_has_no_answer()
    {
        Assert.Null(BlendSolver.Solve([new(0.3, Endless, 0), new(0, Endless, 0)], 10, 4));
        Assert.Null(BlendSolver.Solve([new(0.8, Endless, 0), new(0.5, Endless, 0)], 10, 4));
        Assert.Null(BlendSolver.Solve([new(0.8, 4.99, 0), new(0, Endless, 0)], 10, 4));
        Assert.NotNull(BlendSolver.Solve([new(0.8, 5, 0), new(0, Endless, 0)], 10, 4));
        Assert.Null(BlendSolver.Solve([new(0.8, Endless, 0), new(0, 4.99, 0)], 10, 4));
        Assert.NotNull(BlendSolver.Solve([new(0.8, Endless, 0), new(0, 5, 0)], 10, 4));
        Assert.Null(BlendSolver.Solve([new(0.4, 9, 0)], 10, 4));
        Assert.Null(BlendSolver.Solve([], 10, 4));
    }

    [Fact]
    public void The_least_and_the_most_that_a_mass_can_hold_are_told()
    {
        // The most: 3 kg of 0.8 and 4 of 0.6 and 3 of 0.1; the least: 5 kg of 0.1 and 4 of 0.6 and 1 of 0.8.
        var (least, most) = BlendSolver.Reach([new(0.6, 4, 0), new(0.1, 5, 0), new(0.8, 3, 0)], 10);
        Assert.Equal(3 * 0.8 + 4 * 0.6 + 3 * 0.1, most, 1e-12);
        Assert.Equal(5 * 0.1 + 4 * 0.6 + 1 * 0.8, least, 1e-12);
        Assert.Equal(12 * 0.5, BlendSolver.Reach([new(0.5, 12, 0)], 12).Most, 1e-12);
        Assert.True(double.IsNaN(BlendSolver.Reach([new(0.5, 11.9, 0)], 12).Most));
        Assert.True(double.IsNaN(BlendSolver.Reach([new(0.5, 11.9, 0)], 12).Least));
    }

    [Fact]
    public void More_than_sixteen_liquids_are_the_callers_bug()
    {
        var sixteen = Enumerable.Range(0, 16).Select(i => new Blendable(i / 20.0, Endless, 0)).ToArray();
        Assert.NotNull(BlendSolver.Solve(sixteen, 10, 4));
        Assert.StartsWith("Too many liquids to search.", Assert.Throws<ArgumentException>(() => BlendSolver.Solve([.. sixteen, new(0.9, Endless, 0)], 10, 4)).Message.ToString(), StringComparison.Ordinal);
    }

    // A cylinder's and a balance's digits: each step of the reading, just below it and at it.
    [Theory]
    [InlineData(0, "0 mL")]
    [InlineData(0.0012345, "1.23 mL")]
    [InlineData(0.009949, "9.95 mL")]
    [InlineData(0.009951, "10 mL")]
    [InlineData(0.0123456, "12.3 mL")]
    [InlineData(0.099449, "99.4 mL")]
    [InlineData(0.099501, "100 mL")]
    [InlineData(0.12345, "123 mL")]
    [InlineData(0.999499, "999 mL")]
    [InlineData(0.999501, "1 L")]
    [InlineData(1.2345, "1.23 L")]
    [InlineData(9.9949, "9.99 L")]
    [InlineData(9.9951, "10 L")]
    [InlineData(12.345, "12.3 L")]
    [InlineData(1234.56, "1234.6 L")]
    [InlineData(-0.0123456, "-12.3 mL")]
    public void Volumes_are_written_as_a_cylinder_reads(double litres, string text) => Assert.Equal(text, MixingAmount.Text(Volume.FromLiters(litres).CubicMeters, Dimension.OfVolume));

    [Theory]
    [InlineData(0, "0 g")]
    [InlineData(0.12345, "0.123 g")]
    [InlineData(0.99949, "0.999 g")]
    [InlineData(0.99951, "1 g")]
    [InlineData(12.345, "12.34 g")]
    [InlineData(99.9949, "99.99 g")]
    [InlineData(99.9951, "100 g")]
    [InlineData(123.45, "123 g")]
    [InlineData(999.49, "999 g")]
    [InlineData(999.51, "1 kg")]
    [InlineData(1234.5, "1.23 kg")]
    [InlineData(9994.9, "9.99 kg")]
    [InlineData(9995.1, "10 kg")]
    [InlineData(12345, "12.3 kg")]
    public void Masses_are_written_as_a_balance_reads(double grams, string text) => Assert.Equal(text, MixingAmount.Text(Mass.FromGrams(grams).Kilograms, Dimension.OfMass));
}
