using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>No drum of formaldehyde stock stands in the room where people work.</summary>
internal static class StoredFormaldehyde
{
    private const string Id = "stored-formaldehyde";

    /// <summary>Beyond a few bottles: the project's choice.</summary>
    private static readonly Volume Bottles = Volume.FromLiters(20);

    /// <summary>Threshold planning quantity of formaldehyde, 500 lb: 40 CFR 355, appendix A (from memory).</summary>
    private static readonly Mass Notified = Mass.FromPounds(500);

    private static readonly Phrase Hold = new(Id, "shelf and order together hold {parts:; }");
    private static readonly Phrase Stock = new(
        "stored-formaldehyde.stock",
        "{held:vs most} of formaldehyde stock, and more than {most:vs held} belongs in a ventilated store");

    private static readonly Phrase InAll = new(
        "stored-formaldehyde.in-all",
        "{held} of formaldehyde in all, and from {notified} on some places ask for notice to the authorities");

    private static readonly Phrase InRounds = new(
        "stored-formaldehyde.remedy",
        "order in rounds; keep it apart from acids, bleach and heat, over a tray that holds the largest bottle");

    public static PlanCheck Check { get; } = new(
        Id,
        "people: a stock that leaks or falls over fills the room",
        "20 L: the project's choice; 500 lb of formaldehyde: 40 CFR 355 appendix A (from memory); local rules come first",
        Find)
    {
        Severities = [new(Severity.Warning, "shelf and order together hold more than 20 L of formaldehyde stock, or 500 lb of formaldehyde")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var stored = plan.Stored;
        if (plan.Formalin.IsEmpty || (stored.FormaldehydeStock <= Bottles && stored.Formaldehyde < Notified)) return [];
        var parts = new List<Message>();
        if (stored.FormaldehydeStock > Bottles) parts.Add(Stock.With(("held", stored.FormaldehydeStock), ("most", Bottles)));
        if (stored.Formaldehyde >= Notified) parts.Add(InAll.With(("held", stored.Formaldehyde), ("notified", Notified)));
        return [Finding.Warning(Id, Hold.With(Argument.Messages("parts", parts)), InRounds)];
    }
}
