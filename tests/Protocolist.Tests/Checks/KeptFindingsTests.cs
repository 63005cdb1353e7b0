using System.Text;
using Protocolist.Checks;
using Protocolist.Findings;

namespace Protocolist.Tests.Checks;

/// <summary>What each check tells of its cases, word for word: an institution reads these sentences with a knife in its hand.</summary>
public class KeptFindingsTests
{
    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Check_tells_what_was_read_and_kept(string id)
    {
        var check = AllChecks.All.Single(c => c.Id == id);
        var text = new StringBuilder($"protects: {check.Protects}\nsource: {check.Source}\n");
        Tell("on its hazard", Row.All.Single(r => r.Id == id).Trips);
        Tell("at a near miss", Row.All.Single(r => r.Id == id).NearMiss);
        foreach (var edge in Edge.All.Where(e => e.Id == id))
        {
            Tell($"past its limit ({string.Join(", ", edge.Says)})", edge.Past);
            Tell($"at its limit ({string.Join(", ", edge.Says)})", edge.Short);
        }

        KeptText.Holds($"Checks/kept/{id}.txt", text.ToString());

        void Tell(string when, Func<ReviewCase> plan)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n{when}:\n");
            var found = check.Find(plan()).ToList();
            if (found.Count == 0) text.Append("  (silent)\n");
            foreach (var f in found) text.Append(Line(f));
        }
    }

    private static string Line(Finding f) => $"""
          {f.Severity.ToString().ToLowerInvariant()} {f.Id}{(f.Subject.Length > 0 ? $" at {f.Subject}" : "")}
            {f.Message.ToString()}
            remedy: {f.Remedy.ToString()}
            figures: {string.Join(", ", f.Figures)}
            source: {f.Source}

        """;
}
