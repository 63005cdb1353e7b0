using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Protocols;

namespace Protocolist.Planning.Revising;

/// <summary>Back to a weaker alcohol, and up again in smaller steps: for a body that shrinks.</summary>
internal static class WeakerStep
{
    private static readonly Phrase OnceMore = new("remedy.weaker-bath", "Once more: {fluid}");
    private static readonly Phrase Climb = new("remedy.weaker-bath.how", "Climb in smaller steps; look for wrinkles before each.");

    public static void Apply(StepsInWork work, DraftStep host, Instant seen, bool soaks, Message because)
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
            work.Insert(host.Id, Remedy.WeakerStep.Word, id => host with
            {
                Stage = RemedyStep.Stage(id, StageKind.Bath, host),
                Title = OnceMore.With(("fluid", fluid.Name)),
                How = Climb,
                Fluid = fluid,
                Changes = 0,
                Progress = null,
                EndNotBefore = null,
                Used = null,
                Because = [because],
            });
        }
    }
}
