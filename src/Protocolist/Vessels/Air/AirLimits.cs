using Protocolist.Fluids;

namespace Protocolist.Vessels.Air;

/// <summary>The limits that apply where the work is done; the caller brings them, for they differ from country to country.</summary>
/// <param name="Name">Whose they are.</param>
/// <param name="ShiftMean">For the mean over 8 hours.</param>
/// <param name="ShortTerm">For 15 minutes.</param>
internal sealed record AirLimits(string Name, AirConcentration ShiftMean, AirConcentration ShortTerm)
{
    /// <summary>An authority's limits for formaldehyde, from <see cref="Solute.Limits"/>. A ceiling serves where it has no limit for 15 minutes.</summary>
    /// <param name="authority">The authority as <see cref="ExposureLimit.Authority"/> has it.</param>
    /// <returns>The limits; <c>null</c> where the authority has none of both kinds.</returns>
    public static AirLimits? Of(string authority)
    {
        var own = Solute.Formaldehyde.Limits.Where(l => l.Authority == authority).ToList();
        var day = own.Find(l => l.Kind == ExposureKind.WorkingDay);
        var brief = own.Find(l => l.Kind == ExposureKind.FifteenMinutes) ?? own.Find(l => l.Kind == ExposureKind.Ceiling);
        return day is null || brief is null ? null : new(authority, AirConcentration.FromPpm(day.Ppm), AirConcentration.FromPpm(brief.Ppm));
    }
}
