using System.Collections.Immutable;
using Protocolist.Fluids.Safety;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning.Provisioning;

/// <summary>Something counted that a step needs: what people call it, how often it is used, and the words by which a bench lists it.</summary>
/// <param name="Id">Its name in the plan, kebab-case.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Uses">Times that a piece of it is used.</param>
/// <param name="Words">A stock item whose text holds one of them serves.</param>
internal sealed record ThingNeed(string Id, string Name, long Uses, ImmutableArray<string> Words)
{
    /// <summary>Sizes that are wanted, such as <c>10 mL</c> and <c>18 G</c>; an item that bears one of them is preferred.</summary>
    public ImmutableArray<string> Sizes { get; init; } = [];

    /// <summary>Whether it is thrown away as something that touched fixative, or as a sharp.</summary>
    public WasteClass? Waste { get; init; }
}

/// <summary>What a step needs beside fluids and vessels. All numbers are common practice, from memory: no handbook counts gloves.</summary>
internal static class ThingNeeds
{
    public static IEnumerable<ThingNeed> Of(DraftStep step, int animals)
    {
        var (solids, sharps) = (WasteClass.ContaminatedSolids, WasteClass.Sharps);
        var handlings = Handlings(step);
        var isHazardous = step.Fluid is { HasFormaldehyde: true } or { IsAlcohol: true };
        var touchesBody = step.Kind is StageKind.Sample or StageKind.Slit or StageKind.Inject or StageKind.Pose;
        if (isHazardous || touchesBody) yield return new("gloves", "gloves", 2 * handlings, ["glove"]) { Waste = solids };
        if (isHazardous)
        {
            yield return new("goggles", "goggles", handlings, ["goggle", "face shield"]);
            yield return new("apron", "apron", handlings, ["apron", "coat"]);
        }

        switch (step.Kind)
        {
            case StageKind.Inject:
                var tools = step.Sites.Select(s => s.Tool).ToList();
                foreach (var size in BySize(tools, "mL")) yield return new(Slug.Of($"syringe {size.Key}"), $"syringe {size.Key}".TrimEnd(), animals, ["syringe"]) { Sizes = size.Key.Length > 0 ? [size.Key] : [], Waste = sharps };

                // A fresh needle for each region: they blunt on skin and clog with clots.
                foreach (var size in BySize(tools, "G")) yield return new(Slug.Of($"needle {size.Key}"), $"needle {size.Key}".TrimEnd(), Math.Max(1, size.Count()) * (long)animals, ["needle"]) { Sizes = size.Key.Length > 0 ? [size.Key] : [], Waste = sharps };
                break;
            case StageKind.Slit:
                yield return new("scalpel-blade", "scalpel blade", animals, ["blade", "scalpel"]) { Waste = sharps };
                yield return new("forceps", "forceps", 1, ["forceps", "tweezers"]);
                break;
            case StageKind.Sample:
                yield return new("forceps", "forceps", 1, ["forceps", "tweezers"]);
                yield return new("sample-tube", "sample tube", animals, ["sample tube", "cryo", "vial"]);
                break;
            case StageKind.Label:
                yield return new("label", "label, inside and outside", 2, ["label"]);
                break;
            case StageKind.Mount when step.Work is MountWork { IsGiven: true, On: var on }:
                yield return new(Slug.Of(on), on, 1, [on]);
                break;
            case StageKind.Seal when step.Work is SealWork { Closure: { Length: > 0 } closure }:
                yield return new(Slug.Of(closure), closure, 1, [closure, .. closure.Split([' ', '-']).Where(w => w is "silicone" or "tape" or "lid" or "sealant" or "gasket")]);
                break;
        }
    }

    /// <summary>How often somebody has hands in it: at the start, at each change of fluid, at each look by the shortest plan.</summary>
    private static long Handlings(DraftStep step)
    {
        var looks = step.Watch is { } watch && watch.Every > NodaTime.Duration.Zero ? (long)Math.Min(1000, Math.Floor(step.Least / watch.Every)) : 0;
        return 1 + step.Changes + looks;
    }

    /// <summary>Tools by their size, as <c>10 mL</c> in <c>10 mL syringe, 18 G needle of 50 mm</c>; one group without a size where nothing is said.</summary>
    private static IEnumerable<IGrouping<string, string>> BySize(IEnumerable<string> tools, string unit) => tools.DefaultIfEmpty("").GroupBy(t => SizeOf(t, unit), StringComparer.Ordinal);

    private static string SizeOf(string tool, string unit)
    {
        var words = tool.Split([' ', ',']);
        var at = Array.IndexOf(words, unit);
        return at > 0 && words[at - 1].Length > 0 && words[at - 1].All(char.IsAsciiDigit) ? $"{words[at - 1]} {unit}" : "";
    }
}

/// <summary>A name as an id: letters and digits, the rest hyphens.</summary>
internal static class Slug
{
    public static string Of(string name) =>
        string.Join('-', new string([.. name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) || c == '.' ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
