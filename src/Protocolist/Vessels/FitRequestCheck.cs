using System.Collections.Immutable;
using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Vessels;

/// <summary>Whether a request for a vessel makes sense at all.</summary>
internal static class FitRequestCheck
{
    public static ImmutableArray<Finding> Of(FitRequest request)
    {
        var found = ImmutableArray.CreateBuilder<Finding>();
        var specimen = request.Specimen;
        var (sides, room) = specimen switch
        {
            PosedSpecimen.Boxed b => (new[] { b.Length, b.Width, b.Height }, b.Length.Meters * b.Width.Meters * b.Height.Meters),
            PosedSpecimen.Coiled c => ([c.BodyLength, c.BodyDiameter], Math.PI / 4 * c.BodyDiameter.Meters * c.BodyDiameter.Meters * c.BodyLength.Meters),
            PosedSpecimen.Lot l => ([l.Length, l.Width, l.Height], l.Count * l.Length.Meters * l.Width.Meters * l.Height.Meters),
            _ => ([], 0),
        };
        if (!(specimen.Volume.CubicMeters > 0) || sides.Any(side => !(side.Meters > 0)) || specimen is PosedSpecimen.Lot { Count: <= 0 })
        {
            found.Add(Finding.Error(
                "specimen-without-size",
                Invariant($"{specimen.Name} has a volume of {specimen.Volume.Milliliters:0.###} mL and sides of {string.Join(", ", sides.Select(s => Invariant($"{s.Millimeters:0.##}")))} mm"),
                "measure the body as it is posed"));
        }
        else if (specimen.Volume.CubicMeters > room * 1.05)
        {
            // 5 %: what a careful ruler and a displacement reading may differ by.
            found.Add(Finding.Error(
                "specimen-larger-than-its-box",
                Invariant($"{specimen.Name} of {specimen.Volume.Milliliters:0.#} mL cannot lie within {room * 1e6:0.#} mL of outline"),
                "check the units and the decimal point of volume, mass and lengths"));
        }

        if (request.Coldest > request.FilledAt || request.FilledAt > request.Hottest)
        {
            found.Add(Finding.Error(
                "temperatures-contradict",
                Invariant($"coldest {request.Coldest.DegreesCelsius:0.#}, at filling {request.FilledAt.DegreesCelsius:0.#} and hottest {request.Hottest.DegreesCelsius:0.#} degC do not rise"),
                "give the coldest and the hottest day of the place where the vessel stands, with the filling temperature between"));
        }

        if (request.LeastRatio is not (>= 0 and <= 1000) || request.HeadspaceShare is < 0 or >= 1)
        {
            found.Add(Finding.Error(
                "filling-absurd",
                Invariant($"a fluid to specimen ratio of {request.LeastRatio:0.##} and a headspace of {request.HeadspaceShare ?? 0:0.##} cannot be filled"),
                "10 to 20 is usual for fixing and 3 to 10 for keeping; headspace 0.05 to 0.10"));
        }

        return found.ToImmutable();
    }
}
