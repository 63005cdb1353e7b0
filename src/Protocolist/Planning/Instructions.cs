using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Planning;

/// <summary>What to do, sentence by sentence, with this specimen's numbers.</summary>
internal static class Instructions
{
    public static IEnumerable<string> Of(DraftStep step, Draft draft)
    {
        if (step.Stage.Text("how") is { } how) yield return how;
        foreach (var sentence in Sentences(step, draft)) yield return sentence;
        if (step.Stage.Text("note") is { } note) yield return note;
    }

    private static IEnumerable<string> Sentences(DraftStep step, Draft draft) => step.Kind switch
    {
        StageKind.Inject => Inject(step),
        StageKind.Slit => step.Cuts.Select(Cut),
        StageKind.Immerse or StageKind.Bath or StageKind.Wash or StageKind.Rinse or StageKind.Thaw => Soak(step),
        StageKind.Hold => [$"Keep it{(step.Details.TryGetValue("temperature", out var at) ? $" at {at}" : " cold")}."],
        StageKind.House => House(step),
        StageKind.Mount => Mount(step, draft),
        StageKind.Seal => Seal(step, draft),
        StageKind.Label => [.. step.Stage.Texts("fields").Select(f => $"Label: {f}."), "One label inside in the fluid, one outside; soft pencil or carbon ink on cotton-rag paper."],
        StageKind.Discard => Discard(step),
        _ => [],
    };

    private static IEnumerable<string> Inject(DraftStep step)
    {
        if (step.Volume is { } total) yield return $"{Text(total)} in all; stop at a site when the part is firm or fluid runs back.";
        foreach (var site in step.Sites)
            yield return $"{site.Region}: {site.Sites} {(site.Sites == 1 ? "site" : "sites")} of {Text(site.PerSite)}{Usual(site)}, {Text(site.Total)} in all; {site.Tool}{(site.At.Length > 0 ? $"; {site.At}" : "")}.";
    }

    /// <summary>The protocol's range where the planned volume lies outside it, which small regions do.</summary>
    private static string Usual(InjectionSite site) =>
        site.PerSite < site.PerSiteLow * 0.999 ? $" (less than the usual {Text(site.PerSiteLow)}: the region is small)" : "";

    private static string Cut(PlannedCut cut)
    {
        var parts = new List<string>();
        if (cut.Length is { } length) parts.Add($"{Text(length)} long");
        if (cut.Depth is { } depth) parts.Add($"{Text(depth)} deep");
        if (cut.Spacing is { } spacing) parts.Add($"every {Text(spacing)}");
        var count = cut.Count > 0 ? Invariant($"{cut.Count} {(cut.Count == 1 ? "cut" : "cuts")}") : "cuts";
        var side = cut.Side == "any" ? "" : $", on the {cut.Side}{(cut.Side is "left" or "right" ? " side" : "")}";
        return $"{cut.Region}: {count}{(parts.Count > 0 ? " " + string.Join(", ", parts) : "")}{side}.";
    }

    private static IEnumerable<string> Soak(DraftStep step)
    {
        var vessel = step.Vessel is { } v ? $" in {v.Vessel.Name}, {v.Arrangement}" : "";
        if (step.Fluid is { } fluid && step.Volume is { } volume)
        {
            var change = step.Changes == 0 ? "" : step.Changes == 1 ? ", changed once" : Invariant($", changed {step.Changes} times");
            var running = step.Details.GetValueOrDefault("running") == "yes" ? ", slowly running" : "";
            yield return $"{Text(volume)} of {fluid.Name}{vessel}{running}{change}.";
        }

        if (step.Vessel is { } fitted && step.Kind != StageKind.Wash)
            yield return Invariant($"Fill to {fitted.LevelBefore.Millimeters:0} mm; with the body in, the level stands at {fitted.LevelAfter.Millimeters:0} mm. Nothing of the body may stand out.");
    }

    private static IEnumerable<string> House(DraftStep step)
    {
        var fluid = step.Fluid?.Name ?? "the keeping fluid";
        if (step.Vessel is { } v)
        {
            yield return Invariant($"{v.Vessel.Name}, {v.Arrangement}: {Text(v.FluidVolume)} of {fluid}, up to {v.LevelAfter.Millimeters:0} mm of {v.Vessel.Shape.Height.Millimeters:0} mm inside height; fluid to specimen {Measurable.Text(v.Ratio, Dimension.None)} : 1.");
            foreach (var sentence in Vessels.Mounting.FillingSteps(v)) yield return sentence;
            if (v.SealedPressure is { } pressure && pressure.Kilopascals >= 1)
                yield return Invariant($"Sealed tight, the hottest day puts about {pressure.Kilopascals:0} kPa on the lid.");
        }
        else if (step.Volume is { } volume)
        {
            yield return $"At least {Text(volume)} of {fluid}.";
            yield return "Fill about half, lower the body in, press it gently so that fluid replaces the air in cavities and cuts, free the bubbles on it with a glass, plastic or steel rod, then top up to the level.";
        }
    }

    private static IEnumerable<string> Mount(DraftStep step, Draft draft)
    {
        if (step.Details.TryGetValue("on", out var on) && on != "nothing")
        {
            yield return $"It is held by: {on}.";
            yield break;
        }

        if (FinalVessel.MountFor(draft) is not { } mount) yield break;
        yield return $"{Sentence(mount.Reason)}";
        foreach (var sentence in mount.Steps) yield return sentence;
        if (!mount.Materials.IsEmpty) yield return $"Needed: {string.Join(", ", mount.Materials)}.";
    }

    private static IEnumerable<string> Seal(DraftStep step, Draft draft)
    {
        if (FinalVessel.ClosingFor(draft, step) is not { } closing)
        {
            if (step.Details.TryGetValue("closure", out var closure)) yield return $"Close with: {closure}.";
            yield break;
        }

        yield return Sentence(closing.Reason);
        foreach (var sentence in closing.Steps) yield return sentence;
        if (closing.CuresOpen > NodaTime.Duration.Zero) yield return Invariant($"Leave it to cure open for {closing.CuresOpen.TotalHours:0} h before the lid goes on for good.");
        if (closing.Port is { } port) yield return Sentence(port.Advice);
    }

    /// <summary>Where this bench puts the spent fluid, else what the protocol has in mind.</summary>
    private static IEnumerable<string> Discard(DraftStep step)
    {
        var of = step.Stage.Text("of") ?? "The spent fluid";
        if (step.PouredOff is { } lot) yield return $"{of}: {lot.WayWords}, {lot.Destination}.";
        else if (step.Details.TryGetValue("to", out var to)) yield return $"{of}: {to}.";
    }

    private static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..].TrimEnd('.') + ".";

    private static string Text(Volume volume) => Measurable.Text(volume.CubicMeters, Dimension.OfVolume);

    private static string Text(Length length) => Measurable.Text(length.Meters, Dimension.OfLength);
}
