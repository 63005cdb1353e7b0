using System.Security.Cryptography;
using System.Text;
using Protocolist.Findings;

namespace Protocolist.Planning.Batching;

/// <summary>Which specimen numbers a table has borne so far, so that one that comes again is found.</summary>
/// <remarks>
/// Of each number 128 bits of its SHA-256 are kept with the row that bore it, some 40 bytes a row: numbers of any length, and 4 MB for 100,000 of them.
/// Two numbers that differ would be taken for one with a chance of one in 10^28 in a table of 100,000 rows: below the chance that the memory errs.
/// </remarks>
internal sealed class NumbersSeen
{
    private static readonly Phrase RepeatedNumber = new(
        "repeated-number",
        "row {row} bears the number '{number}' of row {first}; both are planned and shopped for");
    private static readonly Phrase RepeatedNumberRemedy = new(
        "repeated-number.remedy",
        "if it is one animal, strike out one row; if there are two, give each a number of its own before anything is labelled");

    private readonly Dictionary<UInt128, int> rows = [];

    /// <summary>Remembers a row's number.</summary>
    /// <returns>
    /// A warning <c>repeated-number</c> where another row has it. The row is planned all the same: if it is a second animal, it cannot wait until its number is
    /// settled; if it is the same animal, a line is struck out afterwards and nothing is lost but a bottle too many on the list.
    /// </returns>
    public Finding? Again(string number, int row, SourceSpan where)
    {
        if (number.Length == 0) return null;
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(Encoding.UTF8.GetBytes(number), hash);
        var key = System.Buffers.Binary.BinaryPrimitives.ReadUInt128LittleEndian(hash);
        if (rows.TryAdd(key, row)) return null;
        return Finding.Warning(
            "repeated-number",
            RepeatedNumber.With(("row", row), ("number", Excerpt.Of(number)), ("first", rows[key])),
            RepeatedNumberRemedy,
            where);
    }
}
