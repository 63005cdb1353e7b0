using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Planning;

/// <summary>The bench's stock by substance: what can be mixed from, and which bottles each substance stands in.</summary>
internal sealed class StockBook
{
    private readonly ImmutableArray<Material> _materials;

    private StockBook(ImmutableArray<Material> materials) => _materials = materials;

    /// <summary>One substance: all bottles and bags of it.</summary>
    public sealed record Material(string Name, ImmutableArray<StockItem> Items, Fluid? Fluid, Salt? Salt)
    {
        public bool CanBeBought => Items.Any(i => i.Packs.Any(p => p.CanBeBought));

        /// <summary>The pack sizes of all its items together.</summary>
        public ImmutableArray<Pack> Packs => [.. Items.SelectMany(i => i.Packs).Distinct()];

        public Amount Usable(LocalDate on) => Items.Where(i => i.IsUsable(on)).Aggregate(Amount.Zero(Items[0].OnHand.Kind), (sum, i) => sum + i.OnHand);

        public StockFluid AsStock(LocalDate on) => new(Fluid!)
        {
            Label = Name,
            OnHand = CanBeBought ? null : Usable(on).Volume,
            CostPerLitre = Packs.Where(p => p.CanBeBought).Select(p => (double)p.Price!.Amount / p.Size.Volume.Liters).DefaultIfEmpty(0).Min(),
        };
    }

    public bool IsEmpty => _materials.IsEmpty;

    public static StockBook Of(IEnumerable<StockItem> stock) => new(
    [
        .. stock.Where(i => i.Kind is StockKind.Fluid or StockKind.Salt)
            .GroupBy(NameOf, StringComparer.Ordinal)
            .Select(g => new Material(g.Key, [.. g], g.First().Kind == StockKind.Fluid ? Fluid.Read(g.Key).Value : null, g.First().Kind == StockKind.Salt ? Salts.Read(g.Key).Value : null)),
    ]);

    public ImmutableArray<StockFluid> Stocks(LocalDate on) =>
        [.. _materials.Where(m => m.Fluid is not null && (m.CanBeBought || m.Usable(on).Units > 0)).Select(m => m.AsStock(on))];

    public ImmutableArray<Salt> SaltsAtHand(LocalDate on) =>
        [.. _materials.Where(m => m.Salt is not null && (m.CanBeBought || m.Usable(on).Units > 0)).Select(m => m.Salt!)];

    public Material? Find(RecipePart part) =>
        part.Salt is { } salt ? _materials.FirstOrDefault(m => m.Salt == salt) : _materials.FirstOrDefault(m => m.Fluid is not null && m.Name == part.Name);

    /// <summary>What is usable of a material, in m3 or kg; nothing of what is not listed.</summary>
    public double OnHand(string name, LocalDate on) => _materials.FirstOrDefault(m => m.Name == name) is { } material ? InSi(material.Usable(on)) : 0;

    private static double InSi(Amount amount) => amount.Kind == AmountKind.Volume ? amount.Volume.CubicMeters : amount.Mass.Kilograms;

    private static string NameOf(StockItem item) => string.Join(' ', ((string?[])[item.Substance, item.Strength, item.Hydrate]).Where(t => !string.IsNullOrWhiteSpace(t)));
}
