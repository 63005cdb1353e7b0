namespace Protocolist.Specimens.Groups;

/// <summary>The sources that the tables of groups name, each written once.</summary>
internal static class Source
{
    public const string Practice = "common practice";
    public const string Memory = "from memory";
    public const string Unsure = "from memory, unsure";
    public const string Anatomy =
        "rounded from published segment masses and anatomy; see the horse (three Thoroughbred cadavers, 20 segments) and Plagenhoef 1983";
    public const string Derived = "derived from the region's share of mass and an assumed slenderness";
    public const string Usgs = "Meador, Cuffney & Gurtz 1993, USGS Open-File Report 93-104";
    public const string Larramendi = "Larramendi, Paul & Hsu 2021, Anat Rec 304:1833 (whole vertebrates 0.75 to 1.2 g/mL)";
    public const string Froese = "Froese 2006, J Appl Ichthyol 22:241 (b), FishBase manual (10 cm is about 10 g)";
    public const string Meiri = "Meiri 2010, as in TrenchR";
    public const string Pough = "Pough 1980, as in TrenchR";
    public const string Thorson = "Thorson 1961, 1964, 1968, from memory";
    public const string Ummz = "Etheridge, rev. O'Brien & Schneider 1996, Univ. Michigan Museum of Zoology";
    public const string Simmons = "Simmons 2002, Herpetological Collecting and Collections Management, from memory";
    public const string McDiarmid = "McDiarmid 1994, Preparing amphibians as scientific specimens, from memory";
    public const string Nagorsen = "Nagorsen & Peterson 1980, Mammal Collectors' Manual, from memory";
    public const string SharkThread = "Simmons, Neumann, Rosenblatt, van Dam and Walker 2011, NHCOLL-L";
    public const string WaMuseum = "Western Australian Museum 2011, Preservation and Lodgement of Marine Fauna";
    public const string Michonneau = "Michonneau 2017, The specimen workflow: from field to database";
    public const string Embalming = "embalming texts (63 to 286 mL/kg: Dhonau & Nunamaker; Anat Sci Educ 2020), scaled to hypodermic work";
    public const string Treaties = "CITES and national law, from memory";

    /// <summary>A band whose nominal value a source gives.</summary>
    public static SourcedBand Band(double low, double nominal, double high, string source) => new(low, nominal, high, source);
}
