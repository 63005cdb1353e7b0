using Protocolist.Findings;

namespace Protocolist.Specimens.Measuring;

/// <summary>Which finer words for a body would tell more of it.</summary>
internal static class FinerWords
{
    private const int Most = 8;

    private static readonly Phrase Sharper = new("finer-words", "{remedy}; a finer group would sharpen what is expected: {groups:, }{more}");
    private static readonly Phrase AndMore = new("finer-words.more", " and others");

    /// <summary>A remedy, with the groups below this one that have a relation of their own; the remedy alone where there are none.</summary>
    public static Message With(Message remedy, TaxonGroup group, LengthMassRelation relation, Kinds? kinds)
    {
        // Where the species told the relation there is nothing finer.
        if (kinds is null || !group.LengthMass.Contains(relation)) return remedy;
        var finer = kinds.Groups.Where(g => g.Parent == group && g.LengthMass.Any(own => own.Length == relation.Length && own != relation)).ToList();
        return finer.Count == 0 ? remedy : Sharper.With(
            ("remedy", remedy), Argument.Ids("groups", finer.Take(Most).Select(g => g.Id)), ("more", finer.Count > Most ? AndMore : default(Message)));
    }
}
