package pegbed.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.RigTemplate;
import pegbed.model.Shot;
import pegbed.model.ShotGroup;
import pegbed.model.Units.Depth;

class ShottingTest {
    private static final Shotting FEET = new Shotting(Depth.FEET);
    private static final double INCH = 0.0254;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "5 No.10 4in to 1ft5, 1 No.8 at 6in",
                "5 No.10 4in to 1'5; 1 No.8 6in",
                "5x10 4in to 17in,1 x no 8 @ 6 in",
                "5 × No.10 spread 4 in to 1 ft 5 in, 1 × No.8 at 6 in",
                " 5 no10 4in-1'5 ; 1 #8 at 0.5ft; ",
                "5*10 1'5 to 4in, bulk of 1 8: 6in",
            })
    void theSameShotIsWrittenInManyWays(String typed) throws NotationException {
        List<ShotGroup> groups = FEET.parse(typed);
        assertEquals(2, groups.size());
        assertEquals(5, groups.get(0).count());
        assertEquals(Shot.NO_10, groups.get(0).shot());
        assertEquals(4 * INCH, groups.get(0).lowestMetres(), 1e-12);
        assertEquals(17 * INCH, groups.get(0).highestMetres(), 1e-12);
        assertEquals(1, groups.get(1).count());
        assertEquals(Shot.NO_8, groups.get(1).shot());
        assertEquals(6 * INCH, groups.get(1).lowestMetres(), 1e-12);
        assertEquals(6 * INCH, groups.get(1).highestMetres(), 1e-12);
    }

    @Test
    void metresAndCentimetresAreReadWithEitherDecimalSign() throws NotationException {
        Shotting metres = new Shotting(Depth.METRES);
        assertEquals(metres.parse("2 BB 0.1 to 0.45"), metres.parse("2 bb 0,1m to 45cm"));
        assertEquals(
                List.of(ShotGroup.spread(3, Shot.SSG, 0.125, 0.30), ShotGroup.bulk(1, Shot.NO_12, 0.05)),
                new Shotting(Depth.CENTIMETRES).parse("3 SSG 12,5 to 30, 1 12 at 5"));
    }

    @Test
    void noShotIsAnAnswerToo() throws NotationException {
        assertEquals(List.of(), FEET.parse("  "));
        assertEquals("", FEET.print(List.of()));
    }

    @Test
    void theUsualRigsReadAsTheTradeSaysThem() {
        assertEquals(
                "1 No.10 at 6in, 1 No.10 at 1'0, 8 No.10 at 1'6",
                FEET.print(RigTemplate.USUAL.get(2).shots()));
        assertEquals("5 No.10 4in to 1'5.5", FEET.print(RigTemplate.USUAL.get(1).shots()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "No.10 at 6in | \"No.10 at 6in\" does not begin with how many shot",
                "5 at 6in | \"5 at 6in\" has a size of shot that is not known, at",
                "45 4in | \"45 4in\" has no size of shot behind how many",
                "5 No.2 at 6in | \"5 No.2 at 6in\" has a size of shot that is not known, 2",
                "5 No.10 | \"5 No.10\" does not say how far above the hook",
                "5 No.10 4in to | \"5 No.10 4in to\" goes on with \"to\" behind its heights",
                "0 No.10 at 6in | \"0 No.10 at 6in\" has 0 shot in one group, and 1 to 50 can be",
                "51 No.10 at 6in | \"51 No.10 at 6in\" has 51 shot in one group, and 1 to 50 can be",
                "5 No.10 at 11m | \"5 No.10 at 11m\" has shot more than 32'9.5 above the hook",
                "5 No.10 6in 8in | \"5 No.10 6in 8in\" goes on with \"8in\" behind its heights",
                "1 No.8 at 6in, high up | \"high up\" does not begin with how many shot",
            })
    void whatIsWrongIsSaidWithARightExample(String typed, String said) {
        NotationException refused = assertThrows(NotationException.class, () -> FEET.parse(typed));
        assertEquals(said + "; type shot like 5 No.10 4in to 1'5, 1 No.8 at 6in.", refused.getMessage());
    }

    @Test
    void aBareNumberIsNotTakenForFeet() {
        NotationException refused = assertThrows(NotationException.class, () -> FEET.parse("5 10 4 to 17in"));
        assertEquals(
                "\"4\" could be feet or inches; type 4in for inches, or 1'5 for feet and inches.",
                refused.getMessage());
    }

    @Test
    void everyExampleCanBeTyped() throws NotationException {
        for (Depth unit : Depth.values()) {
            Shotting shotting = new Shotting(unit);
            assertEquals(shotting.example(), shotting.print(shotting.parse(shotting.example())));
        }
    }

    @Test
    void aGroupThatReadsAsBeforeStaysExactlyWhatItWas() throws NotationException {
        ShotGroup exact = ShotGroup.spread(5, Shot.NO_10, 0.10, 0.45);
        List<ShotGroup> groups = FEET.parse("1 No.8 at 3in, 5 No.10 4in to 1'5.5", List.of(exact));
        assertSame(exact, groups.get(1));
        assertEquals(3 * INCH, groups.get(0).lowestMetres(), 1e-12);
    }

    @Property
    void whatIsPrintedIsReadBack(@ForAll("groups") List<ShotGroup> groups, @ForAll Depth unit)
            throws NotationException {
        Shotting shotting = new Shotting(unit);
        String printed = shotting.print(groups);
        List<ShotGroup> read = shotting.parse(printed);
        double half = (unit == Depth.FEET ? INCH / 2 : 0.001) / 2 + 1e-9;
        assertEquals(groups.size(), read.size());
        for (int i = 0; i < groups.size(); i++) {
            assertEquals(groups.get(i).count(), read.get(i).count());
            assertEquals(groups.get(i).shot(), read.get(i).shot());
            assertEquals(groups.get(i).lowestMetres(), read.get(i).lowestMetres(), half);
            assertEquals(groups.get(i).highestMetres(), read.get(i).highestMetres(), half);
        }
        assertEquals(printed, shotting.print(read));
        assertEquals(groups, shotting.parse(printed, groups));
    }

    @Provide
    Arbitrary<List<ShotGroup>> groups() {
        Arbitrary<Double> heights = Arbitraries.doubles().between(0, 10);
        return Combinators.combine(
                        Arbitraries.integers().between(1, ShotGroup.MOST),
                        Arbitraries.of(Shot.values()),
                        heights,
                        heights)
                .as((count, shot, a, b) -> ShotGroup.spread(count, shot, Math.min(a, b), Math.max(a, b)))
                .list()
                .ofMaxSize(6)
                .uniqueElements(ShotGroup::toString);
    }

    @Property
    void aLengthThatIsPrintedIsReadBackWithinItsLimits(@ForAll("lengths") double metres, @ForAll Depth unit)
            throws NotationException {
        RigLength length = new RigLength(unit);
        double read = length.parse(length.print(metres), "The hook length", 0.02, 2, 0.1);
        assertEquals(metres, read, (unit == Depth.FEET ? INCH / 2 : 0.001) / 2 + 1e-9);
        assertTrue(read >= 0.02 && read <= 2);
    }

    @Provide
    Arbitrary<Double> lengths() {
        return Arbitraries.doubles().between(0.02, 2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "long | The hook length is a length like 4in; \"long\" is none.",
                "4in more | The hook length is a length like 4in; \"4in more\" is none.",
                "'' | The hook length is a length like 4in; nothing stands there.",
                "7ft | The hook length is a length like 4in, from 1in to 6'6.5; \"7ft\" is too long.",
                "1mm | The hook length is a length like 4in, from 1in to 6'6.5; \"1mm\" is too short.",
            })
    void aLengthThatIsWrongIsSaidWithARightOne(String typed, String said) {
        NotationException refused = assertThrows(
                NotationException.class, () -> new RigLength(Depth.FEET).parse(typed, "The hook length", 0.02, 2, 0.1));
        assertEquals(said, refused.getMessage());
    }
}
