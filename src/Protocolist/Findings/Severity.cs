namespace Protocolist.Findings;

/// <summary>How much a <see cref="Finding"/> weighs.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing has to be done.</summary>
    Note,

    /// <summary>Start only if you know why it is all right here.</summary>
    Warning,

    /// <summary>Do not start: somebody or the specimen would come to harm, or the input cannot be used.</summary>
    Error,
}
