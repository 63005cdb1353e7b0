using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Sheets;

namespace Protocolist.Tests.Planning.Batching;

public class ShoppingListTests
{
    [Fact]
    public void A_name_that_looks_like_a_formula_comes_out_harmless()
    {
        var list = ShoppingList.Write([new PlannedPurchase(Message.Text("=HYPERLINK(\"x\")"), Amount.Of(UnitsNet.Volume.FromLiters(1)), 2, Money.Of(12.5m, "EUR"), 3) { For = ["fix", "house"] }]);
        Assert.Equal("item,pack,count,price,currency,lead days,for\r\n\"'=HYPERLINK(\"\"x\"\")\",1 L,2,12.5,EUR,3,fix house\r\n", list);
    }
}
