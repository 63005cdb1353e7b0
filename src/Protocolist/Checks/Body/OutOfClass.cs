using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>The body lies well inside the class that its protocol was written for, whatever its estimates may turn out to be.</summary>
internal static class OutOfClass
{
    public static PlanCheck Check { get; } = new(
        "out-of-class",
        "the specimen: a protocol's times and amounts hold for the sizes it was written for",
        "the protocol's own class",
        Find)
    {
        Speaks =
        [
            new(Severity.Error, "the protocol is for another group, or for other sizes"),
            new(Severity.Note, "a size is known only as a range that reaches beyond the protocol's class"),
        ],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        var taxon = plan.Protocol.Class;
        if (!plan.Group.IsA(taxon.Group))
        {
            yield return Finding.Error("out-of-class", $"'{plan.Protocol.Id}' is for the group '{taxon.Group}', and this is {plan.Group.One()}", "use a protocol for its group");
        }

        foreach (var (key, limit) in taxon.Limits)
        {
            var (low, nominal, high) = Ends(plan.Body, key);
            if (!SpecimenClass.Within(limit, nominal))
            {
                yield return Finding.Error("out-of-class", $"its {key}, {Measurable.Text(nominal, limit.Dimension)}, is outside the {Measurable.Text(limit)} of '{plan.Protocol.Id}'{(nominal == limit.High ? ", whose upper end belongs to the next class" : "")}", "use a protocol for its size").By($"specimen.{key}");
            }
            else if (!SpecimenClass.Within(limit, low) || !SpecimenClass.Within(limit, high))
            {
                yield return Finding.Note("out-of-class", $"its {key} is known as {Measurable.Text(new QuantityRange(low, high, limit.Dimension))} only, which reaches beyond the {Measurable.Text(limit)} of '{plan.Protocol.Id}'{(high == limit.High ? ", whose upper end belongs to the next class" : "")}", $"measure the {key}").By($"specimen.{key}");
            }
        }
    }

    private static (double Low, double Nominal, double High) Ends(BodyMeasure body, string key) => key switch
    {
        "mass" => Of(body.Mass, m => m.Kilograms),
        "length" => Of(body.Length, l => l.Meters),
        "half-thickness" => Of(body.HalfThickness, l => l.Meters),
        _ => Of(body.Volume, v => v.CubicMeters),
    };

    private static (double Low, double Nominal, double High) Of<T>(Estimate<T> estimate, Func<T, double> si)
        where T : struct =>
        estimate.IsMeasured ? (si(estimate.Nominal), si(estimate.Nominal), si(estimate.Nominal)) : (si(estimate.Low), si(estimate.Nominal), si(estimate.High));
}
