using Protocolist.Quantities;

namespace Protocolist.Protocols;

/// <summary>The forms a setting of a stage can have.</summary>
internal enum SettingForm
{
    /// <summary>A formula of a given dimension.</summary>
    Quantity,

    /// <summary>A yes-or-no formula.</summary>
    Condition,

    /// <summary>A fluid's name, or a choice of fluids.</summary>
    Fluid,

    /// <summary>Free text.</summary>
    Text,

    /// <summary>A list of free texts.</summary>
    Texts,

    /// <summary>One word, or a choice of words, of a closed list.</summary>
    Word,

    /// <summary>One or several words of a closed list, as they stand.</summary>
    Words,

    /// <summary>A list of body regions.</summary>
    Regions,

    /// <summary>Body regions, each with a volume to inject at one site.</summary>
    Sites,

    /// <summary>How often to look, and what each sign calls for.</summary>
    Watch,

    /// <summary>The key of a source.</summary>
    Source,
}

/// <summary>What one key of a stage means.</summary>
/// <param name="Key">As it stands in the file.</param>
/// <param name="Form">Its form.</param>
/// <param name="Summary">One line for the guide and the schema.</param>
/// <param name="Dimension">Of a quantity: what it measures.</param>
/// <param name="Words">Of words: the closed list.</param>
internal sealed record SettingShape(string Key, SettingForm Form, string Summary, Dimension Dimension = default, params string[] Words)
{
    public bool Required { get; init; }
}

/// <summary>What one kind of stage may say.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Word">As it stands in the file.</param>
/// <param name="Summary">One line for the guide and the schema.</param>
/// <param name="Settings">Its own keys, besides those that every stage has.</param>
internal sealed record StageShape(StageKind Kind, string Word, string Summary, params SettingShape[] Settings);
