package pegbed.report.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import pegbed.day.Lesson;
import pegbed.day.LineHistories;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.DayEvent.Kind;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.paint.LetterOutlines;

/** The logs are invented. */
class DayPicturesTest {
    private static final OffsetDateTime START = OffsetDateTime.parse("2026-06-06T09:50:00+01:00");
    private static final Place FIRST = new Place(0, 9);
    private static final Place SECOND = new Place(-3, 13);
    private static final Place OTHER = new Place(6, 1);

    private static DayEvent event(int minute, Kind kind, Place line) {
        return DayEvent.of(START.plusMinutes(minute), kind, Optional.of(line));
    }

    private static LineHistories histories(int minutes) {
        List<DayEvent> events = new ArrayList<>(List.of(
                event(0, Kind.START, FIRST),
                event(2, Kind.FEED, SECOND),
                event(5, Kind.FISH, FIRST),
                event(9, Kind.BITE, FIRST),
                event(11, Kind.FISH, FIRST).with(4, OptionalDouble.empty()),
                event(20, Kind.START, OTHER),
                event(25, Kind.LOST, OTHER)));
        for (int minute = 30; minute < minutes; minute += 40) {
            events.add(event(minute, Kind.FISH, OTHER));
        }
        return LineHistories.of(
                new Day(Conditions.NONE, events),
                List.of(FIRST, SECOND, new Place(4, 4)),
                START.plusMinutes(minutes).toInstant());
    }

    private static Drawing strip(int minutes, double width) {
        return DayStrip.of(Peg.EMPTY, histories(minutes), width, LetterOutlines.MEASURE)
                .orElseThrow();
    }

    private static Drawing bars(double width) {
        List<Lesson<Integer>> lessons = List.of(
                new Lesson<>(8, 12, 9, 56, 6.2, Double.NaN, 12, 0),
                new Lesson<>(10, 12, 20, 260, 13, Double.NaN, 12, 10),
                new Lesson<>(21, 1, 0.5, 0, 0, Double.NaN, 0, 0));
        return CatchByDepth.of(Peg.EMPTY, lessons, 0.0762, width, LetterOutlines.MEASURE)
                .orElseThrow();
    }

    /** Letters keep apart, and on the sheet. */
    private static void assertLegible(Drawing drawing) {
        List<Envelope> boxes = new ArrayList<>();
        for (Item item : drawing.items()) {
            if (item instanceof Text text) {
                double wide = LetterOutlines.MEASURE.widthPoints(text.words(), text.lettering());
                double left = switch (text.align()) {
                    case START -> text.x();
                    case MIDDLE -> text.x() - wide / 2;
                    case END -> text.x() - wide;
                };
                boxes.add(new Envelope(
                        left, left + wide, text.y() - text.lettering().sizePoints() * 0.73, text.y()));
            }
        }
        Envelope sheet = new Envelope(
                -0.5, drawing.view().widthPoints() + 0.5, 0, drawing.view().heightPoints());
        for (int i = 0; i < boxes.size(); i++) {
            assertTrue(sheet.contains(boxes.get(i)), boxes.get(i)::toString);
            for (int k = 0; k < i; k++) {
                assertTrue(!boxes.get(i).intersects(boxes.get(k)), boxes.get(i) + " on " + boxes.get(k));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {240, 300, 390, 600})
    void lettersKeepApart(double width) {
        for (int minutes : new int[] {31, 60, 130, 300, 700, 1400}) {
            assertLegible(strip(minutes, width));
        }
        assertLegible(bars(width));
    }

    @Test
    void everyEventHasItsSignOnItsLine() {
        Drawing drawing = strip(60, 390);
        List<Item> fish = drawing.of(Role.DAY_FISH).stream()
                .filter(Fill.class::isInstance)
                .toList();
        assertEquals(3 + 1, fish.size(), "three on lines, one in the legend");
        double one = ((Fill) fish.get(0)).shape().getEnvelopeInternal().getWidth();
        double four = ((Fill) fish.get(1)).shape().getEnvelopeInternal().getWidth();
        assertEquals(2 * one, four, 0.1, "four fish at once: twice as wide");
        assertEquals(1 + 1, drawing.of(Role.DAY_BITE).size());
        assertEquals(1 + 1, drawing.of(Role.DAY_LOST).size());
        assertEquals(1 + 1, drawing.of(Role.DAY_FEED).size());
        assertEquals(2 + 1, drawing.of(Role.DAY_FISHED).size());
        double first = ((Fill) fish.get(0)).shape().getCentroid().getY();
        double fed =
                ((Fill) drawing.of(Role.DAY_FEED).get(0)).shape().getCentroid().getY();
        double lost = ((Stroke) drawing.of(Role.DAY_LOST).get(0))
                .lines()
                .getCentroid()
                .getY();
        assertTrue(first < fed && fed < lost, "lines from top to bottom");
    }

    /** 09:50 to 10:50 over the strip: a fish at 09:55 is at a twelfth of it. */
    @Test
    void timeRunsFromLeftToRight() {
        Drawing drawing = strip(60, 390);
        Envelope axis = ((Stroke) drawing.of(Role.LEGEND_RULE).get(0)).lines().getEnvelopeInternal();
        double x =
                ((Fill) drawing.of(Role.DAY_FISH).get(0)).shape().getCentroid().getX();
        assertEquals(axis.getMinX() + axis.getWidth() * 5 / 60, x, 0.01);
        assertTrue(drawing.items().stream()
                .anyMatch(item -> item instanceof Text text && text.words().equals("10:00")));
    }

    @Test
    void aLineThatNothingHappenedOnHasNoRow() {
        assertEquals(
                List.of("line 1", "line 2", "6.1 m, 2:40"),
                strip(60, 390).items().stream()
                        .filter(item -> item instanceof Text text
                                && text.role() == Role.LEGEND_HEADING
                                && text.align() == Text.Align.START)
                        .map(item -> ((Text) item).words())
                        .toList());
        assertTrue(DayStrip.of(
                        Peg.EMPTY,
                        LineHistories.of(Day.NONE, List.of(FIRST), START.toInstant()),
                        390,
                        LetterOutlines.MEASURE)
                .isEmpty());
    }

    @Test
    void barsAreAsLongAsTheRates() {
        List<Item> bars = bars(390).of(Role.CATCH_BAR);
        assertEquals(2, bars.size(), "nothing caught, no bar");
        double shorter = ((Fill) bars.get(0)).shape().getEnvelopeInternal().getWidth();
        double longer = ((Fill) bars.get(1)).shape().getEnvelopeInternal().getWidth();
        assertEquals(6.2 / 13, shorter / longer, 1e-9);
        assertTrue(CatchByDepth.of(Peg.EMPTY, List.of(), 0.0762, 390, LetterOutlines.MEASURE)
                .isEmpty());
    }
}
