using System.Text.Json.Nodes;
using Protocolist.Reading;
using Protocolist.Specimens;
using static Protocolist.Protocols.Schema.SchemaParts;

namespace Protocolist.Protocols.Schema;

/// <summary>The schema of specimen files. A test holds its keys against those that the reader asks for.</summary>
internal static class SpecimenSchema
{
    public static JsonObject Build(Kinds kinds) => Document(
        "Protocolist: specimen",
        Closed(
            "One dead animal, or several of a kind as one lot.",
            [("format", Format()), ("specimen", Text("Its catalogue or field number.")), .. Measured(kinds)],
            "format",
            "specimen"));

    /// <summary>What is measured and noted: the whole file but its first two keys, and the specimen of a worked example.</summary>
    public static IEnumerable<(string Key, JsonObject Value)> Measured(Kinds kinds) =>
    [
        ("group", Words(kinds.Groups.Select(g => g.Id), "The taxon group.")),
        ("scientific-name", Text("Genus and species, where known.")),
        ("higher-taxon", Text("An order, class or phylum, where the group is not given.")),
        ("count", Whole(1, "Animals in the lot; 1 where not given.")),
        ("mass", Quantity("Mass of one animal, the largest of a lot.")),
        ("lot-mass", Quantity("Mass of all animals together.")),
        ("displacement-volume", Quantity("Volume of one animal, by displacement.")),
        ("length", Quantity("The length that is usual for the group.")),
        ("total-length", Quantity("From tip to tip.")),
        ("standard-length", Quantity("Of fishes: snout to the base of the tail fin.")),
        ("snout-vent-length", Quantity("Of amphibians and reptiles.")),
        ("head-body-length", Quantity("Of mammals: without the tail.")),
        ("carapace-length", Quantity("Of crustaceans and turtles.")),
        ("mantle-length", Quantity("Of cephalopods: the mantle on the back.")),
        ("disc-width", Quantity("Of rays, jellyfish and echinoderms.")),
        ("forearm-length", Quantity("Of bats: the folded forearm.")),
        ("carapace-width", Quantity("Of crabs and horseshoe crabs: across the carapace.")),
        ("egg-diameter", Quantity("Of eggs: across, without the jelly.")),
        ("ventral-mantle-length", Quantity("Of octopuses: the mantle on the belly side.")),
        ("body-length", Quantity("Of scorpions: without the tail.")),
        ("girth", Quantity("Round the thickest place.")),
        ("width", Quantity("Side to side at the thickest place.")),
        ("height", Quantity("Back to belly at the thickest place.")),
        ("thickness", Quantity("Through the thickest place, the shorter way.")),
        ("sex", Words(EnumWords<Sex>.All, "Sex, where known.")),
        ("life-stage", Words(EnumWords<LifeStage>.All, "How far grown.")),
        ("condition", Words(EnumWords<Condition>.All, "How the body arrived.")),
        ("died-at", Text("Date, time and distance from UTC: 2027-03-01T06:30+00:00.")),
        ("found-on", Text("Date: 2027-03-01.")),
        ("where", Text("Where it was found or taken.")),
        ("how-obtained", Text("How it was obtained.")),
        ("collected-by", Text("By whom.")),
        ("permits", Texts("Permits under which it is kept.")),
        ("intended-use", Words(EnumWords<IntendedUse>.All, "What it is for.")),
        ("posture", Text("How it shall be laid, in a word of its group: wings-spread, tail-along.")),
        ("notes", Text("Anything else.")),
    ];
}
