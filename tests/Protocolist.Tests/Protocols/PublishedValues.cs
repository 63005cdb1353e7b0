namespace Protocolist.Tests.Protocols;

/// <summary>A value that a handbook or a paper prints, and the worked example of the bundled protocol that holds it.</summary>
/// <param name="Says">What is printed.</param>
/// <param name="Source">Where.</param>
/// <param name="Protocol">The protocol whose example holds it; empty where none does.</param>
/// <param name="Key">What that example expects.</param>
/// <param name="Text">The expectation; where it is a wider range than printed, <paramref name="Why"/> says why.</param>
/// <param name="Why">Why no example holds it, or why it holds it otherwise.</param>
internal sealed record PublishedValue(string Says, string Source, string Protocol, string Key, string Text, string Why = "")
{
    public bool IsHeld => Protocol.Length > 0;
}

/// <summary>A hundred and eleven figures of the literature of fluid preservation, each held by a bundled protocol or listed with the reason why not.</summary>
internal static class PublishedValues
{
    private const string Usgs = "Meador, Cuffney and Gurtz 1993";
    private const string Epa = "Klemm et al. 1993 (from memory)";
    private const string Allen = "Allen, Marine Fishes of South-East Asia";
    private const string Sharks = "natural-history collections list 2011, sharks";
    private const string Michonneau = "Michonneau 2017";
    private const string Polychaetes = "Australian Museum, polychaete methods";
    private const string Schauff = "after Schauff (USDA)";
    private const string Moore = "Moore 2009 and 2018, natural-history collections list";
    private const string OfFluids = "figure of a fluid, not of a protocol; the fluids' own tests";
    private const string OfCare = "care of a kept jar, not a stage of a protocol";
    private const string Relaxing = "relaxes living animals; plans start with dead ones";
    private const string AsANote = "not a setting; told in a note of the protocol";
    private const string ByHand = "mixed by hand as the protocol's text says; the planner knows no such fluid";

    public static readonly PublishedValue[] All =
    [
        // Fluids.
        Not("10 % formalin is 1 part of stock and 9 of water", Usgs + "; Simmons 2009", OfFluids),
        Not("10 % formalin holds 3.7 to 4.0 % formaldehyde", "Western Australian Museum 2011", OfFluids),
        Not("neutral buffered formalin: 4.0 g/L monobasic phosphate", "Simmons 2011; Nagorsen and Peterson 1980", OfFluids),
        Not("neutral buffered formalin: 6.5 g/L dibasic phosphate", "Simmons 2011; Nagorsen and Peterson 1980", OfFluids),
        Not("neutral buffered formalin stands at pH 7.0", "Nagorsen and Peterson 1980", OfFluids),
        Not("stock formalin has pH 3 to 4.6, at the lowest 2.8", "Nagorsen and Peterson 1980; Atkins 1922", OfFluids),
        Not("3 g/L borax in the fixative of fish", Usgs, OfFluids),

        // Fishes.
        Held("fish over 150 mm are slit", Usgs, "fish-medium", "belly-slit", "present"),
        Held("the incision is about 30 mm long", Usgs, "fish-medium", "belly-slit.length", "30 mm"),
        Held("the incision is on the right", Usgs, "fish-medium", "belly-slit.side", "right"),
        Held("fish over 75 mm are slit", Epa, "fish-small", "cut-from", "75 mm"),
        Held("fish over 100 mm are slit", "fish collection text of unsure attribution", "fish-small", "belly-slit", "present", "at 120 mm; the cut begins at 75 mm, the safe side"),
        Held("fish over 150 to 200 mm are slit", Allen, "fish-medium", "belly-slit", "present"),
        Held("the slit is a third of the body cavity or more", Epa, "fish-small", "belly-slit.length", "at least 12 mm", "a third of the cavity of a fish of 120 mm, the cavity three tenths of the length"),
        Not("fish over 160 to 200 mm are slit", "EPA EMAP field manuals (from memory, unsure)", "the figure is uncertain; nothing rests on it"),
        Held("fixing takes 2 days to a week", Usgs, "fish-small", "fix.last", "2 d to 7 d"),
        Held("fish up to 15 or 20 cm stay 3 days at most", "Neumann 2025", "fish-small", "fix.last", "2 d to 3 d"),
        Held("fish are fixed for several weeks", Allen, "fish-large", "fix.last", "14 d to 28 d"),
        Held("fish up to 15 cm take about 3 days", "fish collection text of unsure attribution", "fish-small", "fix.last", "2 d to 3 d"),
        Held("the wash takes 48 h with one change", Usgs, "fish-medium", "wash.last", "48 h to 72 h"),
        Held("the wash takes 24 h or more", Epa, "fish-small", "wash.last", "24 h to 48 h"),
        Held("fish are kept in 70 % ethanol, or in 40 or 50 % isopropanol", Usgs + "; American Museum of Natural History", "fish-small", "house.fluid", "isopropanol 50 %vol", "the stronger of the two, below which bone suffers"),
        Not("whole fish in ethanol change it after 12 h", "Brigham Young University, fish report", "no bundled protocol keeps a whole fish in alcohol alone"),
        Not("steps of 35, 50 and 70 %", "Grant and Archdeacon 2021", "the shelf climbs 30, 50, 75; no step is larger than the published ones"),
        Held("50 % ethanol for 2 days or more", "Ahlander 2021", "mammal-medium", "ethanol-50.last", "4 d to 7 d"),
        Held("vertebrates lie in formalin for a week or more", "Ahlander 2021", "mammal-medium", "fix.last", "7 d to 14 d"),
        Held("fish larvae are kept in 2 to 5 % formalin", "Snyder 1995", "fish-larva", "house.fluid", "neutral buffered formalin 5 %"),
        Held("fish larvae are fixed in 10 % formalin", "Snyder 1995", "fish-larva", "fix.fluid", "neutral buffered formalin 10 %"),
        Held("a small shark lies 30 min in formalin before it is cut", Sharks, "shark-small", "harden.last", "30 min"),
        Held("nothing over 8 % formaldehyde is injected", Sharks, "shark-large", "inject-fixative.fluid", "neutral buffered formalin 10 %"),

        // Reptiles, amphibians, birds.
        Held("herps are fixed for several days at least", "Etheridge et al. 1996", "amphibian-large", "fix.last", "at least 3 d"),
        Held("snakes are injected every 38 mm", "a volunteer's account of a museum (weak)", "snake-small", "inject-fixative.spacing", "38 mm"),
        Held("herps are fixed for 7 to 10 days", "a volunteer's account of a museum (weak)", "snake-small", "fix.last", "3 d to 10 d", "several days is what the handbook asks; the weak source is the upper end"),
        Held("slits in lizards are 6 to 76 mm", "Wagstaffe and Fidler", "lizard", "slit-length", "6 mm to 76 mm"),
        Not("geckos are injected with 75 or 85 % alcohol", "Wagstaffe and Fidler", "historic; alcohol alone does not fix"),
        Not("formalin of 1 part in 15 for herps", "Necker 1940", "historic, and too weak today"),
        Held("amphibian larvae and eggs stay in formalin", "McDiarmid and Altig 1999 (from memory)", "amphibian-larva", "house.fluid", "neutral buffered formalin 10 %"),
        Held("whole birds: fixed in 10 % formalin, kept in 70 % ethanol", "Australian Museum, Ornithology", "bird-small", "fix.fluid", "formalin 10 %"),

        // Worms, invertebrates at large.
        Held("polychaetes are fixed in 7 % formalin in sea water", Polychaetes, "polychaete", "fix.fluid", "sea-water formalin 7 %"),
        Held("polychaetes are fixed for 5 to 7 days", Polychaetes, "polychaete", "fix.last", "5 d to 7 d"),
        Held("ethanol for DNA is changed after 24 h", Polychaetes, "polychaete-dna", "fix.last", "24 h"),
        Not("earthworms lie in weak alcohol for a day at most", "Great Lakes Worm Watch", Relaxing),
        Held("earthworms lie in formalin for a day or more", "Great Lakes Worm Watch", "earthworm", "fix.last", "at least 24 h"),
        Held("fixative is 3 to 5 times the soft parts", Michonneau, "gastropod-marine", "fix.ratio", "3 to 10", "the least of the source is kept; ten is wanted"),
        Held("invertebrates are kept in 70 to 80 % ethanol", Michonneau, "gastropod-marine", "house.fluid", "ethanol 75 %vol"),
        Held("watery animals have the fluid changed after 24 or 48 h", Michonneau, "gastropod-marine", "first-change", "24 h to 48 h"),
        Held("soft animals are fixed in 5 to 10 % formalin in sea water", Michonneau, "sea-slug", "fix.fluid", "sea-water formalin 10 %"),
        Not("75 g/L magnesium chloride, mixed 1:1 with sea water", Michonneau, Relaxing),
        Not("about 7.5 % magnesium chloride for medusae", "Boltovskoy 1999", Relaxing),
        Not("71.4 g/L magnesium chloride, 2:1 with sea water", "Macrostomorpha pages", Relaxing),
        Not("a couple of drops of clove oil in 200 mL", Michonneau, Relaxing),
        Held("jellyfish: 4 parts of stock and 96 of sea water", "Dawson, The Scyphozoan", "jellyfish", "fix.fluid", "sea-water formalin 4 % of stock"),
        Held("jellyfish: the fluid is renewed after 2 weeks", "Dawson, The Scyphozoan", "jellyfish", "fix.last", "14 d"),
        Held("medusae are kept in 5 % formalin", Moore, "jellyfish", "house.fluid", "sea-water formalin 5 %"),
        Not("sea squirts: 100 mL stock, 850 mL sea water, 50 mL distilled water", "Lambert 2004", ByHand),
        Not("sea squirts: 1 g/L borate", "Lambert 2004", ByHand),
        Held("sponges are kept in 70 to 80 % ethanol", "Hooper, Queensland Museum", "sponge", "house.fluid", "ethanol 75 %vol"),
        Held("crinoids: 30 to 90 s in 95 % ethanol, then 70 %", "Messing, Crinoid Pages", "crinoid", "spread.last", "30 s to 90 s"),
        Held("nematodes: 10.8 mL stock and 89.2 mL water, 4 % formaldehyde", "practical on nematode fixatives", "nematode", "fix.fluid", "neutral buffered formaldehyde 4 % w/v"),
        Not("nematodes: TAF of 7.6, 2 and 90.4 mL", "practical on nematode fixatives", ByHand),
        Not("nematodes: FG 4:1 of 8.5, 2 and 89.5 mL", "practical on nematode fixatives", ByHand),
        Held("spiders are kept in 70 to 80 % ethanol", "Levi 1966", "arachnid", "house.fluid", "ethanol 75 %vol"),
        Not("40 to 70 % isopropanol as a substitute for spiders", "Levi 1966", "left out: it embrittles (Moore 2009), and the two alcohols cannot be told apart by density"),
        Held("myriapods: first about 60 %, then 75 to 80 %", "Banks 1909", "myriapod", "fix.fluid", "ethanol 60 %vol"),
        Held("insect larvae: 1 to 5 min in hot water", Schauff, "insect-larva", "scald.last", "1 min to 5 min"),
        Held("insect larvae: alcohol changed within 1 to 2 days", Schauff, "insect-larva", "fix.last", "1 d to 2 d"),
        Held("small wasps in 95 % ethanol", Schauff, "insect-dna", "fix.fluid", "ethanol 95 %vol"),
        Held("land snails: alcohol replaced after an hour or more", "USDA terrestrial gastropod tool", "land-snail", "fix.last", "at least 1 h"),
        Held("land snails: upper whorls pierced after a day", "USDA terrestrial gastropod tool", "land-snail", "second-alcohol.last", "24 h"),

        // Plankton, benthos.
        Held("plankton fills a quarter of the container at most", "benthic laboratory, taxon table", "crustacean-larva", "fix.ratio", "at least 10", "a tenth at most, by Steedman 1976 (from memory)"),
        Held("plankton goes into 70 % ethanol after 7 to 10 days", "benthic laboratory, taxon table", "crustacean-larva", "fix.last", "1 d to 10 d", "practice allows less for larvae; the upper end is kept"),
        Not("plankton kept in formalin: changed after 6 months", "benthic laboratory, taxon table", OfCare),
        Held("plankton is kept in 3 to 5 % formalin", "ASTM, preserving zooplankton", "salp", "house.fluid", "sea-water formalin 5 %"),
        Not("benthos fills half to three quarters of the container", "Cuffney, Gurtz and Meador 1993", "samples of debris, not single animals"),
        Not("benthos: 2 cm of air at most", "Cuffney, Gurtz and Meador 1993", "samples of debris, not single animals"),
        Held("nothing stays in its first formalin over a month", "Bishop Museum", "salp", "fix.last", "at most 30 d"),
        Held("marine invertebrates: ethanol over 75 %", "Western Australian Museum 2011", "decapod-small", "fix.fluid", "ethanol 80 %vol", "kept in 75 % afterwards, since others keep 70 to 80 %"),
        Held("decapod larvae: 70 % ethanol or 50 % isopropanol", "Boltovskoy 1999", "crustacean-larva", "house.fluid", "isopropanol 50 %vol"),
        Held("giant squid: a month or more in 5 % formalin", "Te Papa 2008; O'Shea 2003", "cephalopod-large", "fix.last", "at least 30 d"),
        Not("giant squid: pH looked at every 3 h", "Te Papa 2008; O'Shea 2003", "a rhythm of watching, which examples do not reach; tested apart"),
        Held("giant squid: 72, 48 or 36 h to thaw", "Te Papa 2008; O'Shea 2003", "cephalopod-large", "thaw.last", "36 h to 72 h"),

        // Storage.
        Held("jars are looked at every 6 months", "SPNHC wiki 2019", "gastropod-marine", "round.every", "180 d"),
        Held("70 % ethanol is wanted", "Museum of Vertebrate Zoology", "snake-small", "house.fluid", "ethanol 70 %vol"),
        Not("below 70 %, 95 % ethanol is added", "Museum of Vertebrate Zoology", OfCare),
        Not("100 mL for the hydrometer", "Museum of Vertebrate Zoology", OfCare),
        Not("mould grows under 30 % alcohol", Moore, OfCare),
        Not("mould may grow in 2 to 3 % formalin", Moore, OfCare),
        Not("isopropanol may decalcify below 50 %", "Simmons 2009", OfCare),
        Not("bail jars held 65 to 70 % after 80 years", "Callomon 2004", OfCare),
        Not("a good lid lost 7.14 % in 10 years", "Labedz 2005", OfCare),
        Not("polyethylene bins are brittle after about 10 years", "Clark 1992", OfCare),
        Not("10 degC more double the rate of reactions", "SPNHC wiki 2023", OfCare),
        Not("about 2 % of fat dissolves in 70 % ethanol", "van Dam 2020", AsANote),
        Not("exposure limits 0.75, 2 and 0.5 ppm", "29 CFR 1910.1048", "safety of fluids, not a protocol"),
        Not("exposure limits 0.016 and 0.1 ppm", "NIOSH Pocket Guide", "safety of fluids, not a protocol"),
        Not("70 % ethanol by mass flashes at 21 degC", "engineering reference table", OfFluids),

        // Tissue, shrinkage, arithmetic.
        Not("tissue for DNA is 1 to 3 mm", Michonneau, "told in the instruction of the first step; tested apart"),
        Held("tissue for DNA lies in 95 % ethanol or stronger", "Bishop Museum; " + Michonneau, "polychaete-dna", "house.fluid", "ethanol 95 %vol"),
        Held("fixative is 10 times the tissue", "pathology guideline PMC9292019", "mammal-small", "fix.ratio", "10 to 20"),
        Held("sea urchin eggs: a day or more, then twice 10 min in water", "University of Washington embryology", "marine-embryo", "first-water.last", "10 min"),
        Not("anoles lose 3.5 % of their length in 10 years", "Maayan et al.", AsANote),
        Not("minnows lose 2.48 mm in 70 % ethanol", "Grant and Archdeacon 2021", "a correction of measurements, not a stage"),
        Not("sea gooseberries lose 97 % of their weight", "Mutlu", AsANote),
        Not("moon jellies lose 26 % of their size", "Mutlu", AsANote),
        Not("damp fixed fish travel for a month and more", "American Museum of Natural History", "transport, not a stage of a protocol"),
        Not("1 L of 70 % from 95 %: 736.8 mL", "arithmetic without contraction", OfFluids),
        Not("1 L of neutral buffered formalin: 100 mL, 900 mL, 4.0 g, 6.5 g", "Nagorsen and Peterson 1980", OfFluids),
        Not("tissue water weakens 70 % to 64.9, 60.6 and 55.6 %", "arithmetic, 78 % water", OfFluids),
        Not("raising a jar: V (c2 - c1) / (95 - c1)", "arithmetic", OfFluids),
        Not("17.6 mm in 24 h at 3.6 mm per square root hour", "Baker 1958 (from memory)", "the specimens' own tests of penetration"),
        Not("restoring formalin: V (c2 - c1) / (100 - c2)", "arithmetic", OfFluids),
    ];

    private static PublishedValue Held(string says, string source, string protocol, string key, string text, string why = "") => new(says, source, protocol, key, text, why);

    private static PublishedValue Not(string says, string source, string why) => new(says, source, "", "", "", why);
}
