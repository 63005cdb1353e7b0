using System.Collections.Immutable;
using System.Text;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Tests.Planning.Revising;

/// <summary>An invented protocol that knows a remedy of every kind, a fish that it serves, and revisions of its plan.</summary>
internal static class Watched
{
    /// <summary>All is over but the soak in fixative, which began on 1 March at 11:00.</summary>
    public const string InFix = """
          - {step: dose, begun: 2027-03-01T09:00, done: 2027-03-01T09:30}
          - {step: fix, begun: 2027-03-01T11:00}

        """;

    /// <summary>The body lies in the second bath since 11 March at 10:00.</summary>
    public const string InBath = """
          - {step: dose, done: 2027-03-01T09:30}
          - {step: fix, begun: 2027-03-01T11:00, done: 2027-03-10T09:00}
          - {step: ethanol-30, begun: 2027-03-10T09:00, done: 2027-03-11T10:00}
          - {step: ethanol-50, begun: 2027-03-11T10:00}

        """;

    public static readonly Shelf Shelf = PlanFixture.Shelf(("watched-fish", "{group: bony-fish, mass: 20 g to 2 kg}", """
        choices:
          alcohol: [ethanol, isopropanol]
        stages:
          - {stage: inject, id: dose, fluid: neutral buffered formalin 10 %, dose: 80 mL/kg * specimen.mass, hands-on: 30 min, source: common practice}
          - stage: immerse
            id: fix
            fluid: neutral buffered formalin 10 %
            ratio: 10
            last: penetration-time(specimen.half-thickness, usual, bench.temperature) + 3 d to penetration-time(specimen.half-thickness, slow, bench.temperature) + 30 d
            watch: {every: 3 d, signs: {soft: re-inject, bloated: slit-and-inject, floating: press-out-air, dry: weigh-down, cloudy: change-fluid, oily: skim-and-change, smelling: prolong, slipping: ask, acid: skim-and-change}}
            source: common practice
          - {stage: bath, id: ethanol-30, fluid: {by: choice.alcohol, ethanol: ethanol 30 %vol, isopropanol: isopropanol 30 %vol}, ratio: 4, last: 1 d to 9 d}
          - {stage: bath, id: ethanol-50, fluid: {by: choice.alcohol, ethanol: ethanol 50 %vol, isopropanol: isopropanol 50 %vol}, ratio: 4, last: 1 d to 9 d, watch: {every: 1 d, signs: {weak: restore-strength, shrunken: weaker-step, smelling: prolong, cloudy: change-fluid, soft: re-inject}}}
          - {stage: house, id: house, fluid: {by: choice.alcohol, ethanol: ethanol 70 %vol, isopropanol: isopropanol 50 %vol}, ratio: 4}
          - {stage: seal, id: seal, closure: screw lid}
        """));

    /// <summary>The shelf after its authors soaked for longer and counted on.</summary>
    public static Shelf Revised(int revision) => Shelf.Of(
        [.. Shelf.Find("watched-fish")!.Texts.Select(t => (IReadOnlyList<SourceText>)[new(t.Name, t.Text.Replace("ratio: 10", "ratio: 20").Replace("revision: 1", $"revision: {revision}"))])]);

    public static WorkLog LogOf(string entries) => SkerryPoint.Read(SkerryPoint.Log(entries, Fish.Id));

    public static readonly Specimen Fish = PlanFixture.Read("""
        format: 1
        specimen: SKP-2027-040
        group: bony-fish
        mass: 300 g
        standard-length: 22 cm
        condition: fresh
        found-on: 2027-02-28
        where: an invented shore
        collected-by: A. Nobody
        """);

    public static readonly Plan Plan = Made();

    public static Plan Made(params (string Name, string Option)[] choices) => SkerryPoint.Read(new Planner(Shelf).Plan(new(Fish, SkerryPoint.Bench, PlanFixture.Monday) { Choices = choices.ToImmutableSortedDictionary(c => c.Name, c => c.Option, StringComparer.Ordinal) }));

    public static Checked<Revision> Try(string entries, Plan? plan = null) =>
        new Planner(Shelf).Revise(plan ?? Plan, SkerryPoint.Read(SkerryPoint.Log(entries, Fish.Id)), new PreparedBench(SkerryPoint.Bench));

    public static Plan Revise(string entries, Plan? plan = null) => SkerryPoint.Read(Try(entries, plan)).Plan;

    /// <summary>What is new or different about steps, without those whose dates alone have moved.</summary>
    public static void Tell(StringBuilder text, string of, string entries, Plan? given = null)
    {
        var plan = given ?? Plan;
        var revised = Try(entries, plan);
        text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{of}\n");
        foreach (var step in revised.Value!.Plan.Steps)
        {
            var old = plan.Step(step.Id);
            if (old is not null && step.State == old.State && step.Because.SequenceEqual(old.Because) && step.Changes == old.Changes) continue;
            if (step.State == StepState.Done && step.Because.IsEmpty) continue;
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"  {step.Id} ({StageGrammar.Of(step.Kind).Word}, {step.State.ToString().ToLowerInvariant()}): {step.Title}; {step.Start?.LocalDateTime:uuuu-MM-dd HH:mm} to {step.End?.LocalDateTime:uuuu-MM-dd HH:mm}\n");
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"    {(step.Fluid is null ? "no fluid" : $"{step.Volume?.Milliliters:0} mL of {step.Fluid}")}, changed {step.Changes} times, hands-on {step.HandsOn.TotalMinutes:0} min; because {(step.Because.IsEmpty ? "-" : step.Because.Text())}\n");
            if (old is null) text.Append(System.Globalization.CultureInfo.InvariantCulture, $"    {string.Join(" / ", step.Instructions)}\n    source: {step.Source}\n");
        }

        foreach (var f in revised.Findings.Where(f => f.Id is "sign-without-remedy" or "step-skipped" or "other-bench" or "other-zone" or "other-protocol-revision"))
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id} at {f.Subject}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
        text.Append('\n');
    }
}
