using System.Collections.Immutable;
using Protocolist.Findings;
using Duration = NodaTime.Duration;

namespace Protocolist.Vessels.Air;

/// <summary>What to expect in the air while a vessel stands open, and what to do about it.</summary>
/// <param name="Room">The room at the end of the work, best guess.</param>
/// <param name="Near">Over the vessel, best guess.</param>
/// <param name="ShiftMean">Mean over 8 hours, best guess.</param>
/// <param name="Low">The lower end of <paramref name="Near"/>.</param>
/// <param name="High">The upper end of <paramref name="Near"/>.</param>
/// <param name="Control">The weakest control under which even the upper end stays below the limits.</param>
/// <param name="Findings">What has to be said.</param>
internal sealed record AirEstimate(
    AirConcentration Room, AirConcentration Near, AirConcentration ShiftMean, AirConcentration Low, AirConcentration High,
    AirControl Control, ImmutableArray<Finding> Findings)
{
    /// <summary>What a cover that lies on, or a hood, lets through: 5 %, an assumption of this project.</summary>
    private const double LetThrough = 0.05;

    /// <summary>Air speed over a bench in m/min (AIHA, from memory).</summary>
    private const double UsualAirSpeed = 3.6;

    private static readonly Phrase Rough = new(
        "air-estimate-is-rough",
        "{near:0.0##} ppm over the vessel may as well be {low:0.0##} or {high:0.0##} ppm: emission and mixing are each known to a factor of 3");
    private static readonly Phrase RoughRemedy =
        new("air-estimate-is-rough.remedy", "use it to choose a control; only a measurement shows that a limit is kept");
    private static readonly Phrase TooMuch = new(
        "formaldehyde-in-the-air.estimate",
        "about {near:0.0#} ppm over the open vessel and {shift:0.0##} ppm as the mean of the shift, up to three times that; "
        + "{limits} allows {short:0.###} and {mean:0.###} ppm");
    private static readonly Phrase Cover = new("formaldehyde-in-the-air.estimate.remedy-cover", "keep the vessel covered and open it for handling only");
    private static readonly Phrase Hood = new(
        "formaldehyde-in-the-air.estimate.remedy-hood", "work in a fume hood or at an extracted table, and cover the vessel whenever nobody works at it");
    private static readonly Phrase HoodAndRespirator = new(
        "formaldehyde-in-the-air.estimate.remedy-respirator",
        "work in a fume hood with the vessel covered, and have a safety officer choose a respirator");
    private static readonly Phrase Senseless = new(
        "air-input-absurd",
        "a room of {size:0.##} m3 with {changes:0.##} air changes an hour, an open surface of {surface:0.###} m2 and {work:0.##} h of work "
        + "cannot be worked out");
    private static readonly Phrase SenselessRemedy = new(
        "air-input-absurd.remedy", "give a room of 1 m3 or more, air changes above 0, a surface above 0 and a working time of up to 8 h");

    /// <summary>Estimates the air and chooses a control on the upper end of the estimate.</summary>
    /// <param name="source">The open surface.</param>
    /// <param name="room">The room.</param>
    /// <param name="work">How long the vessel stands open, more than zero and at most 8 hours.</param>
    /// <param name="limits">The limits that apply.</param>
    /// <returns>The estimate; no value where the room, the work or the source make no sense (<c>air-input-absurd</c>).</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Checked<AirEstimate> Of(FormaldehydeSource source, WorkRoom room, Duration work, AirLimits limits)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(limits);
        if (Absurd(source, room, work) is { } wrong) return new(null, [wrong]);

        var emission = source.EmissionMgPerMin;
        var near = NearAt(emission);
        var shift = room.ShiftMean(emission, work, Duration.FromHours(8));
        var high = new AirConcentration(near.MgPerM3 * FormaldehydeSource.Uncertainty);
        var control = Enum.GetValues<AirControl>().First(c => c == AirControl.HoodAndRespirator || Holds(c));
        ImmutableArray<Finding> findings =
        [
            .. control == AirControl.RoomAir ? Array.Empty<Finding>() : [Warned()],
            Finding.Note(
                "air-estimate-is-rough",
                Rough.With(("near", near.Ppm), ("low", near.Ppm / FormaldehydeSource.Uncertainty), ("high", high.Ppm)),
                RoughRemedy),
        ];
        return new(
            new(room.After(emission, work), near, shift, new(near.MgPerM3 / FormaldehydeSource.Uncertainty), high, control, findings),
            findings);

        AirConcentration NearAt(double mgPerMin) => new(
            room.After(mgPerMin, work).MgPerM3 + room.Near(mgPerMin, UsualAirSpeed).MgPerM3 - room.Steady(mgPerMin).MgPerM3);

        bool Holds(AirControl control)
        {
            var through = emission * FormaldehydeSource.Uncertainty * control switch
            {
                AirControl.RoomAir => 1,
                AirControl.Cover => LetThrough,
                _ => LetThrough * LetThrough,
            };
            var atVessel = (NearAt(through).MgPerM3 - room.After(through, work).MgPerM3) * work.TotalHours / 8;
            var mean = room.ShiftMean(through, work, Duration.FromHours(8)).MgPerM3 + atVessel;
            return mean <= limits.ShiftMean.MgPerM3 && NearAt(through).MgPerM3 <= limits.ShortTerm.MgPerM3;
        }

        Finding Warned() => Finding.Warning(
            "formaldehyde-in-the-air",
            TooMuch.With(
                ("near", near.Ppm), ("shift", shift.Ppm), ("limits", limits.Name), ("short", limits.ShortTerm.Ppm), ("mean", limits.ShiftMean.Ppm)),
            control switch { AirControl.Cover => Cover, AirControl.Hood => Hood, _ => HoodAndRespirator });
    }

    private static Finding? Absurd(FormaldehydeSource source, WorkRoom room, Duration work) =>
        room.Size.CubicMeters is >= 1 and <= 1e5 && room.AirChangesPerHour is > 0 and <= 200 && room.Mixing is >= 0.05 and <= 1
        && source.Surface.SquareMeters is > 0 and <= 100 && source.Strength is >= 0 and <= 500 && source.OpenShare is >= 0 and <= 1
        && work > Duration.Zero && work <= Duration.FromHours(8)
            ? null
            : Finding.Error(
                "air-input-absurd",
                Senseless.With(
                    ("size", room.Size.CubicMeters), ("changes", room.AirChangesPerHour), ("surface", source.Surface.SquareMeters),
                    ("work", work.TotalHours)),
                SenselessRemedy);
}
