using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Vessels.Air;

/// <summary>A room as a box of well-mixed air. Everything it tells is an order of magnitude for choosing controls, never evidence of compliance.</summary>
/// <remarks>The one-box model of industrial hygiene (AIHA, Mathematical Models for Estimating Occupational Exposure to Chemicals, from memory).</remarks>
/// <param name="Size">Air volume of the room.</param>
/// <param name="AirChangesPerHour">How often fresh air replaces it in an hour, more than 0.</param>
internal sealed record WorkRoom(Volume Size, double AirChangesPerHour)
{
    /// <summary>How well fresh air reaches the air that is breathed: 1 for perfect mixing, down to 0.1 (AIHA, from memory).</summary>
    public double Mixing { get; init; } = 1;

    /// <summary>Fresh air in m³/min.</summary>
    internal double FreshAir => Size.CubicMeters * AirChangesPerHour / 60;

    private double EffectiveAir => FreshAir * Mixing;

    /// <summary>The concentration that the room comes to.</summary>
    /// <param name="emissionMgPerMin">What enters the air, mg/min.</param>
    /// <returns>Concentration.</returns>
    public AirConcentration Steady(double emissionMgPerMin) => new(emissionMgPerMin / EffectiveAir);

    /// <summary>The concentration after some time of steady emission.</summary>
    /// <param name="emissionMgPerMin">What enters the air, mg/min.</param>
    /// <param name="time">Since it began.</param>
    /// <param name="before">The concentration at the beginning.</param>
    /// <returns>Concentration.</returns>
    public AirConcentration After(double emissionMgPerMin, Duration time, AirConcentration before = default)
    {
        var left = Math.Exp(-Turnovers(time));
        return new(Steady(emissionMgPerMin).MgPerM3 * (1 - left) + before.MgPerM3 * left);
    }

    /// <summary>How long until 95 % of the steady concentration is reached: three turnovers.</summary>
    public Duration TimeTo95Percent => Duration.FromMinutes(3 * Size.CubicMeters / EffectiveAir);

    /// <summary>How long the room takes to clear once nothing is emitted any more.</summary>
    /// <param name="from">The concentration at the beginning.</param>
    /// <param name="to">The concentration wanted, more than 0.</param>
    /// <returns>Zero where it is reached already.</returns>
    public Duration ClearingTime(AirConcentration from, AirConcentration to) => from.MgPerM3 <= to.MgPerM3
        ? Duration.Zero
        : Duration.FromMinutes(Size.CubicMeters / EffectiveAir * Math.Log(from.MgPerM3 / to.MgPerM3));

    /// <summary>The mean over a time of steady emission that starts in clean air.</summary>
    /// <param name="emissionMgPerMin">What enters the air, mg/min.</param>
    /// <param name="time">How long, more than zero.</param>
    /// <returns>Mean concentration.</returns>
    public AirConcentration MeanDuring(double emissionMgPerMin, Duration time)
    {
        var n = Turnovers(time);
        return new(Steady(emissionMgPerMin).MgPerM3 * (1 - (1 - Math.Exp(-n)) / n));
    }

    /// <summary>The mean over a shift in which the emission lasts for its first part and the room then clears, the person staying.</summary>
    /// <param name="emissionMgPerMin">What enters the air, mg/min.</param>
    /// <param name="emitting">How long it is emitted, more than zero and not above <paramref name="shift"/>.</param>
    /// <param name="shift">The shift, usually 8 h.</param>
    /// <returns>Time-weighted average concentration.</returns>
    public AirConcentration ShiftMean(double emissionMgPerMin, Duration emitting, Duration shift)
    {
        var turnover = Size.CubicMeters / EffectiveAir;
        var peak = After(emissionMgPerMin, emitting).MgPerM3;
        var during = MeanDuring(emissionMgPerMin, emitting).MgPerM3 * emitting.TotalMinutes;
        var after = peak * turnover * (1 - Math.Exp(-(shift - emitting).TotalMinutes / turnover));
        return new((during + after) / shift.TotalMinutes);
    }

    /// <summary>The concentration close to the source: the room's, and what the air moving past the source does not carry off.</summary>
    /// <param name="emissionMgPerMin">What enters the air, mg/min.</param>
    /// <param name="airSpeedMPerMin">Air speed around the source: 1.2 m/min in still air, 3.6 usual, 9 brisk (AIHA, from memory).</param>
    /// <returns>Concentration at the face of whoever bends over it.</returns>
    public AirConcentration Near(double emissionMgPerMin, double airSpeedMPerMin)
    {
        const double Surface = 2.26; // m², a hemisphere of 0.6 m around the source (AIHA, from memory)
        return new(Steady(emissionMgPerMin).MgPerM3 + emissionMgPerMin / (Surface * airSpeedMPerMin / 2));
    }

    /// <summary>The upper bound after a spill of which everything evaporates and nothing is carried off.</summary>
    /// <param name="formaldehyde">Mass of formaldehyde spilt.</param>
    /// <returns>Concentration.</returns>
    public AirConcentration AfterSpill(Mass formaldehyde) => new(formaldehyde.Milligrams / Size.CubicMeters);

    /// <summary>Fresh air that holds a steady emission at a concentration.</summary>
    /// <param name="emissionMgPerMin">What enters the air, mg/min.</param>
    /// <param name="limit">The concentration wanted, more than 0.</param>
    /// <returns>Flow of fresh air, with this room's mixing.</returns>
    public VolumeFlow FreshAirFor(double emissionMgPerMin, AirConcentration limit) =>
        VolumeFlow.FromCubicMetersPerMinute(emissionMgPerMin / (limit.MgPerM3 * Mixing));

    private double Turnovers(Duration time) => time.TotalMinutes * EffectiveAir / Size.CubicMeters;
}
