namespace Protocolist.Checks;

/// <summary>Whether somebody knows what an animal died of. A question to ask, read from what was written; never a finding of fact.</summary>
internal static class CauseOfDeath
{
    public static bool DiedOfUnknown(this ReviewCase plan) => plan.HistoryHas(HistoryWords.UnknownDeath) && !plan.HistoryHas(HistoryWords.KnownDeath);
}
