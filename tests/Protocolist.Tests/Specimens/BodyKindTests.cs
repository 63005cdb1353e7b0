using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Specimens;

public class BodyKindTests
{
    private static BodyMeasure Body(string group, double grams, int count = 1, LifeStage? stage = null) =>
        BodyMeasure.Of(new Specimen { Id = "x", Group = group, Mass = Mass.FromGrams(grams), Count = count, LifeStage = stage }).Value!;

    [Theory]
    [InlineData("jellyfish", null, "jelly")]
    [InlineData("hydroid", null, "colony")]
    [InlineData("bony-fish", LifeStage.Egg, "eggs")]
    [InlineData("bony-fish", LifeStage.Larva, "larvae")]
    [InlineData("bony-fish", null, "whole")]
    [InlineData("lizard", LifeStage.Egg, "sac")]
    [InlineData("mammal", LifeStage.Embryo, "soft-limbed")]
    [InlineData("octopus", null, "soft-limbed")]
    [InlineData("insect", null, "airy")]
    [InlineData("insect", LifeStage.Larva, "airy")]
    [InlineData("small-crustacean", null, "tiny")]
    [InlineData("bivalve", null, "shelled")]
    [InlineData("crab", null, "armoured")]
    [InlineData("leech", null, "worm")]
    [InlineData("slug", null, "soft")]
    public void A_body_is_handled_by_its_group_and_life_stage(string group, LifeStage? stage, string kind) =>
        Assert.Equal(kind, BodyKind.Of(Body(group, 5, stage: stage)).Id);

    /// <summary>A tenth of the animal or of the lot at the most: common practice and judgement.</summary>
    [Theory]
    [InlineData("mammal", 20, 1, 1, false, 1)]
    [InlineData("bony-fish", 4, 24, 10, false, 10)]
    [InlineData("insect", 0.1, 1, 1, false, 1)] // a leg
    [InlineData("insect", 0.005, 1, 0, false, 0)]
    [InlineData("small-crustacean", 0.001, 200, 20, true, 1)] // whole copepods
    [InlineData("embryo", 0.000001, 2000, 50, true, 1)]
    [InlineData("embryo", 0.000001, 1, 0, false, 0)]
    public void Tissue_is_what_there_is_to_take(string group, double grams, int count, int animals, bool whole, int tubes) =>
        Assert.Equal(new TissueSample(animals, whole, tubes), TissueSample.Of(Body(group, grams, count)));
}
