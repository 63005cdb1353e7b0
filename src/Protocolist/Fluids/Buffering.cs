namespace Protocolist.Fluids;

/// <summary>What keeps a formaldehyde solution from turning acid. See <see cref="Buffers.BufferGuide"/> for what each can and cannot do.</summary>
public enum Buffering
{
    /// <summary>Nothing; also every fluid without formaldehyde.</summary>
    None,

    /// <summary>Sodium phosphates, Lillie's neutral buffered formalin.</summary>
    Phosphate,

    /// <summary>Monobasic sodium phosphate with sodium hydroxide, the modified Millonig formalin of Carson, Martin and Lynn 1973.</summary>
    PhosphateSodiumHydroxide,

    /// <summary>Borax (sodium tetraborate decahydrate).</summary>
    Borax,

    /// <summary>The carbonate of sea water, used as the diluent.</summary>
    SeaWater,

    /// <summary>Hexamine (hexamethylenetetramine).</summary>
    Hexamine,

    /// <summary>An excess of marble chips (calcium carbonate) at the bottom.</summary>
    MarbleChips,
}
