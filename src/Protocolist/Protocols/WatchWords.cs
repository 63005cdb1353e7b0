namespace Protocolist.Protocols;

/// <summary>Signs that a soaking body shows, and what is done about them.</summary>
internal static class WatchWords
{
    /// <summary>Each sign with what the eye or hand finds.</summary>
    public static readonly (string Word, string Meaning)[] Signs =
    [
        ("soft", "a part still gives under the finger"),
        ("bloated", "a part is swollen with gas"),
        ("floating", "the body floats"),
        ("bloody", "the fluid is red or brown"),
        ("cloudy", "the fluid is cloudy"),
        ("oily", "oil stands on the fluid"),
        ("smelling", "it smells of rot"),
        ("dry", "a part stands out of the fluid"),
        ("shrunken", "the body is wrinkled or shrunken"),
        ("slipping", "skin, scales or hair come away"),
        ("weak", "the fluid reads weaker than it should"),
        ("acid", "the fluid reads more acid than it should"),
    ];

    /// <summary>Each remedy with what is done.</summary>
    public static readonly (string Word, string Meaning)[] Remedies =
    [
        ("re-inject", "cut the soft part open a little and inject it again at once, and soak on"),
        ("slit-and-inject", "slit the swollen part, press the gas out, and inject it again at once"),
        ("press-out-air", "open a small cut, hold the body under and press until no more air comes"),
        ("weigh-down", "weigh the body down with glass or stainless steel so that all of it is under"),
        ("change-fluid", "replace the fluid with fresh fluid of the same kind and buffering"),
        ("skim-and-change", "skim the oil off and replace the fluid with fresh fluid of the same kind"),
        ("restore-strength", "measure the strength and restore it"),
        ("prolong", "leave it longer and look again"),
        ("weaker-step", "go back to a weaker strength and climb in smaller steps"),
        ("ask", "stop and ask an experienced preparator"),
    ];
}
