using NodaTime;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Protocols;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Revising;

/// <summary>Signs seen on a soaking body, and the protocol's remedies for them as steps.</summary>
internal static class SignRules
{
    private static readonly Phrase SignWithoutRemedy = new(
        "sign-without-remedy",
        "the protocol does not say what '{sign}' in '{host}' calls for; what is usual is taken: {remedy}");
    private static readonly Phrase SignWithoutRemedyRemedy = new(
        "sign-without-remedy.remedy",
        "where in doubt stop and ask an experienced preparator; add the sign to the protocol's 'watch'");

    /// <summary>
    /// What is injected or opened late starts its fixation then: two days are the least that handbooks give a body of any size
    /// (common practice), and it is looked at once more before it comes out.
    /// </summary>
    private static readonly Duration LeastSoak = Duration.FromHours(48);

    private static readonly Phrase Seen = new("because.sign", "{sign}{place} was seen {at:minute}");
    private static readonly Phrase Place = new("because.place", " ({place})");
    private static readonly Phrase OnceMore = new("remedy.again", "{title}, once more");

    public static void Apply(StepsInWork work, LogEntry entry)
    {
        // Gas is let out before anything is injected, and what is slit and injected is not injected a second time.
        var lets = entry.Signs.Any(sign => RemedyOf(work, entry, sign)?.Word == "slit-and-inject");
        foreach (var sign in entry.Signs)
        {
            var host = work.Find(entry.Step)!;
            var remedy = RemedyOf(work, entry, sign);
            if (lets && remedy?.Word == "re-inject") continue;
            if (remedy is null)
            {
                remedy = Usual(work, sign);
                work.Say(Finding.Note(
                    "sign-without-remedy",
                    SignWithoutRemedy.With(("sign", sign), ("host", host.Id), ("remedy", remedy.Meaning)),
                    SignWithoutRemedyRemedy,
                    entry.Where) with
                { Subject = host.Id });
            }

            var seen = entry.Moment!.Value;
            var because = Seen.With(
                ("sign", sign),
                ("place", entry.Place.Length > 0 ? Place.With(("place", entry.Place)) : default),
                Argument.At("at", seen, work.Zone));
            Remedy(work, host, remedy, seen, because, entry);
        }
    }

    /// <summary>What the protocol does about a sign; null where it does not say.</summary>
    private static Remedy? RemedyOf(StepsInWork work, LogEntry entry, string sign) =>
        work.Find(entry.Step)!.Watch?.Signs.FirstOrDefault(s => s.Sign.Word == sign).Remedy;

    /// <summary>What is usual, or what is done in its place to a body that forbids it.</summary>
    private static Remedy Usual(StepsInWork work, string sign) =>
        (Protocols.Remedy.Find(Sign.Find(sign)?.Usual ?? "") ?? Protocols.Remedy.Ask).For(BodyKind.Of(work.Draft.Body).Forbids);

    /// <summary>How much longer a soak lasts at the least after something was put right in it.</summary>
    public static Duration SoaksOn(DraftStep host) => Duration.Max(LeastSoak, host.Watch?.Every ?? Duration.Zero);

    public static void Remedy(StepsInWork work, DraftStep host, Remedy remedy, Instant seen, Message because, LogEntry entry)
    {
        var soaks = host.IsSoak && (host.Progress?.Ended is not { } ended || seen < ended);
        switch (remedy.Effect)
        {
            case RemedyEffect.LongerSoak:
                Prolong(work, host, seen, soaks, because);
                break;
            case RemedyEffect.FreshFluid:
                if (soaks) work.Change(host.Id, s => s with { Changes = s.Changes + 1 });
                Work(work, host, remedy, seen, soaks, because, null);
                break;
            case RemedyEffect.WeakerBath when host.Fluid is { IsAlcohol: true }:
                WeakerStep.Apply(work, host, seen, soaks, because);
                break;
            case RemedyEffect.Injection:
                Work(work, host, remedy, seen, soaks, because, LateDose.Of(work.Draft, host, entry.Place));
                break;
            default:
                Work(work, host, remedy, seen, soaks, because, null);
                break;
        }
    }

    private static void Prolong(StepsInWork work, DraftStep host, Instant seen, bool soaks, Message because)
    {
        if (!soaks)
        {
            Again(work, host, because);
            return;
        }

        work.Change(
            host.Id,
            s => s with { Least = s.Least + SoaksOn(host), Most = s.Most + SoaksOn(host), EndNotBefore = Later(s.EndNotBefore, seen + SoaksOn(host)) });
        work.Explain(host.Id, because);
    }

    /// <summary>A remedy as a step of its own: at once, while the body soaks on; or, where the soak is over, in turn and followed by another.</summary>
    private static void Work(StepsInWork work, DraftStep host, Remedy remedy, Instant seen, bool soaks, Message because, Volume? volume)
    {
        work.Insert(host.Id, remedy.Word, id => RemedyStep.Of(id, remedy, host, volume) with
        {
            Because = [because],
            NotBefore = seen,
            During = soaks ? new(host.Id, SoaksOn(host)) { IsChange = remedy.Effect == RemedyEffect.FreshFluid } : null,
        });
        if (soaks) work.Explain(host.Id, because);
        else if (host.IsSoak) Again(work, host, because);
    }

    /// <summary>The same soak once more, for a body that came out too soon.</summary>
    public static void Again(StepsInWork work, DraftStep host, Message because) => work.Insert(host.Id, "again", id => host with
    {
        Stage = host.Stage with { Id = id },
        Title = OnceMore.With(("title", host.Title)),
        Least = Duration.Max(SoaksOn(host), host.Kind == StageKind.Immerse ? Duration.Zero : host.Least),
        Most = null,
        Changes = 0,
        Progress = null,
        EndNotBefore = null,
        NotBefore = null,
        Used = null,
        Because = [because],
    });

    public static Instant? Later(Instant? a, Instant b) => a is { } other && other > b ? other : b;
}
