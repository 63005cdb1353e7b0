using Protocolist.Findings;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Tests.Specimens;

/// <summary>Everything that is said of bodies, read once.</summary>
public class BodyTextTests
{
    private static readonly (string What, Specimen Specimen)[] Bodies =
    [
        ("frog by mass", Of("frog") with { Mass = Mass.FromGrams(32) }),
        ("frog by length and thickness", Of("frog") with { Length = Length.FromMillimeters(62), Thickness = Length.FromMillimeters(19) }),
        ("frog, g written as kg", Of("frog") with { Mass = Mass.FromKilograms(32), Length = Length.FromMillimeters(62) }),
        ("frog, decimal point of the mass", Of("frog") with { Mass = Mass.FromGrams(3.2), Length = Length.FromMillimeters(62) }),
        ("frog, cm written as mm", Of("frog") with { Mass = Mass.FromGrams(32), Length = Length.FromMillimeters(6.2) }),
        ("frog, nothing explains it", Of("frog") with { Mass = Mass.FromGrams(32 * 220), Length = Length.FromMillimeters(62) }),
        ("frog by disc width", Of("frog") with { DiscWidth = Length.FromMillimeters(62), Mass = Mass.FromGrams(32) }),
        ("frog by volume, litres for millilitres", Of("frog") with { Mass = Mass.FromGrams(32), DisplacementVolume = Volume.FromLiters(32) }),
        ("frog by volume", Of("frog") with { DisplacementVolume = Volume.FromMilliliters(31) }),
        ("frog of two lengths",
            Of("frog") with { Mass = Mass.FromGrams(32), Length = Length.FromMillimeters(62), SnoutVentLength = Length.FromMillimeters(71) }),
        ("trout by standard length", Of("bony-fish") with { StandardLength = Length.FromMillimeters(251) }),
        ("trout of a known species", Of("bony-fish") with { ScientificName = "Salmo trutta", Length = Length.FromMillimeters(251) }),
        ("trout weighed in pounds",
            Of("bony-fish") with { ScientificName = "Salmo trutta", Length = Length.FromMillimeters(420), Mass = Mass.FromKilograms(1.9) }),
        ("eel by girth", Of("eel") with { Mass = Mass.FromGrams(230), Length = Length.FromMillimeters(500), Girth = Length.FromMillimeters(21) }),
        ("otter",
            Of("carnivore") with { Mass = Mass.FromKilograms(8.2), HeadBodyLength = Length.FromMillimeters(680), TotalLength = Length.FromMillimeters(1100) }),
        ("otter, thickness of half",
            Of("carnivore") with { Mass = Mass.FromKilograms(8.2), Length = Length.FromMillimeters(680), Thickness = Length.FromMillimeters(60) }),
        ("fox by girth", Of("carnivore") with { Mass = Mass.FromKilograms(6), Girth = Length.FromMillimeters(1200) }),
        ("bat", Of("bat") with { Mass = Mass.FromGrams(9), Length = Length.FromMillimeters(46) }),
        ("seal, 60 kg", Of("mammal") with { Mass = Mass.FromKilograms(60), Length = Length.FromMillimeters(1150) }),
        ("mammal by length in inches", Of("mammal") with { Mass = Mass.FromKilograms(8), Length = Length.FromMillimeters(270) }),
        ("snake, 95 cm", Of("snake") with { Mass = Mass.FromGrams(310), TotalLength = Length.FromMillimeters(950) }),
        ("turtle", Of("turtle") with { Mass = Mass.FromKilograms(2.1), CarapaceLength = Length.FromMillimeters(240) }),
        ("gull", Of("bird") with { Mass = Mass.FromKilograms(1.02) }),
        ("spiders, a lot too heavy", Of("arachnid") with { Count = 12, Mass = Mass.FromGrams(0.4), LotMass = Mass.FromGrams(9) }),
        ("spiders, a lot", Of("arachnid") with { Count = 12, LotMass = Mass.FromGrams(3) }),
        ("crab by carapace", Of("crab") with { CarapaceLength = Length.FromMillimeters(80) }),
        ("jellyfish by disc", Of("jellyfish") with { DiscWidth = Length.FromMillimeters(200), Mass = Mass.FromGrams(400) }),
        ("squid by mantle", Of("squid") with { MantleLength = Length.FromMillimeters(210) }),
        ("squid of another length", Of("squid") with { Mass = Mass.FromGrams(300), TotalLength = Length.FromMillimeters(400) }),
        ("mammal by nothing but its tail", Of("mammal") with { StandardLength = Length.FromMillimeters(300) }),
        ("nothing but a girth", Of("mammal") with { Girth = Length.FromMillimeters(300) }),
        ("no animal so large", Of("mammal") with { Mass = Mass.FromTonnes(400) }),
        ("less than nothing", Of("mammal") with { Mass = Mass.FromGrams(-3), Length = Length.FromMillimeters(0) }),
        ("thicker than wide", Of("frog") with { Mass = Mass.FromGrams(32), Thickness = Length.FromMillimeters(30), Width = Length.FromMillimeters(25) }),
        ("girth inside its width",
            Of("frog") with { Mass = Mass.FromGrams(32), Girth = Length.FromMillimeters(30), Width = Length.FromMillimeters(25),
                Height = Length.FromMillimeters(20) }),
        ("longer than it is in all",
            Of("lizard") with { Mass = Mass.FromGrams(12), SnoutVentLength = Length.FromMillimeters(90), TotalLength = Length.FromMillimeters(60) }),
        ("a lot lighter than one", Of("frog") with { Count = 3, Mass = Mass.FromGrams(32), LotMass = Mass.FromGrams(20) }),
        ("no id, none there", new() { Id = "", Group = "frog", Count = 0, Mass = Mass.FromGrams(32) }),
        ("dead after it was found",
            Of("frog") with { Mass = Mass.FromGrams(32), FoundOn = new(2027, 3, 1), DiedAt = NodaTime.Instant.FromUtc(2027, 3, 5, 8, 0) }),
        ("no group", new() { Id = "x", Mass = Mass.FromGrams(32) }),
        ("no such group", Of("frogg") with { Mass = Mass.FromGrams(32) }),
        ("another taxon", Of("frog") with { HigherTaxon = "Aves", Mass = Mass.FromGrams(32) }),
        ("two taxa", Of("frog") with { HigherTaxon = "Aves; Anura", Mass = Mass.FromGrams(32) }),
        ("no such taxon", Of("frog") with { HigherTaxon = "Anurra", Mass = Mass.FromGrams(32) }),
        ("a taxon far from any", new() { Id = "x", HigherTaxon = "Zzyzxia", Mass = Mass.FromGrams(32) }),
    ];

    private static readonly Dictionary<string, SiteVolume> Wrong = new(StringComparer.Ordinal) { ["brainn"] = new(2, 1), ["other"] = new(1, 2) };

    private static Specimen Of(string group) => new() { Id = "x", Group = group };

    [Fact]
    public void Bodies_read_as_they_were_kept() =>
        KeptText.Holds("Specimens/kept/bodies.txt", KeptText.EachOnce(Bodies.Select(b => (b.What, Told(b.Specimen)))));

    [Fact]
    public void Groups_read_as_they_were_kept() => KeptText.Holds("Specimens/kept/groups.txt", string.Join("\n\n", Kinds.Bundled.Groups.Select(g => string.Join('\n',
    [
        $"{g.Id}: {g.Name}",
        .. g.LengthMass.Except(g.Parent?.LengthMass ?? []).Select(r => Invariant($"  {r.Length}: {r.A:g4}·L^{r.B:0.###} g, within {r.Within90:0.##} ({r.Accept:0.##}); {r.Source}")),
        .. (g.Regions == g.Parent?.Regions ? [] : g.Regions).Select(r => $"  {r.Id}: {r.Name}{Beside("; needle: ", $"{r.InjectAt}")}{Beside("; knife: ", $"{r.Cut?.Where}")}"),
        .. g.Cautions.Except(g.Parent?.Cautions ?? []).Select(c => $"  {c.Id}: {c.Text}"),
    ]))));

    private static string Beside(string word, string text) => text.Length == 0 ? "" : word + text;

    private static IEnumerable<string> Told(Specimen specimen)
    {
        var measured = BodyMeasure.Of(specimen);
        foreach (var line in Lines("", measured.Findings)) yield return line;
        if (measured.Value is not { } body) yield break;
        yield return Invariant($"  mass {body.Mass.Nominal.Grams:0.###} g: {body.Mass.How}");
        yield return Invariant($"  volume {body.Volume.Nominal.Milliliters:0.###} mL: {body.Volume.How}");
        yield return Invariant($"  length {body.Length.Nominal.Millimeters:0.##} mm: {body.Length.How}");
        yield return Invariant($"  total {body.TotalLength.Nominal.Millimeters:0.##} mm: {body.TotalLength.How}");
        yield return Invariant($"  half {body.HalfThickness.Nominal.Millimeters:0.###} mm: {body.HalfThickness.How}; height: {body.Height.How}");
        yield return $"  regions: {string.Join("; ", body.Regions.Select(r => $"{r.Region.Name}, {r.Mass.How}, {r.HalfThickness.How}"))}";
        var injections = InjectionPlan.For(body);
        var cuts = CutPlan.For(body, cover: true);
        foreach (var line in Lines("inject", injections.Findings)) yield return line;
        foreach (var line in Lines("inject much", InjectionPlan.For(body, new(400)).Findings)) yield return line;
        foreach (var line in Lines("inject wrongly", InjectionPlan.For(body, new(-1, Wrong)).Findings)) yield return line;
        foreach (var line in Lines("cut", cuts.Findings)) yield return line;
        foreach (var line in Lines("cut finely", CutPlan.For(body, 1, true).Findings)) yield return line;
        foreach (var line in Lines("cut wrongly", CutPlan.For(body, 0).Findings)) yield return line;
        (string What, Checked<BodyFixation> Fixation)[] fixations =
        [
            ("whole", BodyFixation.Of(body)), ("worked", BodyFixation.Of(body, injections.Value, cuts.Value)),
            ("cold", BodyFixation.Of(body, null, null, Fixative.Ethanol, -2)),
            ("warm", BodyFixation.Of(body, null, null, Fixative.Ethanol, 41.5)),
        ];
        foreach (var (what, fixation) in fixations)
        {
            foreach (var line in Lines($"fix {what}", fixation.Findings)) yield return line;
            if (fixation.Value is not { } fixedBody) continue;
            yield return $"  fix {what}: {string.Join("; ", fixedBody.Regions.Select(r => $"{r.Region.Name} {r.By}"))}";
            yield return Invariant($"  fix {what}: {fixedBody.PlannedHours:0.#} h");
            foreach (var t in fixedBody.Thumbs) yield return Invariant($"  {t.Id}, {t.Says}: {t.Hours:0.#} h, {t.OverPromises}");
        }

        foreach (var hours in (double[])[1, 100, 336])
        {
            foreach (var line in Lines(Invariant($"safe in {hours} h"), SafeguardPlan.For(body, hours).Findings)) yield return line;
        }
    }

    private static IEnumerable<string> Lines(string what, IEnumerable<Finding> findings) =>
        findings.Select(f => $"  {what}{(what.Length > 0 ? ": " : "")}{f}{(f.Subject.Length > 0 ? $" [{f.Subject}]" : "")}");
}
