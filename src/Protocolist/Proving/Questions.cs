using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Planning.Measuring;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Rules;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Proving;

/// <summary>What is asked of each value and setting.</summary>
internal static class Questions
{
    private const double Hour = 3600;
    private const double Year = 365 * 86400;

    /// <summary>Settings that are pointless when they come to nothing.</summary>
    private static readonly string[] NeverNothing =
        ["last", "ratio", "dose", "sites", "spacing", "length", "depth", "count", "every", "watch", "after", "renew"];

    /// <summary>
    /// Beyond these no handbook goes, by a wide margin: an aid against slipped decimal points and units, not a rule of the trade. The project's
    /// choice. (Ratios of 3 to 20, up to 5 changes, soaks of up to months and rounds of up to years are what is published.)
    /// </summary>
    private static readonly Dictionary<string, double> Most = new(StringComparer.Ordinal)
    {
        ["last"] = 10 * Year,
        ["ratio"] = 200,
        ["changes"] = 50,
        ["count"] = 1000,
        ["hands-on"] = 24 * Hour,
        ["wait"] = Year,
        ["within"] = Year,
        ["every"] = 10 * Year,
        ["watch"] = Year,
        ["after"] = 10 * Year,
        ["renew"] = 100 * Year,
        ["temperature"] = 273.15 + 60,
        ["over-specimen"] = 1,
        ["below-brim"] = 1,
    };

    /// <summary>Perfusion takes 286 mL/kg (PMC7687111), the most that is published; half a litre per kg is a slip. The project's choice.</summary>
    private const double MostDoseM3PerKg = 500e-6;

    private static readonly Phrase CheckFormula = new(
        "negative-amount.remedy",
        "check the formula, put it inside 'greatest(…)', or narrow the class");

    private static readonly Question WithoutLimit = Plain(
        "amount-without-limit",
        v => double.IsInfinity(v.Quantity.Low) || double.IsInfinity(v.Quantity.High),
        new("amount-without-limit", "has no limit"),
        new("amount-without-limit.remedy", "look for a division by something that can be nothing")) with
    { HidesValue = true };

    private static readonly Question WithoutLeast = WithoutLimit with
    {
        MayFault = (_, v) => double.IsInfinity(v.Quantity.Low),
        IsFault = (_, _, v) => double.IsInfinity(v.Quantity.Low),
    };

    private static readonly Question NegativeSetting = Plain("negative-amount", v => v.Quantity.Low < 0, new("negative-amount", "is negative"), CheckFormula);
    private static readonly Question NegativeValue = NegativeSetting with { Severity = Severity.Warning };
    private static readonly Question Nothing = new(
        "nothing-of-it",
        Severity.Error,
        (_, v) => v.Quantity.Low <= 0,
        (_, _, v) => v.Quantity is { High: <= 0, Low: >= 0 },
        new("nothing-of-it", "comes to nothing"),
        new("nothing-of-it.remedy", "give an amount above nothing, or leave the key out"));

    private static readonly Question TooCold = Plain(
        "absurd-amount",
        v => v.Quantity.Low < 273.15 - 90,
        new("absurd-amount.cold", "is colder than any freezer"),
        new("absurd-amount.cold.remedy", "check the unit and the sign"));

    private static readonly Phrase MoreThanAnybody = new("absurd-amount.proof", "is more than anybody does");
    private static readonly Phrase CheckUnits = new("absurd-amount.proof.remedy", "check the units and the decimal point");

    private static readonly Dictionary<string, Question> TooMuch = Most.ToDictionary(
        m => m.Key,
        m => Plain("absurd-amount", v => double.IsFinite(v.Quantity.High) && v.Quantity.High > m.Value, MoreThanAnybody, CheckUnits) with { IsForSlips = true },
        StringComparer.Ordinal);

    private static readonly Phrase FitTheBody = new("absurd-amount.body.remedy", "make it depend on the specimen's size, or narrow the class");

    /// <summary>Set against the body: a dose is what is injected, into the cavity alone of what custom leaves whole.</summary>
    private static readonly Question TooLargeADose = Beside(
        (body, v) => v.Quantity.Low > MostDoseM3PerKg * SpecimenValues.Measure(body, "specimen.lot-mass").Middle,
        new("absurd-amount.dose", "is more than half a litre for each kg of animal"),
        new("absurd-amount.dose.remedy", "check the units; 63 to 286 mL/kg is published"));

    private static readonly Question LongerThanTheBody = Beside(
        (body, v) => v.Quantity.Low > body.TotalLength.High.Meters,
        new("absurd-amount.longer", "is longer than the whole animal"),
        FitTheBody);

    /// <summary>What is usual at a site is no amount: a body so small that custom leaves it whole has its share of the dose.</summary>
    private static readonly Question LargerThanTheBody = Beside(
        (body, v) => !InjectionPlan.LeftWhole(body) && v.Quantity.Low > body.Volume.High.CubicMeters,
        new("absurd-amount.larger", "is more than the whole animal holds"),
        FitTheBody);

    private static readonly Phrase NoBand = new("gap-between-bands.proof", "has no band");
    private static readonly Phrase AddBand = new("gap-between-bands.proof.remedy", "add a band: 'up to …' or 'over …'");
    private static readonly Phrase Backwards = new("reversed-range.proof", "runs backwards");
    private static readonly Phrase LowerFirst = new("reversed-range.proof.remedy", "put the lower end first, or put the ends inside 'least' and 'greatest'");
    private static readonly Phrase TooLittle = new("ratio-too-low.class", "is less than 3 volumes of fluid for one of specimen");
    private static readonly Phrase RaiseIt = new("ratio-too-low.class.remedy", "raise it, or say in 'note' why less will do here");

    public static IEnumerable<Question> For(Expression expression, string key, StageDefinition? stage, Subject subject)
    {
        if (expression.Type is not { Kind: FormulaKind.Quantity } type) yield break;
        if (type.Dimension.Temperature == 0)
        {
            var isOpen = IsOpen(expression, subject);
            yield return isOpen ? WithoutLeast : WithoutLimit;
            yield return stage is null ? NegativeValue : NegativeSetting;
            if (!isOpen && NeverNothing.Contains(key)) yield return Nothing;
        }

        if (TooMuch.TryGetValue(key, out var tooMuch)) yield return tooMuch;
        if (key == "temperature") yield return TooCold;
        if (key == "dose") yield return TooLargeADose;
        if (key is "length" or "depth" or "spacing") yield return LongerThanTheBody;
        if (key == "sites") yield return LargerThanTheBody;
        if (expression is BandExpression bands)
        {
            yield return new(
                "gap-between-bands",
                Severity.Error,
                (at, _) => at.Evaluate(bands.By.Root).Quantity is var by && (by.Low < bands.Bands[0].Range.Low || by.High > bands.Bands[^1].Range.High),
                (at, _, _) => at.Evaluate(bands.By.Root).Quantity is var by && (by.Low < bands.Bands[0].Range.Low || by.High >= bands.Bands[^1].Range.High),
                NoBand,
                AddBand)
            { HidesValue = true };
        }

        if (Ranges(expression).ToList() is { Count: > 0 } ranges)
        {
            bool IsReversed(Case at) => ranges.Exists(r => at.Evaluate(r.Left).Quantity.Middle > at.Evaluate(r.Right).Quantity.Middle);
            yield return new("reversed-range", Severity.Error, (_, _) => true, (at, _, _) => IsReversed(at), Backwards, LowerFirst)
            {
                WitnessesOnly = true,
                HidesValue = true,
            };
        }

        if (key == "ratio" && stage is { Kind: StageKind.Immerse or StageKind.Bath or StageKind.House } && stage.Text("note") is null)
        {
            QuantityRange Changes(Case @case) => stage.Expression("changes") is { } changes ? @case.Evaluate(changes).Quantity : new(0, 0, Dimension.None);
            bool IsBelow(Case @case, FormulaValue ratio) => RatioFloor.IsBelow(RatioFloor.Least, RatioFloor.Volumes(ratio.Quantity, Changes(@case)));
            yield return new(RatioFloor.Id, Severity.Warning, IsBelow, (at, _, v) => IsBelow(at, v), TooLittle, RaiseIt);
        }
    }

    private static Question Plain(string id, Func<FormulaValue, bool> isFault, Phrase says, Phrase remedy) =>
        new(id, Severity.Error, (_, v) => isFault(v), (_, _, v) => isFault(v), says, remedy);

    private static Question Beside(Func<BodyMeasure, FormulaValue, bool> isFault, Phrase says, Phrase remedy) =>
        new("absurd-amount", Severity.Error, (_, _) => true, (_, body, v) => isFault(body, v), says, remedy) { WitnessesOnly = true };

    /// <summary>Whether the author wrote 'at least' or 'at most' and meant it.</summary>
    private static bool IsOpen(Expression expression, Subject subject) =>
        Formulas(expression).Any(f => f.Nodes.Any(n => n is OpenRangeNode))
        || expression.Names().Any(n => subject.Definitions.TryGetValue(n, out var value) && IsOpen(value.Expression, subject));

    private static IEnumerable<PairNode> Ranges(Expression expression) =>
        Formulas(expression)
            .SelectMany(f => f.Nodes)
            .OfType<PairNode>()
            .Where(p => p.Operation == Operation.Range && !(p.Left is LiteralNode && p.Right is LiteralNode));

    private static IEnumerable<Formula> Formulas(Expression expression) => expression switch
    {
        FormulaExpression f => [f.Formula],
        BandExpression b => b.Bands.Select(x => x.Formula),
        CaseExpression c => c.Cases.SelectMany(x => Formulas(x.Value)),
        _ => [],
    };
}
