using Protocolist.Specimens;
using Protocolist.Specimens.Groups;
using UnitsNet;

namespace Protocolist.Tests.Specimens;

/// <summary>How bodies are laid by their groups, and what room that takes.</summary>
public class PostureTests
{
    private static BodyMeasure Body(string group, double grams, Func<Specimen, Specimen>? more = null) =>
        BodyMeasure.Of((more ?? (s => s))(new Specimen { Id = "S-1", Group = group, Mass = Mass.FromGrams(grams) })).Value!;

    private static string[] Words(BodyMeasure body) => [.. PostureRows.Ways(body).Select(w => w.Posture.Id).Distinct()];

    [Fact]
    public void Every_row_is_of_a_group_has_a_source_and_words_that_are_once_in_it()
    {
        Assert.All(PostureRows.All, row =>
        {
            Assert.NotNull(Kinds.Bundled.Find(row.Group));
            Assert.NotEmpty(row.Posture.Source);
        });
        Assert.All(PostureRows.All.GroupBy(r => r.Group), rows => Assert.Equal(rows.Count(), rows.Select(r => r.Posture.Id).Distinct().Count()));
    }

    /// <summary>Whatever the size: all sides are above nothing, and the body has room in them.</summary>
    [Fact]
    public void Every_group_has_a_way_to_be_laid_that_holds_the_body() => Assert.All(
        from g in Kinds.Bundled.Groups
        from grams in (double[])[0.01, 1, 30, 900, 20000]
        from word in PostureRows.Of(g).Select(p => (string?)p.Id).Prepend(null)
        select Body(g.Id, grams, s => s with { Posture = word }),
        body => Assert.All(PostureRows.Ways(body), way =>
        {
            var room = way.Length * way.Width * way.Height;
            Assert.True(room.CubicMeters >= body.Volume.Nominal.CubicMeters * 0.99, $"{body.Group.Id} {way.Posture.Id}");
        }));

    [Theory]
    [InlineData("mouse", 25, "tail-straight", "tail-along")]
    [InlineData("hedgehog", 700, "tail-straight")]
    [InlineData("marine-mammal", 30000, "straight")]
    [InlineData("bat", 12, "wings-half-open", "wings-folded")]
    [InlineData("bird", 60, "wings-folded")]
    [InlineData("snake", 200, "coiled")]
    [InlineData("bony-fish", 200, "on-its-side")]
    [InlineData("eel", 200, "straight", "coiled")]
    [InlineData("frog", 40, "crouched")]
    [InlineData("octopus", 600, "arms-straight", "arms-curled")]
    [InlineData("brittle-star", 4, "arms-to-one-side", "arms-curled")]
    [InlineData("sponge", 40, "as-it-lies")]
    public void Custom_comes_first(string group, double grams, params string[] words) => Assert.Equal(words, Words(Body(group, grams)));

    [Fact]
    public void Wish_comes_before_custom_and_one_that_the_group_lacks_is_told()
    {
        var spread = new Specimen { Id = "S-1", Group = "bat", Mass = Mass.FromGrams(12), Posture = "wings-spread" };
        Assert.Equal(["wings-spread"], Words(BodyMeasure.Of(spread).Value!));

        var odd = BodyMeasure.Of(spread with { Posture = "wings-sprad" });
        Assert.Equal(["wings-half-open", "wings-folded"], Words(odd.Value!));
        Assert.Equal(
            "warning unknown-posture: a bat is never laid 'wings-sprad'; custom decides in its place; did you mean 'wings-spread'?",
            Assert.Single(odd.Findings, f => f.Id == "unknown-posture").ToString());
    }

    [Fact]
    public void Young_that_have_no_shape_yet_lie_as_they_lie() =>
        Assert.Equal(["as-it-lies"], Words(Body("bony-fish", 0.01, s => s with { LifeStage = LifeStage.Larva })));

    /// <summary>A length that was measured is the length that is laid, whatever the group's is.</summary>
    [Fact]
    public void Given_length_is_kept()
    {
        var seal = Body("marine-mammal", 30000, s => s with { Length = Length.FromCentimeters(118) });
        Assert.Equal(118, PostureRows.Ways(seal)[0].Length.Centimeters, 9);

        var mouse = Body("mouse", 25, s => s with { HeadBodyLength = Length.FromMillimeters(90), TotalLength = Length.FromMillimeters(171) });
        Assert.Equal(171, PostureRows.Ways(mouse)[0].Length.Millimeters, 9);
        Assert.Equal(94.5, PostureRows.Ways(mouse)[1].Length.Millimeters, 9);
        Assert.True(PostureRows.Ways(mouse)[1].Width > PostureRows.Ways(mouse)[0].Width);
    }

    /// <summary>A fish on its side is as wide as it is deep.</summary>
    [Fact]
    public void Fish_lies_on_its_side_unless_it_shall_stand_as_it_swims()
    {
        Specimen Bream(Specimen s) => s with { Length = Length.FromCentimeters(25), Height = Length.FromMillimeters(80), Width = Length.FromMillimeters(30) };
        var (side, keel) = (PostureRows.Ways(Body("bony-fish", 250, Bream))[0], PostureRows.Ways(Body("bony-fish", 250, s => Bream(s) with { Posture = "as-it-swims" }))[0]);

        Assert.Equal((80, 30), (Math.Round(side.Width.Millimeters), Math.Round(side.Height.Millimeters)));
        Assert.Equal((30, 80), (Math.Round(keel.Width.Millimeters), Math.Round(keel.Height.Millimeters)));
    }
}
