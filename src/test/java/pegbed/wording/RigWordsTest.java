package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.model.Extras;
import pegbed.model.Peg;
import pegbed.model.RigTemplate;
import pegbed.model.Shot;
import pegbed.model.ShotGroup;
import pegbed.model.Units;
import pegbed.plan.Rig;

/** Rigs: their weights and how they are said. */
class RigWordsTest {
    private static final RigWords WORDS = RigWords.of(Peg.EMPTY);

    private static RigTemplate template(String name) {
        return RigTemplate.USUAL.stream()
                .filter(template -> template.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Rig rig(RigTemplate template, double over, double... hookToTip) {
        List<Rig.Setting> settings = java.util.stream.IntStream.range(0, hookToTip.length)
                .mapToObj(i -> new Rig.Setting(i + 1, hookToTip[i]))
                .toList();
        return new Rig(1, template, over, settings);
    }

    /** Weights from a published trade chart: No.10 0.04 g, No.8 0.06 g, so 10 No.10 and 2 No.8 make 0.52 g. */
    @Test
    void twelveShotWeighWhatTheTableSays() {
        RigTemplate twelve = new RigTemplate(
                "twelve",
                2,
                RigTemplate.Ground.LEVEL,
                "4×16",
                0.55,
                0.07,
                0.15,
                List.of(ShotGroup.spread(2, Shot.NO_8, 0.15, 0.3), ShotGroup.bulk(10, Shot.NO_10, 0.46)),
                Extras.NONE);
        assertEquals(0.52, twelve.shotGrams(), 1e-12);
        assertEquals(0.48, template("deepest").shotGrams(), 1e-12);
        assertEquals(
                12,
                template("deepest").shots().stream().mapToInt(ShotGroup::count).sum());
    }

    /** The published part of the chart. */
    @Test
    void shotWeighWhatThePublishedChartSays() {
        assertEquals(
                List.of(1.6, 0.8, 0.4, 0.3, 0.2, 0.1, 0.06, 0.05, 0.04, 0.03, 0.02, 0.01),
                java.util.stream.Stream.of(
                                Shot.SSG,
                                Shot.AAA,
                                Shot.BB,
                                Shot.NO_1,
                                Shot.NO_4,
                                Shot.NO_6,
                                Shot.NO_8,
                                Shot.NO_9,
                                Shot.NO_10,
                                Shot.NO_11,
                                Shot.NO_12,
                                Shot.NO_13)
                        .map(Shot::grams)
                        .toList());
    }

    /**
     * From memory: a float starts at 0.05 to 0.1 g for each foot of depth; no float carries more than it is made for.
     */
    @Test
    void usualRigsFollowTheStartingRule() {
        for (RigTemplate template : RigTemplate.USUAL) {
            assertTrue(template.shotGrams() <= template.floatGrams() + 1e-9, template.name());
            assertTrue(template.shotGrams() >= 0.85 * template.floatGrams(), template.name());
            if (template.upToMetres() < 10 && template.ground() == RigTemplate.Ground.LEVEL) {
                double feet = template.upToMetres() / 0.3048;
                assertTrue(template.floatGrams() >= 0.05 * feet, template.name());
                assertTrue(template.floatGrams() <= 0.10 * feet, template.name());
            }
        }
    }

    /** Common practice: hook lengths of 4 in shallow and 6 in deep; a bulk 18 in up with two droppers in deep water. */
    @Test
    void aRigIsSaidInFeetAndInches() {
        Rig deep = rig(template("deep"), 0.065, 5.5 * 0.3048 + 0.065);
        assertEquals("6 in", WORDS.hookLength(deep));
        assertEquals("4×14, 0.40 g", WORDS.floatSize(deep));
        assertEquals(
                "1 × No.10 at 6 in, 1 × No.10 at 1 ft, bulk of 8 × No.10 at 1 ft 6 in above the hook (0.40 g)",
                WORDS.shotting(deep));
        assertEquals("5 ft 8½ in", WORDS.hookToTip(deep.settings().get(0)));
        assertEquals(
                "hook at one end of the top kit, mark it 5 ft 8½ in along",
                WORDS.mark(deep.settings().get(0)));
        assertEquals("4 in", WORDS.hookLength(rig(template("ledge"), 0, 0.8)));
    }

    @Test
    void aRigLongerThanTheTopKitIsSaidToBe() {
        Rig deep = rig(template("very deep"), 0, 3.0);
        assertTrue(WORDS.mark(deep.settings().get(0)).startsWith("longer than the top kit"));
    }

    @Test
    void overdepthAndTravelAreSaid() {
        Rig dead = rig(template("ledge"), 0, 0.76, 0.80);
        assertEquals("dead depth: plumbed to the float's tip", WORDS.overdepth(dead));
        assertEquals("slide the float 1½ in", WORDS.travel(dead));
        assertEquals("lines 1 and 2", WORDS.lines(dead));
        assertEquals("one mark serves all", WORDS.travel(rig(template("ledge"), 0, 0.76, 0.762)));
        assertEquals("2½ in over depth", WORDS.overdepth(rig(template("ledge"), 0.06, 0.76)));
    }

    @Test
    void shotIsKeptBelowTheFloatInVeryShallowWater() {
        Rig edge = rig(template("ledge"), 0.06, 0.36);
        assertTrue(WORDS.shotting(edge).contains("spread 4 in to 10 in"), WORDS.shotting(edge));
    }

    @Test
    void centimetresForThosePeopleWhoUseThem() {
        RigWords words = RigWords.of(Peg.EMPTY.withUnits(new Units(Units.Depth.CENTIMETRES, Units.Distance.METRES)));
        assertEquals("83 cm", words.hookToTip(new Rig.Setting(1, 0.83)));
    }
}
