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
    public const string Pantheria = "PanTHERIA (Jones et al. 2009), species means";
    public const string BirdTables = "Storchova & Horak 2018 (500 European species) with Garnett et al. 2015 (745 Australian species)";
    public const string Trochet = "Trochet et al. 2014, European amphibians, species means";
    public const string Amniote = "Amniote Life History Database (Myhrvold et al. 2015), species means";
    public const string Feldman = "Feldman et al. 2016, as in the trait table of Meiri 2018; spread of the species means of Myhrvold et al. 2015";
    public const string Zipkin = "Zipkin et al. 2020, El Cope, Panama, individuals";
    public const string FishForms = "Froese, Thorson & Reyes 2014, priors by body form, the authors' code";
    public const string Sohlstrom = "Sohlstrom et al. 2018, live mass, as used by Wildermuth et al.";
    public const string Andrews = "Gregory et al., Andrews Forest LTER, individuals";
    public const string GolemGrad = "Golem Grad tortoise data, individuals";
    public const string Brofeldt = "Brofeldt 1917, Laengelmaevesi, individuals";
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

    // Single animals scatter about the mean of their species by 1.2 to 1.3 (season, breeding, sex): judgement.
    private const double WithinSpecies = 1.25;

    /// <summary>A relation fitted to means of species: nine tenths of them lie within <paramref name="f90"/>, of single animals somewhat further.</summary>
    public static LengthMassRelation Means(LengthKind length, double a, double b, int species, double f90, double accept, string source) =>
        Fitted(length, a, b, species, Math.Exp(Math.Sqrt(Math.Pow(Math.Log(f90), 2) + Math.Pow(Math.Log(WithinSpecies), 2))), accept, source);

    /// <summary>A relation fitted to single animals: nine tenths of them lie within <paramref name="f90"/>.</summary>
    public static LengthMassRelation Fitted(LengthKind length, double a, double b, int animals, double f90, double accept, string source) =>
        new(length, a, b, accept, source) { Count = animals, Within90 = f90 };

    /// <summary>A band whose nominal value a source gives.</summary>
    public static SourcedBand Band(double low, double nominal, double high, string source) => new(low, nominal, high, source);
}
