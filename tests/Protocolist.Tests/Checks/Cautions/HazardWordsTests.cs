using Protocolist.Checks.Cautions;

namespace Protocolist.Tests.Checks.Cautions;

public class HazardWordsTests
{
    /// <summary>The Globally Harmonized System, annex 3, shortened: from memory.</summary>
    [Theory]
    [InlineData("H225", "highly flammable liquid and vapour (H225)")]
    [InlineData("H226", "flammable liquid and vapour (H226)")]
    [InlineData("H301", "toxic if swallowed (H301)")]
    [InlineData("H302", "harmful if swallowed (H302)")]
    [InlineData("H311", "toxic in contact with skin (H311)")]
    [InlineData("H312", "harmful in contact with skin (H312)")]
    [InlineData("H314", "causes severe skin burns and eye damage (H314)")]
    [InlineData("H315", "causes skin irritation (H315)")]
    [InlineData("H317", "may cause an allergic skin reaction (H317)")]
    [InlineData("H319", "causes serious eye irritation (H319)")]
    [InlineData("H331", "toxic if inhaled (H331)")]
    [InlineData("H332", "harmful if inhaled (H332)")]
    [InlineData("H335", "may cause respiratory irritation (H335)")]
    [InlineData("H336", "may cause drowsiness or dizziness (H336)")]
    [InlineData("H341", "suspected of causing genetic defects (H341)")]
    [InlineData("H350", "may cause cancer (H350)")]
    [InlineData("H370", "causes damage to organs (H370)")]
    [InlineData("H371", "may cause damage to organs (H371)")]
    [InlineData("H400", "H400")]
    public void Hazard_is_told_in_words_with_its_code(string code, string words) => Assert.Equal(words, HazardWords.Of(code).ToString());
}
