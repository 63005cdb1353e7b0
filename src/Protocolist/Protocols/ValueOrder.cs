using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>Puts named values into an order in which each uses only earlier ones; values that use each other in a circle are found out.</summary>
internal static class ValueOrder
{
    private static readonly Phrase CircularValue = new("circular-value", "'{name}' is defined by way of itself");
    private static readonly Phrase CircularValueRemedy = new("circular-value.remedy", "give one of the values in the circle without the others");

    public static List<MappingEntry> Sort(IEnumerable<MappingEntry> values, List<Finding> findings)
    {
        var byName = values.ToDictionary(v => v.Key.Value, StringComparer.Ordinal);
        var sorted = new List<MappingEntry>();
        var state = new Dictionary<string, bool>(StringComparer.Ordinal);
        foreach (var value in byName.Values) Visit(value, byName, state, sorted, findings);
        return sorted;
    }

    private static void Visit(
        MappingEntry value,
        Dictionary<string, MappingEntry> byName,
        Dictionary<string, bool> done,
        List<MappingEntry> sorted,
        List<Finding> findings)
    {
        var name = value.Key.Value;
        if (done.TryGetValue(name, out var finished))
        {
            if (!finished) findings.Add(Finding.Error("circular-value", CircularValue.With(("name", name)), CircularValueRemedy, value.Key.Span));
            return;
        }

        done[name] = false;
        foreach (var used in NamesIn(value.Value))
        {
            if (byName.TryGetValue(used, out var other)) Visit(other, byName, done, sorted, findings);
        }

        done[name] = true;
        sorted.Add(value);
    }

    /// <summary>Every run of letters that could be a name. Too many is harmless: only names of values count.</summary>
    private static IEnumerable<string> NamesIn(DocumentNode node) => node switch
    {
        ScalarNode scalar => NamesIn(scalar.Value),
        SequenceNode list => list.Items.SelectMany(NamesIn),
        MappingNode mapping => mapping.Entries.SelectMany(e => NamesIn(e.Value)),
        _ => [],
    };

    private static IEnumerable<string> NamesIn(string text)
    {
        var scan = new FormulaScanner(text);
        while (scan.At < text.Length)
        {
            if (char.IsLetter(scan.Peek())) yield return scan.Name();
            else scan.At++;
        }
    }
}
