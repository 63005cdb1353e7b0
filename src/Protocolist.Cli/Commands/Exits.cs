using Protocolist.Findings;

namespace Protocolist.Cli.Commands;

/// <summary>The exit codes.</summary>
internal static class Exits
{
    public const int Done = 0;
    public const int WithErrors = 1;
    public const int Unusable = 2;
    public const int Fault = 3;

    /// <summary>The switch that shows what is known of an unforeseen fault.</summary>
    public const string FaultDetails = "--fault-details";

    extension(Surroundings around)
    {
        /// <summary>Writes errors to standard error, one a line.</summary>
        public int Unread(IEnumerable<Finding> findings)
        {
            Told.Of([.. findings.Where(f => f.Severity == Severity.Error)]).Write(around.Error);
            return Unusable;
        }
    }
}
