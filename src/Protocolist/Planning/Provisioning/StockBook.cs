using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using Protocolist.Planning.Purchasing;

namespace Protocolist.Planning.Provisioning;

/// <summary>The bench's fluids and salts by substance: what can be mixed from, and which bottles each substance stands in.</summary>
internal sealed class StockBook
{
    private StockBook(ImmutableArray<Material> materials) => Materials = materials;

    /// <summary>One substance: all bottles and bags of it. Used fixative is never one with fresh; each lot of it stands alone.</summary>
    public sealed record Material(string Name, ImmutableArray<StockItem> Items, Fluid? Fluid, Salt? Salt)
    {
        public bool IsSpent => Items[0].Uses > 0;

        public bool CanBeBought => Items.Any(i => i.Packs.Any(p => p.CanBeBought));

        /// <summary>The pack sizes of all its items together.</summary>
        public ImmutableArray<Pack> Packs => [.. Items.SelectMany(i => i.Packs).Distinct()];

        public Amount Usable(LocalDate on) => Items.Where(i => i.IsUsable(on)).Aggregate(Amount.Zero(Items[0].OnHand.Kind), (sum, i) => sum + i.OnHand);

        public bool IsToBeHad(LocalDate on) => CanBeBought || Usable(on).Units > 0;

        public Product AsProduct(LocalDate on) => new(Name, Usable(on), Packs);

        /// <summary>As the recipe solver sees it; limited by what is there where no more can be bought.</summary>
        public StockFluid AsStock(LocalDate on) => Unlimited with { OnHand = CanBeBought ? null : Usable(on).Volume };

        public StockFluid Unlimited => new(Fluid!)
        {
            Label = Name,
            CostPerLitre = Packs.Where(p => p.CanBeBought).Select(p => (double)p.Price!.Amount / p.Size.Volume.Liters).DefaultIfEmpty(0).Min(),
        };
    }

    /// <summary>In the order of the bench file.</summary>
    public ImmutableArray<Material> Materials { get; }

    public bool IsEmpty => Materials.IsEmpty;

    public static StockBook Of(IEnumerable<StockItem> stock) => new(
    [
        .. stock.Where(i => i.Kind is StockKind.Fluid or StockKind.Salt)
            .GroupBy(NameOf, StringComparer.Ordinal)
            .Select(g => new Material(g.Key, [.. g], g.First().Kind == StockKind.Fluid ? FluidOf(g.First()) : null, g.First().Kind == StockKind.Salt ? Salts.Read(g.Key).Value : null)),
    ]);

    public IEnumerable<Material> FluidsAtHand(LocalDate on) => Materials.Where(m => m.Fluid is not null && m.IsToBeHad(on));

    public IEnumerable<Salt> SaltsAtHand(LocalDate on) => Materials.Where(m => m.Salt is not null && m.IsToBeHad(on)).Select(m => m.Salt!);

    public Material? Find(RecipePart part) =>
        part.Salt is { } salt ? Materials.FirstOrDefault(m => m.Salt == salt) : Materials.FirstOrDefault(m => m.Fluid is not null && m.Name == part.Name);

    /// <summary>The fluid of a bottle; a buffering that stands beside the name is part of it.</summary>
    private static Fluid? FluidOf(StockItem item)
    {
        var name = Plain(item);
        var plain = Fluid.Read(name).Value;
        if (item.Buffering is not { } buffering || plain is null or { Buffering: not Buffering.None } || buffering == "none") return plain;
        var word = buffering == "phosphate" ? "neutral buffered" : $"{buffering}-buffered";
        return Fluid.Read($"{word} {name}").Value ?? plain;
    }

    /// <summary>What is usable of a material, in m3 or kg; nothing of what is not listed.</summary>
    public double OnHand(string name, LocalDate on) => Materials.FirstOrDefault(m => m.Name == name) is { } material ? InSi(material.Usable(on)) : 0;

    private static double InSi(Amount amount) => amount.Kind == AmountKind.Volume ? amount.Volume.CubicMeters : amount.Mass.Kilograms;

    private static string NameOf(StockItem item) => item switch
    {
        { Kind: StockKind.Fluid, Uses: > 0 } => $"{Plain(item)} ({item.Id}, used {item.Uses} {(item.Uses == 1 ? "time" : "times")})",
        { Kind: StockKind.Fluid, Buffering: not null } => FluidOf(item)?.Name ?? Plain(item),
        _ => Plain(item),
    };

    private static string Plain(StockItem item) => string.Join(' ', ((string?[])[item.Substance, item.Strength, item.Hydrate]).Where(t => !string.IsNullOrWhiteSpace(t)));
}
