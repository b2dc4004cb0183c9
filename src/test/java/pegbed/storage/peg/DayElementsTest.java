package pegbed.storage.peg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;

class DayElementsTest {
    private static final Place LINE = new Place(-2.75, 10.5);

    private static final Peg PEG = Peg.EMPTY.withToday(visit -> visit.withDay(new Day(
            new Conditions(OptionalDouble.of(14), OptionalDouble.empty(), "light", "clear", Extras.NONE),
            List.of(
                    event("2026-05-02T08:10:00+01:00", DayEvent.Kind.START),
                    event("2026-05-02T08:21:00+01:00", DayEvent.Kind.FISH)
                            .named("tench", "")
                            .with(2, OptionalDouble.of(1.5)),
                    event("2026-05-02T08:40:00+01:00", DayEvent.Kind.BITE)))));

    private static DayEvent event(String time, DayEvent.Kind kind) {
        return DayEvent.of(OffsetDateTime.parse(time), kind, Optional.of(LINE));
    }

    private static Opened read(String text) throws InputException {
        return PegReader.read("a.peg.json", text.getBytes(StandardCharsets.UTF_8));
    }

    private static String why(Opened opened) {
        Opened.Recovered recovered = assertInstanceOf(Opened.Recovered.class, opened);
        return recovered.why() + "\n" + String.join("\n", recovered.lost());
    }

    @Test
    void anEventHasALineOfItsOwn() {
        assertTrue(
                PegWriter.text(PEG)
                        .contains(
                                "\n        {\"time\": \"2026-05-02T08:21:00+01:00\", \"event\": \"fish\", \"x_m\": -2.75,"
                                        + " \"y_m\": 10.5, \"what\": \"tench\", \"count\": 2, \"weight_kg\": 1.5},\n"),
                PegWriter.text(PEG));
    }

    @Test
    void aPegThatWasNotFishedSaysNothingOfIt() {
        String text = PegWriter.text(Peg.EMPTY);
        assertFalse(text.contains("events") || text.contains("conditions"), text);
    }

    @Test
    void aBrokenLineCostsItsEventAlone() throws InputException {
        String text = PegWriter.text(PEG).replace("\"event\": \"fish\", \"x_m\"", "\"event\": \"fish\" \"x_m\"");
        Opened opened = read(text);
        assertEquals(
                List.of(DayEvent.Kind.START, DayEvent.Kind.BITE),
                opened.peg().today().day().events().stream().map(DayEvent::kind).toList());
        assertEquals("clear", opened.peg().today().day().conditions().colour());
        assertTrue(why(opened).contains("not JSON"), why(opened));
    }

    @Test
    void aCutFileKeepsTheEventsBeforeTheCut() throws InputException {
        String text = PegWriter.text(PEG);
        Opened opened = read(text.substring(0, text.indexOf("08:40") + 3));
        assertEquals(2, opened.peg().today().day().events().size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"count\": 2 | \"count\": 0 | count must be between 1 and 999",
                "\"weight_kg\": 1.5 | \"weight_kg\": -1 | weight_kg must be between 0 and 1000",
                "\"event\": \"fish\" | \"event\": \"whale\" | event must be one of start, stop, feed",
                "\"event\": \"fish\", \"x_m\": -2.75, \"y_m\": 10.5 | \"event\": \"fish\" | distance_m is missing",
                "\"time\": \"2026-05-02T08:21:00+01:00\", | \"tim\": 1, | time is missing",
                "{\"air_c\": 14 | {\"air_c\": 100 | air_c must be between -40 and 60",
                "\"conditions\": {\"air_c\": 14, \"wind\": \"light\", \"colour\": \"clear\"} | \"conditions\": 7"
                        + " | conditions must be an object",
            })
    void whatCanNotBeIsToldAndTheRestKept(String right, String wrong, String told) throws InputException {
        String text = PegWriter.text(PEG);
        assertTrue(text.contains(right), text);
        Opened opened = read(text.replace(right, wrong));
        assertTrue(why(opened).contains(told), why(opened));
        assertTrue(opened.peg().today().day().events().size() >= 2);
    }

    @Test
    void eventsAreKeptInOrderOfTimeWhateverTheirOffsets() throws InputException {
        String text = PegWriter.text(PEG).replace("2026-05-02T08:40:00+01:00", "2026-05-02T07:15:00+00:00");
        Opened opened = read(text);
        assertEquals(
                List.of(DayEvent.Kind.START, DayEvent.Kind.BITE, DayEvent.Kind.FISH),
                opened.peg().today().day().events().stream().map(DayEvent::kind).toList());
    }
}
