using NodaTime;
using Protocolist.Fluids;
using Protocolist.Protocols;

namespace Protocolist.Planning.Revising;

/// <summary>Back to a weaker alcohol, and up again in smaller steps: for a body that shrinks.</summary>
internal static class WeakerStep
{
    public static void Apply(StepsInWork work, DraftStep host, Instant seen, bool soaks, string because)
    {
        var strong = host.Fluid!.AlcoholVolumePercent;
        var weak = work.SoakBefore(host.Id)?.Fluid is { IsAlcohol: true } before ? before.AlcoholVolumePercent : strong / 2;
        if (soaks)
        {
            work.Change(host.Id, s => s with { Least = Duration.Zero, Most = null, EndNotBefore = seen });
            work.Explain(host.Id, because);
        }

        // Back, halfway, and the old strength again.
        foreach (var percent in (ReadOnlySpan<double>)[weak, (weak + strong) / 2, strong])
        {
            var fluid = host.Fluid.Substance.Of(Math.Round(percent), StrengthBasis.Volume);
            work.Insert(host.Id, "weaker-step", id => host with
            {
                Stage = RemedyStep.Stage(id, StageKind.Bath, $"Once more: {fluid.Name}", "Climb in smaller steps; look for wrinkles before each.", host),
                Fluid = fluid,
                Changes = 0,
                Progress = null,
                EndNotBefore = null,
                Used = null,
                Because = because,
            });
        }
    }
}
