using Protocolist.Findings;

namespace Protocolist.Cli.Commands;

/// <summary>The exit codes.</summary>
internal static class Exits
{
    public const int Done = 0;
    public const int WithErrors = 1;
    public const int Unusable = 2;

    extension(Surroundings around)
    {
        /// <summary>Writes errors to standard error, one a line.</summary>
        public int Unread(IEnumerable<Finding> findings)
        {
            foreach (var finding in findings.Where(f => f.Severity == Severity.Error)) around.Error.WriteLine(finding);
            return Unusable;
        }
    }
}
