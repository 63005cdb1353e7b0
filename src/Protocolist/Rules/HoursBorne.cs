using NodaTime;
using Protocolist.Specimens;

namespace Protocolist.Rules;

/// <summary>How long a dead body bears to wait for its fixative. Common practice throughout.</summary>
internal static class HoursBorne
{
    public static readonly Duration Uncooled = Duration.FromHours(12);
    public static readonly Duration Thawed = Duration.FromHours(24);
    public static readonly Duration Chilled = Duration.FromDays(3);

    /// <summary>Up to this a hold is as cold as a fridge, and longer than the day that a warmer one bears.</summary>
    private const double FridgeCelsius = 8;
    public static readonly Duration HeldCool = Duration.FromDays(1);

    /// <summary>From death, or from when it is in hand, to fixative, as it came. Of frozen bodies nobody asks this.</summary>
    public static Duration Unfixed(Condition? came) => came switch
    {
        Condition.Chilled => Chilled,
        Condition.Thawed => Thawed,
        _ => Uncooled,
    };

    /// <summary>On hold at a temperature in °C.</summary>
    public static Duration Held(double celsius) => celsius <= FridgeCelsius ? Chilled : HeldCool;
}
