using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>No drum of formaldehyde stock stands in the room where people work.</summary>
internal static class StoredFormaldehyde
{
    /// <summary>Beyond a few bottles: the project's choice.</summary>
    private static readonly Volume Bottles = Volume.FromLiters(20);

    /// <summary>Threshold planning quantity of formaldehyde, 500 lb: 40 CFR 355, appendix A (from memory).</summary>
    private static readonly Mass Notified = Mass.FromPounds(500);

    public static PlanCheck Check { get; } = new(
        "stored-formaldehyde",
        "people: a stock that leaks or falls over fills the room",
        "20 L: the project's choice; 500 lb of formaldehyde: 40 CFR 355 appendix A (from memory); local rules come first",
        Find)
    {
        Speaks = [new(Severity.Warning, "shelf and order together hold more than 20 L of formaldehyde stock, or 500 lb of formaldehyde")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        var stored = plan.Stored;
        if (plan.Formalin.IsEmpty || (stored.FormaldehydeStock <= Bottles && stored.Formaldehyde < Notified)) yield break;
        var parts = new List<string>();
        if (stored.FormaldehydeStock > Bottles && Telling.Apart(stored.FormaldehydeStock, Bottles) is var (held, most))
            parts.Add($"{held} of formaldehyde stock, and more than {most} belongs in a ventilated store");
        if (stored.Formaldehyde >= Notified)
            parts.Add($"{stored.Formaldehyde.Text()} of formaldehyde in all, and from {Notified.Text()} on some places ask for notice to the authorities");
        yield return Finding.Warning("stored-formaldehyde", $"shelf and order together hold {string.Join("; ", parts)}", "order in rounds; keep it apart from acids, bleach and heat, over a tray that holds the largest bottle");
    }
}
