package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Place;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;
import pegbed.report.paint.LetterOutlines;
import pegbed.session.VisitedPegs;

/** A hole that a later visit found is marked on the map. */
class ChangePartTest {
    private static PegMap dug;
    private static PegMap still;

    @BeforeAll
    static void map() throws InputException {
        dug = PegMap.of(VisitedPegs.dugOut(), Monitor.NONE);
        still = PegMap.of(VisitedPegs.nine(), Monitor.NONE);
    }

    private static Drawing sheet(PegMap map, MapOptions options) throws InputException {
        return MapDrawing.of(map, Findings.of(map, OptionalDouble.empty()), options)
                .sheet(1000, 750, LetterOutlines.MEASURE);
    }

    private static List<String> words(Drawing drawing, Role role) {
        return drawing.of(role).stream().map(item -> ((Text) item).words()).toList();
    }

    @Test
    void aHoleHasAToothedRingAndSaysHowMuchDeeperItIs() throws InputException {
        Drawing drawing = sheet(dug, MapOptions.USUAL);
        List<Item> rings = drawing.of(Role.CHANGED).stream()
                .filter(item -> item.layer() == Layer.CHANGED)
                .toList();
        assertEquals(dug.bottom().changes().size(), rings.size());
        Frame.At at = (Frame.At) rings.get(0).frame();
        assertTrue(new Place(at.xMetres(), at.yMetres()).distanceTo(VisitedPegs.HOLE) < 1, at::toString);
        List<String> labels = words(drawing, Role.CHANGED_LABEL);
        assertEquals(rings.size(), labels.size());
        assertTrue(labels.get(0).matches("(1 ft )?[\\d½]+ in deeper"), labels::toString);
        assertTrue(words(drawing, Role.LEGEND_LABEL).contains("deeper than at an earlier visit"));
    }

    @Test
    void nothingIsMarkedWhereNothingChangedOrItIsSwitchedOff() throws InputException {
        assertEquals(List.of(), still.bottom().changes());
        for (Drawing drawing :
                List.of(sheet(still, MapOptions.USUAL), sheet(dug, MapOptions.USUAL.with(Layer.CHANGED, false)))) {
            assertEquals(List.of(), drawing.of(Role.CHANGED));
            assertEquals(List.of(), drawing.of(Role.CHANGED_LABEL));
            assertFalse(words(drawing, Role.LEGEND_LABEL).stream()
                    .anyMatch(word -> word.contains("earlier visit") && !word.startsWith("an ")));
        }
    }

    /** Told without colour: about a hollow the teeth stand inside, about a hump outside. */
    @Test
    void theTeethPointDownTheSlope() {
        Envelope hollow = ChangePart.ring(10, true).getEnvelopeInternal();
        Envelope hump = ChangePart.ring(10, false).getEnvelopeInternal();
        assertEquals(20, hollow.getWidth(), 1e-9);
        assertEquals(27, hump.getHeight(), 1e-9);
    }
}
