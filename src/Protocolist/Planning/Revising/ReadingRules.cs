using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Protocols;
using Protocolist.Quantities;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Revising;

/// <summary>Readings, and what they change.</summary>
internal static class ReadingRules
{
    /// <summary>
    /// By how much a bath may read weaker than it should, in points of volume: a simple hydrometer is good to about two (common practice); the project's
    /// choice.
    /// </summary>
    private const double WeakBy = 3;

    /// <summary>Below this formalin is changed: buffered formalin is near 7, and about 6 bone begins to suffer (common practice).</summary>
    private const double AcidBelow = 6;

    /// <summary>A level is read to half a centimetre; the project's choice.</summary>
    private const double LevelM = 0.005;

    private static readonly Phrase Acid = new("because.acid", "pH {ph:0.#} was read {at:minute}, below {least:0}");
    private static readonly Phrase WeakRead = new("because.weak", "{read:0.#} %vol was read {at:minute} where about {expected:0} %vol should stand");
    private static readonly Phrase Cold = new("because.cold", "the fluid read {temperature:0.# °C} {at:minute}, and fixes more slowly in the cold");
    private static readonly Phrase LowLevel = new("because.low-level", "the level read {level:0 mm} {at:minute} where {wanted:0 mm} should stand");
    private static readonly Phrase TopUp = new("remedy.top-up", "Top the fluid up");
    private static readonly Phrase BringBack = new("remedy.top-up.how", "Bring the fluid back to its level with {fluid}, and find out where it went.");

    public static void Apply(StepsInWork work, LogEntry entry)
    {
        if (entry.Readings.IsEmpty || entry.Moment is not { } at) return;
        if (Strength(entry, work) is { } read) Weak(work, entry, at, read);
        if (Of(entry, ReadingKind.Ph) is { } ph && work.Find(entry.Step) is { Fluid.HasFormaldehyde: true } fixing && ph < AcidBelow)
        {
            var remedy = fixing.Watch?.Signs.FirstOrDefault(s => s.Sign == Sign.Acid).Remedy ?? Remedy.ChangeFluid;
            SignRules.Remedy(work, fixing, remedy, at, Acid.With(("ph", ph), Argument.At("at", at, work.Zone), ("least", AcidBelow)), entry);
        }

        if (Of(entry, ReadingKind.Temperature) is { } kelvins) Slow(work, entry, at, kelvins - 273.15);
        if (Of(entry, ReadingKind.Level) is { } level) Low(work, entry, at, level);
    }

    /// <summary>The strength in % by volume, read as such or from the density; null where neither was read.</summary>
    private static double? Strength(LogEntry entry, StepsInWork work)
    {
        if (work.Find(entry.Step)?.Fluid is not { IsAlcohol: true } fluid) return null;
        var reading = entry.Readings.FirstOrDefault(r => r.What == ReadingKind.Strength);
        if (reading?.Value.Dimension == Dimension.OfShareByVolume) return 100 * reading.Value.Middle;
        if (reading is not null)
            return fluid.Substance.Of(100 * reading.Value.Middle, StrengthBasis.Mass).AlcoholVolumePercent;
        if (Of(entry, ReadingKind.Density) is not { } density) return null;
        var at = Of(entry, ReadingKind.Temperature) is { } kelvins ? Temperature.FromKelvins(kelvins) : work.Setting.Bench.Temperatures.Room;
        return AlcoholStrength.FromDensity(fluid.Substance, Density.FromKilogramsPerCubicMeter(density), at).Value?.VolumePercent;
    }

    private static void Weak(StepsInWork work, LogEntry entry, Instant at, double read)
    {
        var host = work.Find(entry.Step)!;
        var expected = Expected(work, host);
        if (read >= expected - WeakBy) return;
        var because = WeakRead.With(("read", read), Argument.At("at", at, work.Zone), ("expected", expected));
        if (!host.IsSoak)
        {
            SignRules.Remedy(work, host, Remedy.RestoreStrength, at, because, entry);
        }
        else if (host.Progress?.Ended is { } ended && at >= ended)
        {
            SignRules.Again(work, host, because);
        }
        else
        {
            work.Change(host.Id, s => s with { EndNotBefore = SignRules.Later(s.EndNotBefore, at + s.Least), Most = null });
            SignRules.Remedy(work, host, Remedy.ChangeFluid, at, because, entry);
        }
    }

    /// <summary>
    /// What a bath comes to when the body has given it all of its water: volumes taken as adding up, the body at the strength of the bath before.
    /// </summary>
    private static double Expected(StepsInWork work, DraftStep host)
    {
        var strength = host.Fluid!.AlcoholVolumePercent;
        if (host.Volume is not { } volume || !host.IsSoak) return strength;
        var body = work.Draft.Body;
        var water = body.LotVolume.Nominal.CubicMeters * body.Group.WaterFraction.Nominal;
        var before = work.SoakBefore(host.Id)?.Fluid?.AlcoholVolumePercent ?? 0;
        return ((strength * volume.CubicMeters) + (before * water)) / (volume.CubicMeters + water);
    }

    /// <summary>A fixative colder than the plan took it to be works more slowly; a warmer one shortens nothing, for one reading is no promise.</summary>
    private static void Slow(StepsInWork work, LogEntry entry, Instant at, double celsius)
    {
        var host = work.Find(entry.Step)!;
        if (host.Kind != StageKind.Immerse
            || work.Setting.DraftAt(celsius)?.Steps.FirstOrDefault(s => s.Id == host.Id) is not { } colder
            || colder.Least <= host.Least)
            return;
        work.Change(host.Id, s => s with { Least = colder.Least, Most = colder.Most });
        work.Explain(host.Id, Cold.With(("temperature", Temperature.FromDegreesCelsius(celsius)), Argument.At("at", at, work.Zone)));
    }

    private static void Low(StepsInWork work, LogEntry entry, Instant at, double level)
    {
        var host = work.Find(entry.Step)!;
        if (host.Vessel is not { } vessel || host.Fluid is null || vessel.LevelAfter.Meters - level <= LevelM) return;
        var missing = Volume.FromCubicMeters((vessel.LevelAfter.Meters - level) * vessel.Vessel.Shape.Footprint.SquareMeters);
        var because = LowLevel.With(("level", Length.FromMeters(level)), Argument.At("at", at, work.Zone), ("wanted", vessel.LevelAfter));
        var soaks = host.IsSoak && (host.Progress?.Ended is not { } ended || at < ended);
        work.Insert(host.Id, "top-up", id => new DraftStep(RemedyStep.Stage(id, StageKind.Task, host))
        {
            Title = TopUp,
            How = BringBack.With(("fluid", host.Fluid.Name)),
            Fluid = host.Fluid,
            Volume = missing,
            HandsOn = Duration.FromMinutes(15),
            Least = Duration.FromMinutes(15),
            Most = Duration.FromMinutes(15),
            Because = [because],
            NotBefore = at,
            During = soaks ? new(host.Id, Duration.Zero) : null,
        });
    }

    private static double? Of(LogEntry entry, ReadingKind kind) => entry.Readings.FirstOrDefault(r => r.What == kind)?.Value.Middle;
}
