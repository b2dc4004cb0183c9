package pegbed.storage.peg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.junit.jupiter.api.Test;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Visit;

/** What is written is read back the same, and written again byte for byte. */
public class PegRoundTripTest {
    private static final double METRES = 1e-9;

    static Peg whole(byte[] bytes) throws InputException {
        Opened opened = PegReader.read("test.peg.json", bytes);
        return assertInstanceOf(Opened.Whole.class, opened, opened::toString).peg();
    }

    @Test
    void everyFieldSurvives() throws InputException {
        Peg peg = SamplePeg.peg();
        byte[] bytes = PegWriter.bytes(peg);
        assertSame(peg, whole(bytes));
        assertArrayEquals(bytes, PegWriter.bytes(whole(bytes)));
    }

    @Test
    void aPegOfWhichNothingIsKnownSurvives() throws InputException {
        assertEquals(Peg.EMPTY, whole(PegWriter.bytes(Peg.EMPTY)));
    }

    @Property(tries = 500)
    @Domain(RandomPegs.class)
    void anyPegSurvives(@ForAll Peg peg) throws InputException {
        byte[] bytes = PegWriter.bytes(peg);
        Peg again = whole(bytes);
        assertSame(peg, again);
        assertArrayEquals(bytes, PegWriter.bytes(again));
    }

    @Property(tries = 2000)
    void anyPolarPlaceSettlesAtOnce(@ForAll double seed, @ForAll int direction) throws InputException {
        double distanceMetres = Double.isFinite(seed) ? Math.abs(seed) % 1000 : 7;
        Peg peg = Peg.EMPTY.withReading(Reading.of(distanceMetres, direction * 1e-7 % 180, 1));
        byte[] bytes = PegWriter.bytes(peg);
        Peg again = whole(bytes);
        assertTrue(
                again.readings().get(0).place().distanceTo(peg.readings().get(0).place()) <= METRES);
        assertArrayEquals(bytes, PegWriter.bytes(again));
    }

    @Test
    void numbersAreAsShortAsTheyWereGiven() {
        String text =
                PegWriter.text(Peg.EMPTY.withReading(Reading.of(11, -20, 0.3)).withReading(Reading.of(5, 90, 2)));
        assertTrue(text.contains("{\"distance_m\": 11, \"angle_deg\": -20, \"depth_m\": 0.3}"), text);
        assertTrue(text.contains("{\"distance_m\": 5, \"angle_deg\": 90, \"depth_m\": 2}"), text);
        assertEquals("0.30000000000000004", NumberText.text(0.1 + 0.2));
        assertEquals("0.002", NumberText.text(0.002));
        assertEquals("100000", NumberText.text(1e5));
        assertEquals("0", NumberText.text(-0.0));
    }

    @Test
    void aReadingGivenInFullNumbersComesBackExactly() throws InputException {
        for (double distance = 0.1; distance < 16; distance += 0.37) {
            for (double angle = -90; angle <= 90; angle += 7.5) {
                double cleanDistance = Math.round(distance * 100) / 100.0;
                Reading reading = Reading.of(cleanDistance, angle, 1.5);
                assertEquals(
                        List.of(reading),
                        whole(PegWriter.bytes(Peg.EMPTY.withReading(reading))).readings());
            }
        }
    }

    @Test
    void fieldsOfALaterVersionAreKeptLetterForLetter() throws InputException {
        String text = PegWriter.text(SamplePeg.peg());
        assertTrue(text.contains("\"log\": {\"kept\": [1e2, 1.10, true],\n    \"odd\": \"\\u00e9\"}"), text);
        Peg peg = whole(text.getBytes(StandardCharsets.UTF_8));
        assertEquals(
                "{\"kept\": [1e2, 1.10, true],\n    \"odd\": \"\\u00e9\"}",
                peg.extras().rawJson().get("log"));
        assertEquals("1.20", peg.hazards().get(1).extras().rawJson().get("height_m"));
        assertEquals(Map.of("plummet_g", "30"), peg.readings().get(3).extras().rawJson());
        assertEquals(Map.of("wind", "\"light\""), peg.visits().get(1).extras().rawJson());
    }

    @Test
    void laterFieldsOfEveryKindOfValueAreKept() throws InputException {
        String text = "{\"format\": \"pegbed-peg\", \"version\": 1, \"a\": 1.50, \"b\": \"x\\ty\" , \"c\": [ 1 ,2 ],"
                + " \"d\": {\"e\" : {}}, \"f\": null, \"g\": -1E-3 , \"visits\": [{\"readings\": [], \"h\": false}]}";
        Peg peg = whole(text.getBytes(StandardCharsets.UTF_8));
        assertEquals(
                Map.of("a", "1.50", "b", "\"x\\ty\"", "c", "[ 1 ,2 ]", "d", "{\"e\" : {}}", "f", "null", "g", "-1E-3"),
                peg.extras().rawJson());
        assertEquals(
                List.of("a", "b", "c", "d", "f", "g"),
                List.copyOf(peg.extras().rawJson().keySet()));
        assertEquals(Map.of("h", "false"), peg.today().extras().rawJson());
    }

    @Test
    void aFileWrittenByHandMayLeaveOutWhatIsUsual() throws InputException {
        String text = "\uFEFF{\r\n\"visits\": [{\"readings\": [{\"x_m\": 1, \"y_m\": 2, \"depth_m\": 1.5}]}],\r\n"
                + "\"number\": \"4\", \"version\": 1, \"format\": \"pegbed-peg\"}";
        Peg peg = whole(text.getBytes(StandardCharsets.UTF_8));
        assertEquals(new PegName("", "", "4"), peg.name());
        assertEquals(new Place(1, 2), peg.readings().get(0).place());
        assertEquals(Peg.EMPTY.pole(), peg.pole());
        assertEquals(Peg.EMPTY.units(), peg.units());
    }

    /** The same but for the last bits of a place that is written as distance and direction. */
    public static void assertSame(Peg expected, Peg actual) {
        assertEquals(expected.readings().size(), actual.readings().size());
        for (int i = 0; i < expected.readings().size(); i++) {
            assertNear(
                    expected.readings().get(i).place(), actual.readings().get(i).place());
        }
        for (int i = 0; i < expected.marks().size(); i++) {
            assertNear(expected.marks().get(i).place(), actual.marks().get(i).place());
        }
        assertEquals(withoutPolarPlaces(expected), withoutPolarPlaces(actual));
    }

    private static void assertNear(Place expected, Place actual) {
        assertEquals(expected.xMetres(), actual.xMetres(), METRES);
        assertEquals(expected.yMetres(), actual.yMetres(), METRES);
    }

    private static Peg withoutPolarPlaces(Peg peg) {
        Place seat = new Place(0, 0);
        List<Visit> visits = peg.visits().stream()
                .map(visit -> visit.withReadings(visit.readings().stream()
                        .map(reading -> new Reading(
                                reading.typed(),
                                seat,
                                reading.precision(),
                                reading.depthMetres(),
                                reading.bottom(),
                                reading.note(),
                                reading.time(),
                                reading.extras()))
                        .toList()))
                .toList();
        List<Mark> marks = peg.marks().stream()
                .map(mark -> new Mark(mark.name(), seat, mark.extras()))
                .toList();
        return peg.withVisits(visits).withMarks(marks);
    }

    @Test
    void halfOfASurrogatePairSurvives() throws InputException {
        Peg peg = Peg.EMPTY.withName(new PegName("a\uD83Db", "\uDC1F", "\uD83D\uDC1F"));
        assertEquals(peg, whole(PegWriter.bytes(peg)));
        assertEquals(Extras.NONE, peg.extras());
    }
}
