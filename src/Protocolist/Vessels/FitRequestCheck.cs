using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>Whether a request for a vessel makes sense at all.</summary>
internal static class FitRequestCheck
{
    private static readonly Phrase NoSize = new("specimen-without-size", "{specimen} has a volume of {volume:0.### mL} and sides of {sides:, } mm");
    private static readonly Phrase NoSizeRemedy = new("specimen-without-size.remedy", "measure the body as it is posed");
    private static readonly Phrase NoRoom = new("specimen-larger-than-its-box", "{specimen} of {volume:0.# mL} cannot lie within {room:0.# mL} of outline");
    private static readonly Phrase NoRoomRemedy =
        new("specimen-larger-than-its-box.remedy", "check the units and the decimal point of volume, mass and lengths");
    private static readonly Phrase Temperatures = new(
        "temperatures-contradict", "coldest {coldest:0.#}, at filling {filled:0.#} and hottest {hottest:0.#} degC do not rise");
    private static readonly Phrase TemperaturesRemedy = new(
        "temperatures-contradict.remedy", "give the coldest and the hottest day of the place where the vessel stands, with the filling temperature between");
    private static readonly Phrase Absurd = new(
        "filling-absurd", "a fluid to specimen ratio of {ratio:0.##} and a headspace of {headspace:0.##} cannot be filled");
    private static readonly Phrase AbsurdRemedy = new("filling-absurd.remedy", "10 to 20 is usual for fixing and 3 to 10 for keeping; headspace 0.05 to 0.10");

    /// <summary>What a careful ruler and a displacement reading may differ by.</summary>
    private const double Slack = 1.05;

    public static bool IsSound(FitRequest request)
    {
        var body = Outline.Of(request.Specimen);
        return HasSize(request.Specimen, body) && body.Volume <= RoomOf(request.Specimen, body) * Slack && TemperaturesRise(request) && CanBeFilled(request);
    }

    public static ImmutableArray<Finding> Of(FitRequest request)
    {
        if (IsSound(request)) return [];
        var found = ImmutableArray.CreateBuilder<Finding>();
        var (specimen, body) = (request.Specimen, Outline.Of(request.Specimen));
        if (!HasSize(specimen, body))
        {
            var sides = Argument.ListOf("sides", Sides(body).Select(s => (Argument)("", Math.Round(s * 1000, 2))));
            found.Add(Finding.Error("specimen-without-size", NoSize.With(("specimen", specimen.Name), ("volume", specimen.Volume), sides), NoSizeRemedy));
        }
        else if (RoomOf(specimen, body) is var room && !(body.Volume <= room * Slack))
        {
            var facts = NoRoom.With(("specimen", specimen.Name), ("volume", specimen.Volume), ("room", Volume.FromCubicMeters(room)));
            found.Add(Finding.Error("specimen-larger-than-its-box", facts, NoRoomRemedy));
        }

        if (!TemperaturesRise(request))
        {
            found.Add(Finding.Error(
                "temperatures-contradict",
                Temperatures.With(
                    ("coldest", request.Coldest.DegreesCelsius), ("filled", request.FilledAt.DegreesCelsius), ("hottest", request.Hottest.DegreesCelsius)),
                TemperaturesRemedy));
        }

        if (!CanBeFilled(request))
        {
            var facts = Absurd.With(("ratio", request.LeastRatio), ("headspace", request.HeadspaceShare ?? 0));
            found.Add(Finding.Error("filling-absurd", facts, AbsurdRemedy));
        }

        return found.ToImmutable();
    }

    private static double[] Sides(in Outline body) => [body.Length, body.Width, body.Height];

    private static bool HasSize(PosedSpecimen specimen, in Outline body) =>
        body is { Volume: > 0, Length: > 0, Width: > 0, Height: > 0 } && specimen is not PosedSpecimen.Lot { Count: <= 0 };

    /// <summary>The outline's own room (m³).</summary>
    private static double RoomOf(PosedSpecimen specimen, in Outline body) => specimen switch
    {
        PosedSpecimen.Coiled => Math.PI / 4 * body.Length * body.Width * body.Height,
        PosedSpecimen.Lot lot => lot.Count * body.Length * body.Width * body.Height,
        _ => body.Length * body.Width * body.Height,
    };

    private static bool TemperaturesRise(FitRequest request) =>
        !(request.Coldest.DegreesCelsius > request.FilledAt.DegreesCelsius) && !(request.FilledAt.DegreesCelsius > request.Hottest.DegreesCelsius);

    private static bool CanBeFilled(FitRequest request) => request.LeastRatio is >= 0 and <= 1000 && request.HeadspaceShare is not (< 0 or >= 1);
}
