using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;
using static Protocolist.Specimens.LengthKind;

namespace Protocolist.Specimens.Groups;

/// <summary>Finer words for a body: what parts a kind of animal from its like is what it weighs for its length, and the tail.</summary>
/// <remarks>
/// Where a source gives no accept factor it is the project's judgement: for species means the factor that 99 of 100 species lie within, 2.4 to 3.4;
/// for single animals of one species 1.6 to 2.0.
/// </remarks>
internal static class FinerGroups
{
    public static readonly ImmutableArray<GroupRow> Rows =
    [
        // Mammals.
        Finer("mouse", "rodent", "mouse or rat", ["Muridae"], [Means(HeadBody, 0.02987, 3, 193, 1.68, 2.7, Pantheria)])
            with { TotalPerLength = Band(1.8, 1.95, 2.1, Memory) },
        Finer("vole", "rodent", "vole, hamster or lemming", ["Cricetidae"], [Means(HeadBody, 0.02734, 3, 119, 1.62, 3, Pantheria)])
            with { TotalPerLength = Band(1.15, 1.35, 1.9, Memory) },
        Finer("squirrel", "rodent", "squirrel, chipmunk or marmot", ["Sciuridae"], [Means(HeadBody, 0.03059, 3, 148, 1.65, 2.2, Pantheria)])
            with { TotalPerLength = Band(1.3, 1.8, 1.95, Memory) },
        Finer("pocket-mouse", "rodent", "pocket mouse", ["Heteromyidae"], [Means(HeadBody, 0.03812, 3, 43, 1.51, 3, Pantheria)]),
        Finer("pocket-gopher", "rodent", "pocket gopher", ["Geomyidae"], [Means(HeadBody, 0.03937, 3, 16, 1.46, 1.9, Pantheria)]),
        Finer("dormouse", "rodent", "dormouse", ["Gliridae"], [Means(HeadBody, 0.03535, 3, 9, 1.63, 2, Pantheria)]),
        Finer("true-shrew", "shrew", "shrew of the family Soricidae", ["Soricidae"], [Means(HeadBody, 0.02405, 3, 69, 1.74, 3.1, Pantheria)])
            with { TotalPerLength = Band(1.4, 1.6, 1.9, Memory) },
        Finer("mole", "shrew", "mole", ["Talpidae"], [Means(HeadBody, 0.03214, 3, 19, 1.6, 2, Pantheria)])
            with { TotalPerLength = Band(1.1, 1.2, 1.5, Unsure) },
        Finer("hedgehog", "shrew", "hedgehog", ["Erinaceidae", "Erinaceomorpha"], [Means(HeadBody, 0.04019, 3, 12, 1.89, 2.6, Pantheria)])
            with { TotalPerLength = Band(1.03, 1.08, 1.15, Unsure) },
        Finer("spiny-hedgehog", "hedgehog", "spiny hedgehog", ["Erinaceinae"], [Means(HeadBody, 0.04974, 3, 9, 1.88, 2.2, Pantheria)]),
        Finer("tenrec", "mammal", "tenrec or golden mole", ["Afrosoricida", "Tenrecidae"], [Means(HeadBody, 0.02716, 3, 27, 1.69, 2.6, Pantheria)]),
        Finer("hare", "mammal", "hare, rabbit or pika", ["Lagomorpha"], [Means(HeadBody, 0.05229, 2.784, 54, 1.38, 2, Pantheria)])
            with { TotalPerLength = Band(1.03, 1.1, 1.2, Unsure) },
        Finer("rabbit", "hare", "hare or rabbit", ["Leporidae"], [Means(HeadBody, 0.02309, 3, 42, 1.3, 2.1, Pantheria)]),
        Finer("primate", "mammal", "monkey, ape or lemur", ["Primates"], [Means(HeadBody, 0.02044, 3.162, 179, 1.84, 3.2, Pantheria)]),
        Finer("hoofed", "mammal", "even-toed hoofed mammal", ["Artiodactyla"], [Means(HeadBody, 0.02349, 3, 146, 2.02, 3.3, Pantheria)])
            with { TotalPerLength = Band(1.03, 1.12, 1.3, Unsure) },
        Finer("deer", "hoofed", "deer", ["Cervidae"], [Means(HeadBody, 0.02012, 3, 22, 1.97, 2.9, Pantheria)]),
        Finer("bovid", "hoofed", "antelope, goat or wild ox", ["Bovidae"], [Means(HeadBody, 0.02367, 3, 97, 1.92, 3.1, Pantheria)]),
        Finer("pig", "hoofed", "wild pig", ["Suidae"], [Means(HeadBody, 0.04557, 3, 10, 1.96, 2.8, Pantheria)]),
        Finer("odd-toed", "mammal", "odd-toed hoofed mammal", ["Perissodactyla"], [Means(HeadBody, 0.03168, 3, 11, 1.58, 3, Pantheria)]),
        Finer("opossum", "mammal", "opossum", ["Didelphimorphia", "Didelphidae"], [Means(HeadBody, 0.02157, 3, 58, 1.71, 3, Pantheria)])
            with { TotalPerLength = Band(1.6, 2, 2.3, Unsure) },
        Finer("dasyurid", "mammal", "marsupial mouse or quoll", ["Dasyuromorphia", "Dasyuridae"], [
                Means(HeadBody, 0.02778, 3, 27, 1.59, 2.4, Pantheria)]),
        Finer("possum", "mammal", "possum, wallaby or kangaroo", ["Diprotodontia"], [Means(HeadBody, 0.03076, 3, 53, 1.72, 2.6, Pantheria)])
            with { TotalPerLength = Band(1.6, 1.75, 1.9, "possums, DAAG data, n 104") },
        Finer("bandicoot", "mammal", "bandicoot", ["Peramelemorphia", "Peramelidae"], [Means(HeadBody, 0.02334, 3, 14, 2.33, 3, Pantheria)]),
        Finer("elephant-shrew", "mammal", "elephant shrew", ["Macroscelidea"], [Means(HeadBody, 0.02878, 3, 9, 1.14, 2.2, Pantheria)]),
        Finer("tree-shrew", "mammal", "tree shrew", ["Scandentia"], [Means(HeadBody, 0.0264, 3, 13, 1.53, 2.4, Pantheria)]),
        Finer("armadillo", "mammal", "armadillo", ["Cingulata"], [Means(HeadBody, 0.04908, 3, 10, 1.45, 2, Pantheria)]),
        Finer("sloth", "mammal", "sloth or anteater", ["Pilosa"], [Means(HeadBody, 0.02549, 3, 6, 1.53, 2.2, Pantheria)]),
        Finer("pangolin", "mammal", "pangolin", ["Pholidota"], [Means(HeadBody, 0.05928, 3, 4, 2.24, 3, Pantheria)]),
        Finer("monotreme", "mammal", "echidna or platypus", ["Monotremata"], [Means(HeadBody, 0.03506, 3, 3, 2.28, 3, Pantheria)]),
        Finer("newborn-mammal", "mammal", "newborn mammal", [], [Means(HeadBody, 0.1039, 2.581, 141, 2.09, 4, Pantheria)]),
        Finer("weasel", "carnivore", "weasel, otter or badger", ["Mustelidae"], [Means(HeadBody, 0.01866, 3, 49, 1.98, 3.2, Pantheria)])
            with { TotalPerLength = Band(1.2, 1.45, 1.65, Unsure) },
        Finer("dog", "carnivore", "fox or wild dog", ["Canidae"], [Means(HeadBody, 0.02062, 3, 31, 1.63, 2.2, Pantheria)])
            with { TotalPerLength = Band(1.4, 1.55, 1.65, Memory) },
        Finer("cat", "carnivore", "wild cat", ["Felidae"], [Means(HeadBody, 0.02163, 3, 32, 1.75, 2.4, Pantheria)])
            with { TotalPerLength = Band(1.4, 1.55, 1.8, Memory) },
        Finer("bear", "carnivore", "bear", ["Ursidae"], [Means(HeadBody, 0.03611, 3, 8, 1.63, 2.2, Pantheria)])
            with { TotalPerLength = Band(1.02, 1.07, 1.12, Memory) },
        Finer("civet", "carnivore", "civet or genet", ["Viverridae"], [Means(HeadBody, 0.01706, 3, 27, 1.6, 2, Pantheria)]),
        Finer("mongoose", "carnivore", "mongoose", ["Herpestidae"], [Means(HeadBody, 0.02235, 3, 27, 1.65, 2.2, Pantheria)]),
        Finer("raccoon", "carnivore", "raccoon or coati", ["Procyonidae"], [Means(HeadBody, 0.02533, 3, 10, 2.13, 2.6, Pantheria)]),
        Finer("whale", "marine-mammal", "whale or dolphin", ["Cetacea", "Delphinidae", "Phocoenidae"], [
                Means(Total, 0.03574, 2.81, 43, 2.45, 4, Pantheria)])
            with { Within = ["Artiodactyla", "Cetartiodactyla"] },
        Finer("seal", "marine-mammal", "seal, sea lion or walrus", ["Pinnipedia"], [Means(Total, 0.04832, 2.849, 34, 1.62, 2.4, Pantheria)])
            with { Within = ["Carnivora"] },
        Finer("true-seal", "seal", "true seal", ["Phocidae"], [Means(Total, 0.02238, 3, 19, 1.54, 2.2, Pantheria)]),
        Finer("sea-lion", "seal", "sea lion or fur seal", ["Otariidae"], [Means(Total, 0.02053, 3, 14, 1.61, 2.4, Pantheria)]),
        Finer("sea-cow", "marine-mammal", "manatee or dugong", ["Sirenia"], [Means(Total, 0.01283, 3, 5, 1.51, 2.2, Pantheria)]),
        Finer("fruit-bat", "bat", "fruit bat", ["Pteropodidae"], [
                Means(HeadBody, 0.04466, 3, 77, 1.74, 2.5, Pantheria),
                Means(Forearm, 0.2773, 2.759, 136, 1.35, 1.9, Pantheria)]),
        Finer("vesper-bat", "bat", "vesper bat", ["Vespertilionidae"], [
                Means(HeadBody, 0.07087, 3, 19, 1.36, 2.6, Pantheria),
                Means(Forearm, 0.2468, 2.589, 198, 1.58, 2.3, Pantheria)]),
        Finer("leaf-nosed-bat", "bat", "American leaf-nosed bat", ["Phyllostomidae"], [
                Means(HeadBody, 0.06989, 3, 22, 1.3, 2.2, Pantheria),
                Means(Forearm, 0.4677, 2.43, 116, 1.58, 2.4, Pantheria)]),
        Finer("free-tailed-bat", "bat", "free-tailed bat", ["Molossidae"], [Means(Forearm, 0.826, 2.081, 50, 1.65, 2.4, Pantheria)]),
        Finer("horseshoe-bat", "bat", "horseshoe bat", ["Rhinolophidae"], [Means(Forearm, 0.1029, 2.946, 43, 1.3, 1.9, Pantheria)]),
        Finer("roundleaf-bat", "bat", "roundleaf bat", ["Hipposideridae"], [Means(Forearm, 0.131, 2.759, 42, 1.52, 1.9, Pantheria)]),
        Finer("sheath-tailed-bat", "bat", "sheath-tailed bat", ["Emballonuridae"], [Means(Forearm, 0.04284, 3.39, 36, 1.5, 3.1, Pantheria)]),

        // Birds, by order.
        Finer("songbird", "bird", "songbird or other perching bird", ["Passeriformes"], [Means(Total, 0.02145, 2.516, 534, 1.66, 2.7, BirdTables)]),
        Finer("gull", "bird", "gull, tern, auk or wader", ["Charadriiformes"], [Means(Total, 0.05808, 2.34, 177, 1.93, 3, BirdTables)]),
        Finer("petrel", "bird", "petrel, shearwater or albatross", ["Procellariiformes"], [Means(Total, 0.0123, 2.837, 71, 1.52, 2.4, BirdTables)]),
        Finer("duck", "bird", "duck, goose or swan", ["Anseriformes"], [Means(Total, 0.1046, 2.316, 66, 1.58, 2.4, BirdTables)]),
        Finer("parrot", "bird", "parrot", ["Psittaciformes"], [Means(Total, 0.01958, 2.553, 57, 2.06, 3, BirdTables)]),
        Finer("heron", "bird", "heron, ibis or pelican", ["Pelecaniformes"], [Means(Total, 0.01475, 2.587, 49, 1.89, 3, BirdTables)]),
        Finer("hawk", "bird", "hawk, eagle or vulture", ["Accipitriformes"], [Means(Total, 0.002314, 3.222, 47, 1.5, 2.4, BirdTables)]),
        Finer("pigeon", "bird", "pigeon", ["Columbiformes"], [Means(Total, 0.01209, 2.841, 39, 1.53, 2.5, BirdTables)]),
        Finer("gamebird", "bird", "pheasant, quail or grouse", ["Galliformes"], [Means(Total, 0.1363, 2.283, 35, 1.91, 3, BirdTables)]),
        Finer("rail", "bird", "rail or crane", ["Gruiformes"], [Means(Total, 0.02237, 2.682, 29, 1.92, 3, BirdTables)]),
        Finer("owl", "bird", "owl", ["Strigiformes"], [Means(Total, 0.07528, 2.375, 25, 1.72, 2.4, BirdTables)]),
        Finer("nightjar", "bird", "nightjar or swift", ["Caprimulgiformes"], [Means(Total, 0.005343, 3, 18, 2.24, 2.8, BirdTables)]),
        Finer("kingfisher", "bird", "kingfisher, bee-eater or roller", ["Coraciiformes"], [Means(Total, 0.004585, 3, 17, 1.94, 2.4, BirdTables)]),
        Finer("falcon", "bird", "falcon", ["Falconiformes"], [Means(Total, 0.007102, 3, 16, 1.56, 2.4, BirdTables)]),
        Finer("cuckoo", "bird", "cuckoo", ["Cuculiformes"], [Means(Total, 0.003329, 3, 15, 1.74, 2.4, BirdTables)]),

        // Reptiles.
        Finer("wall-lizard", "lizard", "lizard of the family Lacertidae", ["Lacertidae"], [
                Means(SnoutVent, 0.02559, 2.951, 139, 1.39, 2.4, Feldman)]),
        Finer("gecko", "lizard", "gecko of the family Gekkonidae", ["Gekkonidae"], [Means(SnoutVent, 0.03304, 2.761, 120, 1.6, 2.6, Feldman)]),
        Finer("leaf-toed-gecko", "lizard", "gecko of the family Phyllodactylidae", ["Phyllodactylidae"], [
                Means(SnoutVent, 0.02904, 2.945, 23, 1.47, 2.4, Feldman)]),
        Finer("dwarf-gecko", "lizard", "gecko of the family Sphaerodactylidae", ["Sphaerodactylidae"], [
                Means(SnoutVent, 0.02582, 2.97, 34, 1.74, 2.4, Feldman)]),
        Finer("southern-gecko", "lizard", "gecko of the family Diplodactylidae", ["Diplodactylidae"], [
                Means(SnoutVent, 0.01791, 3.057, 32, 1.52, 2.4, Feldman)]),
        Finer("knob-tailed-gecko", "lizard", "gecko of the family Carphodactylidae", ["Carphodactylidae"], [
                Means(SnoutVent, 0.08091, 2.353, 8, 1.4, 2.4, Feldman)]),
        Finer("eyelid-gecko", "lizard", "gecko of the family Eublepharidae", ["Eublepharidae"], [
                Means(SnoutVent, 0.01132, 3.255, 20, 2.18, 3.2, Feldman)]),
        Finer("chameleon", "lizard", "chameleon", ["Chamaeleonidae"], [Means(SnoutVent, 0.04819, 2.68, 40, 1.45, 2.4, Feldman)]),
        Finer("collared-lizard", "lizard", "collared lizard", ["Crotaphytidae"], [Means(SnoutVent, 1.099, 1.569, 12, 1.32, 2.4, Feldman)]),
        Finer("plated-lizard", "lizard", "plated lizard", ["Gerrhosauridae"], [Means(SnoutVent, 0.02004, 3.085, 9, 1.27, 2.4, Feldman)]),
        Finer("iguana", "lizard", "iguana", ["Iguanidae"], [Means(SnoutVent, 0.04721, 2.972, 23, 1.85, 3.5, Feldman)]),
        Finer("agama", "lizard", "agama", ["Agamidae"], [Means(SnoutVent, 0.02624, 3.105, 100, 2.09, 3.4, Feldman)]),
        Finer("girdled-lizard", "lizard", "girdled lizard", ["Cordylidae"], [Means(SnoutVent, 0.00695, 3.589, 26, 1.84, 2.8, Feldman)]),
        Finer("spectacled-lizard", "lizard", "spectacled lizard", ["Gymnophthalmidae"], [Means(SnoutVent, 0.0133, 3.302, 29, 1.4, 2.4, Feldman)]),
        Finer("skink", "lizard", "skink", ["Scincidae"], []),
        Finer("anguid", "lizard", "slow worm, glass or alligator lizard", ["Anguidae"], []),
        Finer("legged-skink", "skink", "skink with four good legs", [], [Means(SnoutVent, 0.01271, 3.229, 216, 1.72, 2.4, Feldman)]),
        Finer("spiny-lizard", "lizard", "spiny or horned lizard", ["Phrynosomatidae"], [Means(SnoutVent, 0.06637, 2.677, 83, 1.38, 2.4, Feldman)]),
        Finer("whiptail", "lizard", "whiptail or tegu", ["Teiidae"], [Means(SnoutVent, 0.02307, 3.11, 45, 1.4, 2.4, Feldman)]),
        Finer("lava-lizard", "lizard", "lizard of the family Tropiduridae", ["Tropiduridae"], [
                Means(SnoutVent, 0.06839, 2.719, 21, 1.5, 2.4, Feldman)]),
        Finer("swift-iguana", "lizard", "lizard of the family Opluridae", ["Opluridae"], [Means(SnoutVent, 0.00317, 3.94, 7, 1.17, 2.8, Feldman)]),
        Finer("monitor", "lizard", "monitor lizard", ["Varanidae"], [Means(SnoutVent, 0.00859, 3.235, 51, 1.9, 2.7, Feldman)]),
        Finer("night-lizard", "lizard", "night lizard", ["Xantusiidae"], [Means(SnoutVent, 0.01786, 3.048, 17, 1.17, 2.4, Feldman)]),
        Finer("knob-scaled-lizard", "lizard", "knob-scaled lizard", ["Xenosauridae"], [Means(SnoutVent, 0.00547, 3.571, 6, 1.25, 2.8, Feldman)]),
        Finer("short-legged-lizard", "lizard", "lizard with reduced legs", [], [Means(SnoutVent, 0.006706, 3, 35, 1.92, 2.6, Amniote)]),
        Finer("legless-lizard", "lizard", "legless lizard", ["Anguinae", "Pygopodidae", "Dibamidae"], [
                Means(SnoutVent, 0.001823, 3, 38, 3.52, 5, Amniote)]),
        Finer("worm-lizard", "lizard", "worm lizard", ["Amphisbaenia", "Amphisbaenidae"], [
                Means(SnoutVent, 0.001216, 2.943, 8, 1.49, 2.4, Feldman)]),
        Finer("thread-snake", "snake", "thread-thin tree snake", ["Imantodini"], [Fitted(SnoutVent, 5.148e-05, 3, 114, 1.55, 2.5, Zipkin)]),
        Finer("vine-snake", "snake", "vine snake", [], [Fitted(SnoutVent, 8.957e-05, 3, 174, 1.57, 2.5, Zipkin)]),
        Finer("tree-snake", "snake", "slender tree or snail-eating snake", [], [Fitted(SnoutVent, 0.000168, 3, 149, 1.55, 2.5, Zipkin)]),
        Finer("slender-snake", "snake", "slender ground snake", [], [Fitted(SnoutVent, 0.0002083, 3, 41, 1.81, 3.1, Zipkin)]),
        Finer("grass-snake", "snake", "grass, rat or king snake", ["Natricidae"], [
                new(SnoutVent, 0.0003, 3, 2.5, "from memory of field guides, unsure")]),
        Finer("tree-viper", "snake", "tree viper", [], [Fitted(SnoutVent, 0.0003368, 3, 33, 1.79, 2.6, Zipkin)]),
        Finer("stout-snake", "snake", "small stout ground snake", [], [Fitted(SnoutVent, 0.0005983, 3, 16, 1.24, 2.5, Zipkin)]),
        Finer("boa", "snake", "boa or python", ["Boidae", "Pythonidae"], [new(SnoutVent, 0.00065, 3, 2.8, Unsure)]),
        Finer("pit-viper", "snake", "rattlesnake, cottonmouth or other stout viper", ["Crotalinae"], [
                Fitted(SnoutVent, 0.001446, 3, 10, 1.31, 3.2, "Hill & Beaupre 2008, in an Add-my-Pet entry"),
                Fitted(Total, 0.000677, 3, 32, 1.23, 2.2, "Conner et al. 2003, digitised in an Add-my-Pet entry")]),
        Finer("tortoise", "turtle", "tortoise", ["Testudinidae"], [Fitted(Carapace, 0.1926, 3, 63, 1.13, 1.8, GolemGrad)]),
        Finer("turtle-hatchling", "turtle", "hatchling of a sea turtle", [], [
                Fitted(Carapace, 0.2105, 3, 2405, 1.14, 1.6, "NOAA Galveston hatchling data")]),
        Finer("soft-turtle", "turtle", "soft-shelled or flat turtle", ["Trionychidae", "Chelidae"], [
                new(Carapace, 0.11, 3, 2, "from memory, unsure; pitted snake-neck 0.11 to 0.12 in an Add-my-Pet entry")]),

        // Amphibians. Of so few European species the spread of the world's is not known: the accept factor is that of all frogs.
        Finer("toad", "frog", "toad", ["Bufonidae"], [Means(SnoutVent, 0.17, 3, 5, 1.3, 3, Trochet)]),
        Finer("pond-frog", "frog", "frog of the family Ranidae", ["Ranidae"], [Means(SnoutVent, 0.105, 3, 11, 1.6, 3, Trochet)]),
        Finer("tree-frog", "frog", "tree frog", ["Hylidae"], [Means(SnoutVent, 0.072, 3, 4, 1.4, 3, Trochet)]),
        Finer("clawed-frog", "frog", "clawed frog", ["Pipidae"], [new(SnoutVent, 0.16, 3, 3, "captive adults from memory; Trochet et al. 2014 has 0.24")]),
        Finer("giant-salamander", "salamander", "Pacific giant salamander", ["Dicamptodontidae"], [
                Fitted(SnoutVent, 0.0482, 2.842, 6265, 1.24, 1.8, Andrews)]),
        Finer("eel-salamander", "salamander", "olm, siren or amphiuma", ["Proteidae", "Sirenidae", "Amphiumidae"], [
                new(SnoutVent, 0.0027, 3, 3, Trochet) { Count = 1 }]),

        // Fishes, by body form.
        Finer("pike-like", "bony-fish", "slender fish, as pike or garfish", ["Esocidae", "Belonidae"], [new(Total, 0.00389, 3.12, 2.8, FishForms)])
            with { Shape = FishGroups.Slender },
        Finer("spindle-fish", "bony-fish", "spindle-shaped fish, as trout or cod", ["Salmonidae", "Gadidae"], [
                new(Total, 0.01122, 3.04, 2.8, FishForms)]),
        Finer("deep-fish", "bony-fish", "deep-bodied fish, as bream or sunfish", ["Centrarchidae", "Sparidae"], [
                new(Total, 0.01995, 3.01, 2.9, FishForms)])
            with { Shape = FishGroups.Deep },
        Finer("skate", "ray", "skate or guitarfish", ["Rajidae", "Rhinobatidae", "Arhynchobatidae"], [])
            with { TotalPerLength = Band(1.25, 1.45, 1.7, Unsure) },
        Finer("whip-ray", "ray", "stingray or eagle ray with a whip tail", ["Dasyatidae", "Myliobatidae"], [])
            with { TotalPerLength = Band(1.9, 2.5, 4, "common practice, unsure: whip-tails 2.5 to 4") },
        Finer("eel-like", "bony-fish", "eel-like fish that is no eel", [], [new(Total, 0.001023, 3.06, 2.9, FishForms)])
            with { Shape = FishGroups.Eel },

        // Crustaceans, insects, arachnids, myriapods.
        Finer("prawn", "decapod", "prawn or shrimp", ["Caridea", "Penaeidae", "Dendrobranchiata"], [
                new(Carapace, 0.7725, 3.024, 2, "pink shrimp males, Diaz et al. 2001, abstract (females 0.000865 CL^2.951, mm)") { Count = 440 },
                new(Total, 0.0083, 3, 2.2, "from the row above with TL = 11.636 + 3.985 CL (mm)")])
            with { TotalPerLength = Band(4, 4.5, 6, "Diaz et al. 2001: TL mm = 11.6 + 3.985·CL") },
        Finer("lobster", "decapod", "lobster", ["Nephropidae", "Palinuridae"], [
                new(Carapace, 0.8464, 2.962, 2, "Homarus americanus, Baggio 2011, abstract"),
                new(Total, 0.034, 3, 2.2, "lobster TL about 2.9 CL, crayfish TL about 2.0 CL, from memory")])
            with { TotalPerLength = Band(2.6, 2.9, 3.2, Memory) },
        Finer("crayfish", "decapod", "crayfish", ["Astacidae", "Cambaridae", "Parastacidae"], [
                new(Carapace, 0.8464, 2.962, 2.6, "Homarus americanus, Baggio 2011, abstract"),
                new(Total, 0.034, 3, 2.2, "lobster TL about 2.9 CL, crayfish TL about 2.0 CL, from memory")])
            with { TotalPerLength = Band(1.8, 2, 2.3, Memory) },
        Finer("woodlouse", "small-crustacean", "woodlouse or other isopod", ["Isopoda"], [
                new(Total, 0.03909, 2.654, 2.5, "Sohlstrom et al. 2018, live mass from length and width, with W/L 0.45")]),
        Finer("amphipod", "small-crustacean", "amphipod", ["Amphipoda"], [
                new(Total, 0.016, 2.9, 2.5, "from memory, unsure (Gammarus 15 mm 50 mg)")]),
        Finer("grasshopper", "insect", "grasshopper or cricket", ["Orthoptera"], [new(Total, 0.04236, 2.267, 2.8, Sohlstrom)]),
        Finer("beetle", "insect", "beetle", ["Coleoptera"], [new(Total, 0.03656, 2.501, 2.8, Sohlstrom)]),
        Finer("bug", "insect", "bug", ["Hemiptera"], [new(Total, 0.03048, 2.386, 2.8, Sohlstrom)]),
        Finer("bee", "insect", "bee, wasp or sawfly", ["Hymenoptera"], [new(Total, 0.04102, 2.73, 2.8, Sohlstrom)]),
        Finer("fly", "insect", "fly", ["Diptera"], [
                new(Total, 0.02588, 2.366, 3, "Rogers et al. 1977 dry mass, as in pollimetry, times 3.0 for water")]),
        Finer("moth", "insect", "moth or butterfly", ["Lepidoptera"], [
                new(Total, 0.03247, 2.903, 3, "Rogers et al. 1977 dry mass, as in pollimetry, times 2.3 for water")]),
        Finer("rove-beetle", "beetle", "rove beetle", ["Staphylinidae"], [new(Total, 0.0114, 2.635, 2.8, Sohlstrom)]),
        Finer("ant", "bee", "ant", ["Formicidae"], [new(Total, 0.02723, 2.744, 2.8, Sohlstrom)]),
        Finer("ichneumon", "bee", "ichneumon wasp", ["Ichneumonidae"], [new(Total, 0.01521, 2.379, 2.8, Sohlstrom)]),
        Finer("caterpillar", "insect-larva", "caterpillar", [], [new(Total, 0.018, 3, 2.6, "from memory, unsure (Manduca 80 mm 10 g)")]),
        Finer("mealworm", "insect-larva", "mealworm-like beetle larva", [], [new(Total, 0.008, 3, 2.6, Unsure)]),
        Finer("spider", "arachnid", "spider", ["Araneae"], [new(Total, 0.07762, 2.623, 3.5, Sohlstrom)]),
        Finer("web-spider", "spider", "web spider", ["Araneidae", "Theridiidae", "Linyphiidae"], [new(Total, 0.08241, 2.693, 3.5, Sohlstrom)]),
        Finer("hunting-spider", "spider", "hunting spider", ["Lycosidae", "Salticidae", "Thomisidae"], [new(Total, 0.05689, 2.256, 3.5, Sohlstrom)]),
        Finer("scorpion", "arachnid", "scorpion", ["Scorpiones"], [
                new(Total, 0.0062, 3, 2.8, "emperor 12.7-20.3 cm up to 35-40 g (two species accounts); Smeringurus 6.9 cm 2.2 g"),
                new(Body, 0.045, 3, 3, "from the row above with total 1.9 to 2.1 of body, from memory")])
            with { OtherLengths = [(Body, Band(0.48, 0.5, 0.53, Memory))], Shape = ArthropodGroups.Scorpion },
        Finer("centipede", "myriapod", "centipede", ["Chilopoda"], [
                new(Total, 0.007361, 2.959, 3, "Sohlstrom et al. 2018, live mass from length and width, with W/L 0.10")]),
        Finer("millipede", "myriapod", "millipede", ["Diplopoda"], [new(Total, 0.01104, 2.658, 3, "Sohlstrom et al. 2018, with W/L 0.10")]),

        // Molluscs.
        Finer("cuttlefish", "cephalopod", "cuttlefish", ["Sepiida", "Sepiidae"], [
                new(Mantle, 0.25, 2.8, 2.4, "from memory; 24.1 cm 2800 g and 0.7 cm 0.15 g in Forsythe et al. 1994")]),
        Finer("bobtail", "cephalopod", "bobtail or pygmy squid", ["Sepiolida", "Sepiolidae", "Idiosepiidae"], [
                Fitted(Mantle, 0.55, 2.67, 75, 1.41, 2.4, "digitised in an Add-my-Pet entry (key JoneRick2010; species not read)")]),
        Finer("mussel", "bivalve", "mussel, oyster or scallop", ["Mytilidae", "Ostreidae", "Unionidae", "Pectinidae"], [
                new(Shell, 0.11, 3, 2.8, "a wedge or tellin clam 0.098 (n 75) and a unionid 0.109, in Add-my-Pet entries")]),
        Finer("cockle", "bivalve", "cockle or other inflated clam", ["Cardiidae"], [new(Shell, 0.35, 3, 2.2, Unsure)]),
        Finer("razor-shell", "bivalve", "razor shell", ["Solenidae", "Pharidae"], [new(Shell, 0.013, 3, 2.5, Unsure)]),
        Finer("round-snail", "gastropod", "round or conical sea snail", ["Trochidae", "Littorinidae", "Buccinidae"], [
                new(Shell, 0.25, 3, 3, "top shell 1 cm 0.23 g (Robinson et al. 2010); 2.7 to 4.4 cm 0.20 to 0.31, in Add-my-Pet entries")]),
        Finer("tower-snail", "gastropod", "tower shell", ["Turritellidae", "Terebridae"], [new(Shell, 0.035, 3, 3, Unsure)]),
    ];

    private static GroupRow Finer(
        string id, string parent, string name, ImmutableArray<string> taxa, ImmutableArray<LengthMassRelation> lengthMass) =>
        new(id, parent, name) { Taxa = taxa, LengthMass = lengthMass };
}
