using System.Collections.Immutable;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>Which lines of a bench's stock serve which thing: words and sizes matched once. Immutable.</summary>
internal sealed class SundryShelf
{
    /// <summary>Sizes in mL and gauges that are matched ahead; others are when they are asked for.</summary>
    private const int Sizes = 51;

    private readonly ImmutableArray<StockMaterial> things;
    private readonly StockMaterial?[] plain;
    private readonly StockMaterial?[] sized;

    public SundryShelf(ImmutableArray<StockMaterial> materials)
    {
        things = [.. materials.Where(m => m.Kind is MaterialKind.Consumable or MaterialKind.Tool)];
        plain = [.. Enum.GetValues<SundryKind>().Select(k => Match(new(k)))];
        sized = [.. ((SundryKind[])[SundryKind.Syringe, SundryKind.Needle]).SelectMany(k => Enumerable.Range(0, Sizes).Select(size => Match(new(k, size))))];
    }

    /// <summary>The lines that serve, taken together; null where the bench lists none.</summary>
    public StockMaterial? Find(Sundry sundry) =>
        sundry.Size == 0 ? plain[(int)sundry.Kind]
        : sundry.Size < Sizes ? sized[(sundry.Kind == SundryKind.Syringe ? 0 : Sizes) + sundry.Size]
        : Match(sundry);

    /// <summary>Whether the bench lists it in that very size.</summary>
    public bool Lists(Sundry sundry) => Find(sundry) is { } found && sundry.IsSized(found.Text);

    /// <summary>
    /// One sort of thing only: the first of the wanted size where there is such, else the first that is called alike and says no size. A line of another
    /// size is another thing.
    /// </summary>
    private StockMaterial? Match(Sundry sundry)
    {
        var alike = things.Where(t => sundry.IsCalled(t.Text)).ToList();
        return alike.Find(t => sundry.IsSized(t.Text)) ?? alike.Find(t => sundry.Size == 0 || !sundry.SaysASize(t.Text));
    }
}
