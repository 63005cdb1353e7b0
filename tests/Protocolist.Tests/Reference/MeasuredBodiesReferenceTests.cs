using Protocolist.Findings;
using Protocolist.Specimens;
using Protocolist.Specimens.Measuring;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>
/// What is reckoned and what is found fault with, against measured bodies. Where rows were fitted to a table the fit is done again on one half, and the other
/// half is judged by it; the split was fixed before any fitting: in each kind by rising mass (fish) or by name (mammals), the first, third, fifth... are fitted.
/// </summary>
public class MeasuredBodiesReferenceTests(ITestOutputHelper output)
{
    private static readonly string[] Sound = ["mass-against-length"];

    // Brofeldt 1917: half of the greatest width over √(V/TL), V at 1.05 g/mL.
    [Fact]
    public void Half_thickness_of_fish_that_were_not_fitted()
    {
        var fish = MeasuredBodies.Of("fish-brofeldt-1917.csv")
            .Select(c => (Species: c[0], MassG: MeasuredBodies.Number(c[1]), TotalMm: MeasuredBodies.Number(c[4]), HalfMm: MeasuredBodies.Number(c[6]) / 2))
            .GroupBy(f => f.Species).SelectMany(g => g.OrderBy(f => f.MassG).Select((f, i) => (f.MassG, f.TotalMm, f.HalfMm, IsFitted: i % 2 == 0))).ToArray();
        double Root(double massG, double totalMm) => Math.Sqrt(massG / 1.05 * 1000 / totalMm);
        var c = Math.Exp(fish.Where(f => f.IsFitted).Average(f => Math.Log(f.HalfMm / Root(f.MassG, f.TotalMm))));
        var judged = fish.Where(f => !f.IsFitted).Select(f => c * Root(f.MassG, f.TotalMm) / f.HalfMm).ToArray();
        var band = Kinds.Bundled.Find("bony-fish")!.Shape.Measured!.Value;
        var inside = judged.Count(r => r <= band && r >= 1 / band) / (double)judged.Length;
        output.WriteLine($"fish: c {c:0.000}, mean ratio {judged.Average():0.000}, inside the band {inside:0.000} of {judged.Length}");

        Assert.Equal(77, judged.Length);
        Assert.InRange(judged.Average(), 0.95, 1.05);
        Assert.True(inside >= 0.9);

        // What ships is the fit to all.
        var shipped = fish.Select(f => Half("bony-fish", f.MassG, f.TotalMm) / Length.FromMillimeters(f.HalfMm)).ToArray();
        Assert.InRange(shipped.Average(), 0.95, 1.05);
        Assert.Equal(0.744, Math.Exp(fish.Average(f => Math.Log(f.HalfMm / Root(f.MassG, f.TotalMm)))), 0.0005);
    }

    // The band told of each of them holds nine tenths of the true half-widths: by mass and length, and by mass alone.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Band_of_the_half_thickness_holds_nine_tenths_of_the_fish(bool withLength)
    {
        var inside = MeasuredBodies.Of("fish-brofeldt-1917.csv").Select(c =>
        {
            var fish = new Specimen { Id = "f", Group = "bony-fish", Mass = Mass.FromGrams(MeasuredBodies.Number(c[1])) };
            var half = BodyMeasure.Of(withLength ? fish with { TotalLength = Length.FromMillimeters(MeasuredBodies.Number(c[4])) } : fish).Value!.HalfThickness;
            var width = MeasuredBodies.Number(c[6]);
            return half.Low.Millimeters <= width / 2 && width / 2 <= half.High.Millimeters;
        }).Average(isInside => isInside ? 1.0 : 0);
        output.WriteLine($"with length {withLength}: {inside:0.000}");

        Assert.True(inside >= 0.9);
    }

    // PanTHERIA: relations with the exponents and the groups that ship, their constants and accept factors fitted to one half by the same procedure.
    [Fact]
    public void Mammals_that_were_not_fitted_pass()
    {
        var rows = MeasuredBodies.Mammals().OrderBy(r => r.Species, StringComparer.Ordinal)
            .Select((r, i) => (Row: r, Group: MeasuredBodies.GroupOf(r, "mammal"), IsFitted: i % 2 == 0)).ToArray();
        var fits = new Dictionary<string, (double LogA, double LogAccept)>(StringComparer.Ordinal);
        foreach (var group in Kinds.Bundled.Groups.Where(g => g.IsA("mammal") && g.RelationOf(g.Length) is not null))
        {
            var own = rows.Where(r => r.IsFitted && r.Group.IsA(group.Id)).Select(r => LogRatio(r.Row, group)).Order().ToArray();

            // Of fewer than five species nobody knows how far they spread: the group above stands for them.
            if (own.Length < 5) continue;
            var median = own[own.Length / 2];
            var off = own.Select(x => Math.Abs(x - median)).Where(x => x <= Math.Log(4)).Order().ToArray();
            fits[group.Id] = (median, Math.Max(Math.Log(2.4), off[Math.Min((int)(0.99 * off.Length), off.Length - 1)]));
        }

        var (warned, stopped, judged) = (0, 0, 0);
        foreach (var (row, group, _) in rows.Where(r => !r.IsFitted))
        {
            var by = group;
            while (!fits.ContainsKey(by.Id)) by = by.Parent!;
            var (logA, logAccept) = fits[by.Id];
            var off = Math.Abs(LogRatio(row, by) - logA);
            judged++;
            if (off > logAccept) warned++;
            if (off > logAccept + Math.Log(3)) stopped++;
        }

        output.WriteLine($"mammals: {judged} judged, {100.0 * warned / judged:0.0} % warned, {stopped} told not to start");
        Assert.Equal(882, judged);
        Assert.True(warned <= 0.04 * judged);
        Assert.Equal(0, stopped);

        static double LogRatio(MeasuredBodies.Row row, TaxonGroup group) => Math.Log(row.MassG / group.RelationOf(group.Length)!.MassG(row.LengthMm));
    }

    // The tables that rows were fitted to, whole, by the rows that ship: they must not get worse. Then what nothing was fitted to.
    [Theory]
    [InlineData("mammals", 1765, 0.03, 0)]
    [InlineData("amphibians", 542, 0.08, 1)]
    [InlineData("inch-lake", 516, 0.05, 1)]
    [InlineData("sparrows", 136, 0, 0)]
    public void Sound_animals_pass_in_silence(string table, int count, double mostWarned, double mostStopped)
    {
        var found = Table(table).Select(t => BodyMeasure.Of(t).Findings.Where(f => f.Severity != Severity.Note).ToArray()).ToArray();
        var (warned, stopped) = (found.Count(f => f.Length > 0), found.Count(f => f.Any(x => x.Severity == Severity.Error)));
        output.WriteLine($"{table}: {found.Length} animals, {warned} ({100.0 * warned / found.Length:0.0} %) warned, of them {stopped} told not to start");

        Assert.Equal(count, found.Length);
        Assert.All(found.SelectMany(f => f), f => Assert.Contains(f.Id, Sound));
        Assert.True(warned <= mostWarned * found.Length);
        Assert.True(stopped <= mostStopped);
    }

    // A decimal point or a unit of the mass, put into every sound animal of every table.
    [Fact]
    public void Slips_of_the_mass_are_caught()
    {
        var sound = new[] { "mammals", "inch-lake", "sparrows" }.SelectMany(Table).Where(s => IsSilent(s, 1))
            .GroupBy(s => RelationOf(s).Accept <= 3.2).ToDictionary(g => g.Key, g => g.ToArray());
        foreach (var factor in (double[])[10, 0.1])
        {
            var (close, wide) = (Share(sound[true], factor), Share(sound[false], factor));
            output.WriteLine($"mass x {factor}: {100 * close:0.0} % of {sound[true].Length} caught where the accept factor is 3.2 or less, {100 * wide:0.0} % of {sound[false].Length} elsewhere");
            Assert.True(close >= 0.95);
        }

        Assert.Equal(1, Share([.. sound[true], .. sound[false]], 1000));
        Assert.Equal(1, Share([.. sound[true], .. sound[false]], 0.001));

        static double Share(Specimen[] specimens, double factor) => specimens.Count(s => !IsSilent(s, factor)) / (double)specimens.Length;
    }

    public static TheoryData<string> Cases => [.. MeasuredBodies.Of("bodies-checks.csv").Select(c => c[0])];

    // Ninety animals that were weighed and measured, and twenty slips made from true values; each names its source in the file.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Case_is_judged_as_a_person_would(string number)
    {
        var cells = MeasuredBodies.Of("bodies-checks.csv").Single(c => c[0] == number);
        var specimen = SpecimenReader.Read(new("case.yaml",
            $"format: 1\nspecimen: case\ngroup: {cells[2]}\nscientific-name: \"{cells[1]}\"\n{cells[3]}: {cells[4]} mm\nmass: {cells[5]} g\ncount: {cells[6]}\n")).Value!;
        var found = BodyMeasure.Of(specimen).Findings.Where(f => f.Severity != Severity.Note).ToArray();
        if (cells[7].Length == 0)
        {
            Assert.Empty(found);
            return;
        }

        var finding = Assert.Single(found);
        Assert.Equal(cells[7], finding.Severity.ToString(), ignoreCase: true);
        Assert.Contains(cells[8], finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    // In doubt, no verdict: colonies, sponges, spawn, sea squirts and chains have no relation, whatever is written of them.
    [Theory]
    [InlineData("hydroid")]
    [InlineData("hard-coral")]
    [InlineData("octocoral")]
    [InlineData("sponge")]
    [InlineData("calcareous-sponge")]
    [InlineData("bryozoan")]
    [InlineData("ascidian")]
    [InlineData("salp")]
    [InlineData("hydromedusa")]
    [InlineData("amphibian-egg")]
    [InlineData("crinoid")]
    public void What_has_no_relation_is_never_judged(string group)
    {
        foreach (var grams in (double[])[0.01, 1, 100, 10_000])
        {
            var specimen = new Specimen
            {
                Id = "c",
                Group = group,
                Mass = Mass.FromGrams(grams),
                Length = Length.FromMillimeters(90),
                Thickness = Length.FromMillimeters(20),
            };
            Assert.Empty(BodyMeasure.Of(specimen).Findings);
        }
    }

    private static Specimen[] Table(string table) => table switch
    {
        "mammals" => [.. MeasuredBodies.Mammals().Select(r => MeasuredBodies.Specimen(r, MeasuredBodies.GroupOf(r, "mammal")))],

        // The size is the largest known: of frogs eight tenths of it stand for a mean animal. Of newts and salamanders it is the total length.
        "amphibians" => [.. MeasuredBodies.Amphibians().Select(r => (Row: r, Group: MeasuredBodies.GroupOf(r, "amphibian")))
            .Select(r => r.Row.Order == "Anura" ? MeasuredBodies.Specimen(r.Row with { LengthMm = r.Row.LengthMm * 0.8 }, r.Group)
                : MeasuredBodies.Specimen(r.Row, r.Group) with { Length = null, TotalLength = Length.FromMillimeters(r.Row.LengthMm) })],
        "inch-lake" => [.. MeasuredBodies.InchLake().Select(r => MeasuredBodies.Specimen(r, MeasuredBodies.GroupOf(r, "bony-fish")))],
        _ => [.. MeasuredBodies.Sparrows().Select(r => MeasuredBodies.Specimen(r, MeasuredBodies.GroupOf(r, "bird")))],
    };

    private static LengthMassRelation RelationOf(Specimen s)
    {
        var group = Kinds.Bundled.Find(s.Group!)!;
        return BodyLength.Customary(s, group)!;
    }

    private static bool IsSilent(Specimen s, double factor) => BodyMeasure.Of(s with { Mass = s.Mass * factor }).Findings.All(f => f.Severity == Severity.Note);

    private static Length Half(string group, double massG, double totalMm) => BodyMeasure.Of(new Specimen
    {
        Id = "f",
        Group = group,
        Mass = Mass.FromGrams(massG),
        TotalLength = Length.FromMillimeters(totalMm),
    }).Value!.HalfThickness.Nominal;
}
