using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>The body lies well inside the class that its protocol was written for, whatever its estimates may turn out to be.</summary>
internal static class OutOfClass
{
    private static readonly Phrase OtherGroup = new("out-of-class", "'{protocol}' is for the group '{wanted}', and this is {group:a}");
    private static readonly Phrase ForItsGroup = new("out-of-class.remedy", "use a protocol for its group");

    private static readonly Phrase OtherSize = new("out-of-class.size", "its {measure}, {size}, is outside the {limit} of '{protocol}'{end}");
    private static readonly Phrase ForItsSize = new("out-of-class.remedy-size", "use a protocol for its size");

    private static readonly Phrase MayBeOther = new(
        "out-of-class.estimate", "its {measure} is known as {size} only, which reaches beyond the {limit} of '{protocol}'{end}");

    private static readonly Phrase MeasureIt = new("out-of-class.remedy-estimate", "measure the {measure}");
    private static readonly Phrase NextClass = new("out-of-class.next-class", ", whose upper end belongs to the next class");

    public static PlanCheck Check { get; } = new(
        "out-of-class",
        "the specimen: a protocol's times and amounts hold for the sizes it was written for",
        "the protocol's own class",
        Find)
    {
        Severities =
        [
            new(Severity.Error, "the protocol is for another group, or for other sizes"),
            new(Severity.Note, "a size is known only as a range that reaches beyond the protocol's class"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        var taxon = plan.Protocol.Class;
        if (!plan.Group.IsA(taxon.Group))
        {
            var message = OtherGroup.With(Argument.Id("protocol", plan.Protocol.Id), ("wanted", taxon.Group), ("group", plan.Group.Name));
            found = found.Add(Finding.Error("out-of-class", message, ForItsGroup));
        }

        foreach (var (key, limit) in taxon.Limits)
        {
            var (low, nominal, high) = Ends(plan.Body, key);
            if (!SpecimenClass.Within(limit, nominal))
            {
                var message = Says(OtherSize, QuantityRange.Point(nominal, limit.Dimension), nominal == limit.High);
                found = found.Add(Finding.Error("out-of-class", message, ForItsSize).By($"specimen.{key}"));
            }
            else if (!SpecimenClass.Within(limit, low) || !SpecimenClass.Within(limit, high))
            {
                var message = Says(MayBeOther, new(low, high, limit.Dimension), high == limit.High);
                found = found.Add(Finding.Note("out-of-class", message, MeasureIt.With(("measure", ToMeasure(key, plan.Group)))).By($"specimen.{key}"));
            }

            Message Says(Phrase phrase, QuantityRange size, bool isAtEnd) => phrase.With(
                ("measure", key), ("size", size), ("limit", limit), Argument.Id("protocol", plan.Protocol.Id), ("end", isAtEnd ? NextClass : default(Message)));
        }

        return found;
    }

    /// <summary>What would tell on which side of the limit it is.</summary>
    private static Phrase ToMeasure(string key, TaxonGroup group) => key switch
    {
        "mass" => MeasureNames.Mass,
        "length" => MeasureNames.Of(group.Length),
        "half-thickness" => MeasureNames.Thickness,
        _ => MeasureNames.DisplacementVolume,
    };

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
