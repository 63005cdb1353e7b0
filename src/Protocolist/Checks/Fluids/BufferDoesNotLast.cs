using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>What an animal is kept in for good has a buffer that lasts.</summary>
internal static class BufferDoesNotLast
{
    private static readonly Phrase Usual = new(
        "buffer-does-not-last.jelly",
        "'{step}' keeps it in {fluid}, the usual fluid for jelly, whose pH is not to be trusted after {days} days");

    private static readonly Phrase Unbuffered = new(
        "buffer-does-not-last.unbuffered",
        "'{step}' keeps it for good in {fluid}, which has no buffer and a pH of {low:0.0} to {high:0.0}; it {cannot}");

    private static readonly Phrase Limited = new(
        BufferLife.Id,
        "'{step}' keeps it for good in {fluid}, whose pH of {low:0.0} to {high:0.0} is not to be trusted after {days} {days|day|days}; it {cannot}");

    private static readonly Phrase Renew = new("buffer-does-not-last.remedy-renew", "read its pH at every round, and renew the fluid below 7");
    private static readonly Phrase Phosphate = new("buffer-does-not-last.remedy", "keep it in phosphate-buffered formalin, or in alcohol");

    public static PlanCheck Check { get; } = new(
        BufferLife.Id,
        "the specimen: sea water, borax and chips buffer for weeks, then the jar turns acid, or clears and bleaches what is in it",
        BufferLife.Source,
        Find)
    {
        Severities =
        [
            new(Severity.Warning, "the final jar holds formalin whose buffer lasts for a limited time only"),
            new(Severity.Note, "a jelly is kept in sea-water formalin, for which nothing better is known"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Fluid: { } fluid } house || BufferLife.Limited(fluid) is not { LastsDays: { } days } profile) return [];
        if (BufferLife.IsBestKnown(plan.Group, fluid))
        {
            var usual = Usual.With(Argument.Id("step", house.Id), ("fluid", fluid.Name), ("days", days));
            return [Finding.Note(BufferLife.Id, usual, Renew).At(house, "fluid")];
        }

        var message = (fluid.Buffering == Buffering.None ? Unbuffered : Limited).With(
            Argument.Id("step", house.Id),
            ("fluid", fluid.Name),
            ("low", profile.PhLow),
            ("high", profile.PhHigh),
            ("days", days),
            ("cannot", profile.Cannot));
        return [Finding.Warning(BufferLife.Id, message, Phosphate).At(house, "fluid")];
    }
}
