namespace Protocolist.Checks;

/// <summary>Whether somebody knows what an animal died of. A question to ask, read from what was written; never a finding of fact.</summary>
internal static class CauseOfDeath
{
    private static readonly string[] Unknown = ["unknown", "found dead", "washed up", "washed ashore", "stranded", "carcass", "picked up"];

    /// <summary>What explains a death well enough to set the question aside.</summary>
    private static readonly string[] Known =
    [
        "drown", "creel", "net", "pot", "bycatch", "by-catch", "trap", "road", "vehicle", "car ", "window", "collision", "struck", "strike", "shot", "cull",
        "market", "fishery", "captive", "zoo", "died of", "killed by", "euthan", "cat ", "predat", "electrocut", "cause known", "necropsy",
    ];

    public static bool DiedOfUnknown(this ReviewCase plan) => plan.Tells(Unknown) && !plan.Tells(Known);
}
