using System.Collections.Frozen;
using Protocolist.Findings;

namespace Protocolist.Checks.Cautions;

/// <summary>GHS hazard statements in words.</summary>
internal static class HazardWords
{
    // Wording: Globally Harmonized System, annex 3 (from memory), shortened.
    private static readonly FrozenDictionary<string, Phrase> Statements = FrozenDictionary.ToFrozenDictionary<(string Code, string Words), string, Phrase>(
        [
            ("H225", "highly flammable liquid and vapour"),
            ("H226", "flammable liquid and vapour"),
            ("H301", "toxic if swallowed"),
            ("H302", "harmful if swallowed"),
            ("H311", "toxic in contact with skin"),
            ("H312", "harmful in contact with skin"),
            ("H314", "causes severe skin burns and eye damage"),
            ("H315", "causes skin irritation"),
            ("H317", "may cause an allergic skin reaction"),
            ("H319", "causes serious eye irritation"),
            ("H331", "toxic if inhaled"),
            ("H332", "harmful if inhaled"),
            ("H335", "may cause respiratory irritation"),
            ("H336", "may cause drowsiness or dizziness"),
            ("H341", "suspected of causing genetic defects"),
            ("H350", "may cause cancer"),
            ("H370", "causes damage to organs"),
            ("H371", "may cause damage to organs"),
        ],
        s => s.Code,
        s => new("hazard." + s.Code.ToLowerInvariant(), $"{s.Words} ({s.Code})"),
        StringComparer.Ordinal);

    /// <summary>Words and code: <c>may cause cancer (H350)</c>; the code alone where the words are not known.</summary>
    public static Message Of(string code) => Statements.TryGetValue(code, out var words) ? words : Message.Text(code);
}
