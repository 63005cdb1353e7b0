namespace Protocolist.Fluids.Names;

/// <summary>A name without its strength, and what it stands for.</summary>
/// <param name="Name">The name, as a person writes it.</param>
/// <param name="Substance">The substance.</param>
/// <param name="Buffering">Its buffering.</param>
/// <param name="CountsStock">Whether a bare percentage counts parts of stock.</param>
internal readonly record struct FluidWord(string Name, Substance Substance, Buffering Buffering = Buffering.None, bool CountsStock = false);
