using static System.FormattableString;

namespace Protocolist.Mutation;

/// <summary>Adds the results up: by room, and with or without the changes of texts; then what survived, file by file.</summary>
internal static class Score
{
    public static int Run(string report, IEnumerable<string> results)
    {
        // The last word on a mutant counts: one that sits in something made once is tried alone afterwards.
        var fates = results.SelectMany(r => new Results(r).Read()).GroupBy(r => r.Id).ToDictionary(g => g.Key, g => g.Last().Fate);
        var mutants = Mutant.Read(report);
        Console.WriteLine("room              mutants   killed  timed out  survived  capped  unpassed  untried   score   score without texts");
        foreach (var room in mutants.GroupBy(m => m.Room).Select(g => (Name: g.Key, Mutants: g.ToList())).Append((Name: "all", Mutants: mutants.ToList())))
        {
            int Count(Fate fate) => room.Mutants.Count(m => fates.TryGetValue(m.Id, out var f) && f == fate);
            Console.WriteLine(Invariant($"{room.Name,-16} {room.Mutants.Count,8} {Count(Fate.Killed),8} {Count(Fate.TimedOut),10} {Count(Fate.Survived),9} {Count(Fate.Capped),7} {Count(Fate.Unpassed),9} {room.Mutants.Count(m => !fates.ContainsKey(m.Id)),8} {Share(room.Mutants),7:0.0 %} {Share(room.Mutants.Where(m => m.Kind != "String mutation")),12:0.0 %}"));
        }

        foreach (var mutant in mutants.Where(m => !Caught(m)))
            Console.WriteLine($"{mutant.File}:{mutant.Line} [{(fates.TryGetValue(mutant.Id, out var fate) ? fate : "untried")}] {mutant.Kind}: {OneLine(mutant.Was)} -> {OneLine(mutant.Is)}");
        return 0;

        bool Caught(Mutant mutant) => fates.TryGetValue(mutant.Id, out var fate) && fate is Fate.Killed or Fate.TimedOut;

        double Share(IEnumerable<Mutant> some)
        {
            var list = some.ToList();
            return list.Count == 0 ? 0 : (double)list.Count(Caught) / list.Count;
        }
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ") is { Length: > 100 } long_ ? long_[..100] + "…" : text.ReplaceLineEndings(" ");
}
