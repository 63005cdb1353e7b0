using Protocolist.Quantities;

namespace Protocolist.Benches;

/// <summary>One size in which a material can be bought.</summary>
/// <param name="Size">What one pack holds; above zero.</param>
/// <param name="Price">What one pack costs; null where the bench does not say, in which case it is never bought.</param>
/// <param name="LeadDays">Calendar days from order to arrival; 0 where it is fetched the same day.</param>
public sealed record Pack(Amount Size, Money? Price, int LeadDays = 0)
{
    /// <summary>Whether it can stand in a purchase: something in it, and a price that is not below zero.</summary>
    public bool CanBeBought => Size.Units > 0 && Price is { Minor: >= 0 };
}
