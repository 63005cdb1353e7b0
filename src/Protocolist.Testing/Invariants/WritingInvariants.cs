using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Testing.Invariants;

/// <summary>What holds of a plan as it is written.</summary>
internal static partial class WritingInvariants
{
    /// <summary>Turkish has its own i, German a decimal comma, Arabic of Saudi Arabia another calendar, and Persian its own minus sign.</summary>
    private static readonly string[] Cultures = ["tr-TR", "de-DE", "ar-SA", "fa-IR", ""];

    public static ImmutableArray<PlanInvariant> All { get; } =
    [
        PlanInvariant.OfPlan(
            "json-reads-back",
            "a plan read back from its JSON equals the one that was written, has its hash, and is written as the same bytes",
            ReadsBack),
        PlanInvariant.OfPlan("same-again", "the same request gives the same bytes", (
            plan,
            c) => Differ(PlanJson.Write(plan), PlanJson.Write(c.Planner.Plan(c.Request).Value!), "planned again")),
        PlanInvariant.OfPlan("same-in-any-culture", "no culture of the machine changes a byte", InAnyCulture),
        PlanInvariant.OfPlan("numbers-can-be-measured", "no number that a person reads has more than seven figures", Measurable),
        PlanInvariant.OfPlan("text-is-clean", "no line that a person reads is empty, or holds a control character or an unfinished sentence", Clean),
        PlanInvariant.OfPlan("label-names-the-specimen", "the label begins with the specimen's number", (
            plan,
            c) => plan.Label is [var first, ..] && first.ToString().Contains(c.Request.Specimen.Id, StringComparison.Ordinal)
                ? []
                : [$"the label begins '{plan.Label.FirstOrDefault()}'"]),
    ];

    /// <summary>Eight figures or more around a decimal point. Seven are let pass: regulations are numbered so.</summary>
    [GeneratedRegex(@"(?<![\w.:-])(?<!CFR )(?=0*\.?0*[1-9](?:\.?\d){7})\d+\.\d+")]
    private static partial Regex TooFine { get; }

    private static IEnumerable<string> ReadsBack(Plan plan)
    {
        var written = PlanJson.Write(plan);
        var read = PlanJson.Read(new("plan.json", written));
        if (read.Value is not { } again) return [$"it cannot be read: {string.Join("; ", read.Findings)}"];
        if (!again.Equals(plan)) return ["it is another plan when read back"];
        return again.GetHashCode() == plan.GetHashCode() ? Differ(written, PlanJson.Write(again), "read back") : ["it has another hash when read back"];
    }

    private static IEnumerable<string> InAnyCulture(Plan plan, PlanCase planCase)
    {
        var written = PlanJson.Write(plan);
        var (culture, ui) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            var other = CultureInfo.GetCultureInfo(Cultures[planCase.Turn % Cultures.Length]);
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (other, other);

            // Files are read again too.
            var again = new PlanCase(
                planCase.SpecimenFile,
                planCase.BenchFile,
                planCase.Planner,
                planCase.Request.Start,
                planCase.Request.Choices,
                planCase.Turn);
            return [.. Differ(written, PlanJson.Write(again.Made.Value!), $"planned under '{other.Name}'")];
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, ui);
        }
    }

    internal static IEnumerable<string> Differ(string one, string other, string what)
    {
        if (string.Equals(one, other, StringComparison.Ordinal)) yield break;
        var (a, b) = (one.Split('\n'), other.Split('\n'));
        var line = Enumerable.Range(0, Math.Min(a.Length, b.Length)).FirstOrDefault(i => a[i] != b[i]);
        yield return $"{what} it differs in line {line + 1}: '{a[line].Trim()}' and '{b[line].Trim()}'";
    }

    private static IEnumerable<string> Lines(Plan plan) =>
    [
        .. plan.Steps.SelectMany(s => (IEnumerable<string>)[
            .. ((IEnumerable<Message>)[s.Title, .. s.Instructions, .. s.LookFor, .. s.Cautions]).Select(m => m.ToString()),
            .. s.Materials.Select(m => m.HowMuch.ToString()),
        ]),
        .. plan.Recipes.SelectMany(r => r.Method).Select(m => m.ToString()),
        .. plan.Purchases.Select(p => p.Pack.ToString()),
        .. plan.Figures.Select(f => f.Value),
        .. plan.Findings.Select(f => f.Message.ToString()),
        .. plan.Label.Select(l => l.ToString()),
    ];

    private static IEnumerable<string> Measurable(Plan plan) => Lines(plan).Where(l => TooFine.IsMatch(l)).Select(l => $"nobody can measure '{l}'");

    private static IEnumerable<string> Clean(Plan plan) => Lines(plan)
        .Where(l => string.IsNullOrWhiteSpace(l)
            || l.Any(char.IsControl)
            || l.Contains("NaN", StringComparison.Ordinal)
            || l.Contains('∞', StringComparison.Ordinal)
            || l.Contains("Infinity", StringComparison.Ordinal)
            || l.Contains("  ", StringComparison.Ordinal))
        .Select(l => $"this is no line for a person: '{l}'");
}
