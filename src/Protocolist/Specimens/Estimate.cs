using Protocolist.Findings;

namespace Protocolist.Specimens;

/// <summary>A quantity of one specimen with its range, and whether somebody measured it or it was estimated.</summary>
/// <typeparam name="TQuantity">The kind of quantity, such as <c>UnitsNet.Volume</c>.</typeparam>
/// <param name="Low">The lowest value to reckon with.</param>
/// <param name="Nominal">The value to plan with.</param>
/// <param name="High">The highest value to reckon with.</param>
/// <param name="IsMeasured">True where the specimen file gives this very quantity; false where it follows from others.</param>
/// <param name="How">What it rests on, such as <c>measured</c> or <c>mass over 1040 kg/m3</c>.</param>
/// <param name="Source">Who stands for the numbers used on the way.</param>
internal readonly record struct Estimate<TQuantity>(
    TQuantity Low, TQuantity Nominal, TQuantity High, bool IsMeasured, Message How, string Source)
    where TQuantity : struct;
