using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>What people may lift. Local rules come first; a load held away from the body, high or low, is far less.</summary>
internal static class Lifting
{
    /// <summary>The most one person should lift close to the body at knuckle height.</summary>
    /// <remarks>
    /// 23 kg: load constant of the revised NIOSH lifting equation (Waters and others 1993, from memory). The United Kingdom's guidance L23
    /// has 25 kg for men and 16 kg for women in the best position (from memory).
    /// </remarks>
    public static Mass OnePerson { get; } = Mass.FromKilograms(LiftedByOne);

    private const double LiftedByOne = 23;

    /// <summary>The most that a team should lift.</summary>
    /// <param name="people">1 or 2.</param>
    /// <returns>23 kg for one; for two, two thirds of twice that, 31 kg (guidance L23, from memory).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Neither one nor two.</exception>
    public static Mass Limit(int people) => Mass.FromKilograms(LimitKilograms(people));

    internal static double LimitKilograms(int people) => people switch
    {
        1 => LiftedByOne,
        2 => LiftedByOne * (2 * 2.0 / 3),
        _ => throw new ArgumentOutOfRangeException(nameof(people), people, "one or two people lift a vessel; for more, use a trolley or hoist"),
    };
}
