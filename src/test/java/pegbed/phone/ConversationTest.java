package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.report.drawing.Colour;
import pegbed.report.drawing.DrawingCanvas;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Text;
import pegbed.report.paint.LetterOutlines;

class ConversationTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String NOW = "2026-05-02T09:14:05+01:00";
    private final Conversation conversation = new Conversation();

    private JsonNode ask(String what, String... members) throws IOException {
        ObjectNode request = JSON.createObjectNode().put("do", what).put("now", NOW);
        for (int i = 0; i < members.length; i += 2) {
            request.put(members[i], members[i + 1]);
        }
        return ask(request);
    }

    private JsonNode ask(ObjectNode request) throws IOException {
        return JSON.readTree(conversation.ask(request.toString()));
    }

    private JsonNode granted(String what, String... members) throws IOException {
        JsonNode answer = ask(what, members);
        assertTrue(
                answer.path("refused").isMissingNode(), answer.path("refused").asText());
        return answer;
    }

    private static String sample() throws IOException {
        return Files.readString(Path.of("sample-pegs/tansy-cut-9.peg.json"));
    }

    private JsonNode begin() throws IOException {
        ObjectNode request = JSON.createObjectNode()
                .put("do", "new")
                .put("water", "Tansy Cut")
                .put("number", "7");
        List.of("4", "0.7", "4").forEach(request.putArray("near")::add);
        List.of("14", "13", "14").forEach(request.putArray("far")::add);
        return ask(request);
    }

    /** Counts what is painted. */
    private static final class Counting implements DrawingCanvas {
        private int fills;
        private int strokes;
        private final List<String> texts = new ArrayList<>();

        @Override
        public void beginPath() {}

        @Override
        public void moveTo(double x, double y) {}

        @Override
        public void lineTo(double x, double y) {}

        @Override
        public void closePath() {}

        @Override
        public void fill(Colour colour) {
            fills++;
        }

        @Override
        public void stroke(Pen pen) {
            strokes++;
        }

        @Override
        public void write(Text text, double x, double y, Ink ink) {
            texts.add(text.words());
        }
    }

    private Counting paint(String options) throws IOException {
        Counting canvas = new Counting();
        JsonNode answer = JSON.readTree(conversation.paint(canvas, 360, 380, options, LetterOutlines.MEASURE));
        assertTrue(
                answer.path("refused").isMissingNode(), answer.path("refused").asText());
        return canvas;
    }

    @Test
    void aPegIsHeldByteForByte() throws IOException {
        JsonNode opened = granted("open", "name", "tansy-cut-9.peg.json", "text", sample());
        assertEquals("Tansy Cut, peg 9", opened.at("/state/title").asText());
        assertEquals(sample(), granted("text").path("text").asText());
    }

    @Test
    void aNewPegIsPlumbedUntilItHasLines() throws IOException {
        assertTrue(begin().path("text").asText().contains("near_bank"));
        assertTrue(granted("map").path("placeAlone").asBoolean());
        paint("{}");
        for (int i = 0; i < 4; i++) {
            JsonNode next = granted("next");
            JsonNode wheels = granted("wheels");
            String line =
                    wheels.at("/distance/items/" + wheels.at("/distance/at").asInt() + "/typed")
                                    .asText() + " "
                            + wheels.at("/clock/items/" + wheels.at("/clock/at").asInt() + "/typed")
                                    .asText() + " "
                            + wheels.at("/depth/keys/6/typed").asText();
            JsonNode added = granted("add", "line", line);
            assertEquals(i + 1, added.at("/state/readings").asInt(), next + " " + line);
            assertTrue(added.path("text").asText().contains("2026-05-02T09:14:05+01:00"), "the moment is kept");
            if (i > 0) {
                JsonNode soon = ask(JSON.createObjectNode().put("do", "map").put("provisional", true));
                assertTrue(
                        soon.path("shown").asBoolean()
                                && soon.path("provisional").asBoolean(),
                        soon.toString());
            }
            assertFalse(granted("map").path("placeAlone").asBoolean());
        }
        JsonNode plan = granted("plan");
        assertFalse(plan.path("lines").isEmpty());
        assertTrue(paint("{\"theme\":\"dark\"}").texts.size() > 10);
        assertEquals("Add reading", granted("undo").path("done").asText());
        assertEquals(3, granted("state").at("/state/readings").asInt());
        assertEquals(4, granted("redo").at("/state/readings").asInt());
    }

    @Test
    void whatIsRefusedChangesNothing() throws IOException {
        granted("open", "text", sample());
        String before = granted("text").path("text").asText();
        assertTrue(ask("add", "line", "99 0 4'6").path("refused").asText().contains("beyond the pole"));
        assertTrue(ask("add", "line", "what").has("refused"));
        assertTrue(ask("target", "typed", "what").has("refused"));
        assertTrue(ask("nothing").path("refused").asText().contains("nothing"));
        assertTrue(JSON.readTree(conversation.ask("{")).has("refused"));
        assertEquals(before, granted("text").path("text").asText());
    }

    @Test
    void aTapOnALineIsNoted() throws IOException {
        granted("open", "text", sample());
        granted("plan");
        JsonNode line = granted("day").at("/lines/0");
        assertEquals("Not fished or fed yet", line.path("state").asText());
        JsonNode noted = ask(JSON.createObjectNode()
                .put("do", "dayTap")
                .put("kind", "start")
                .put("x", line.path("x").asDouble())
                .put("y", line.path("y").asDouble())
                .put("now", "2026-11-28T10:00:00Z"));
        assertTrue(noted.path("noted").asText().startsWith("10:00 "), noted.toString());
        assertEquals(3, noted.at("/state/visit/number").asInt(), "another day, another visit");
        JsonNode later = ask(JSON.createObjectNode().put("do", "day").put("now", "2026-11-28T10:20:00Z"));
        assertTrue(later.at("/lines/0/fished").asBoolean());
        assertTrue(later.at("/lines/0/state").asText().startsWith("Fished now, 20 min"), later.toString());
        assertEquals(granted("day").path("kindsOfFish"), later.path("kindsOfFish"));
        JsonNode fish = ask(JSON.createObjectNode()
                .put("do", "dayTap")
                .put("kind", "fish")
                .put("fish", "skimmer")
                .put("x", line.path("x").asDouble())
                .put("y", line.path("y").asDouble())
                .put("now", "2026-11-28T10:20:30Z"));
        assertTrue(fish.path("noted").asText().endsWith("fish, skimmer"), fish.toString());
        assertEquals(
                "skimmer",
                ask(JSON.createObjectNode().put("do", "day").put("now", "2026-11-28T10:20:40Z"))
                        .at("/kindsOfFish/0")
                        .asText());
        JsonNode typed = ask(
                JSON.createObjectNode().put("do", "dayLine").put("line", "fish").put("now", "2026-11-28T10:21:00Z"));
        assertTrue(typed.path("text").asText().contains("\"fish\""), typed.toString());
        assertTrue(ask("dayTap", "kind", "dance").has("refused"));
    }

    @Test
    void whatIsCaughtLeavesTheAnswersAsTheyAre() throws IOException {
        granted("open", "text", sample());
        granted("map");
        granted("next");
        assertTrue(granted("plan").path("refused").isMissingNode());
        assertTrue(granted("state").at("/state/answered").asBoolean());
        JsonNode another = ask(
                JSON.createObjectNode().put("do", "dayTap").put("kind", "stop").put("now", "2026-11-28T10:00:00Z"));
        assertFalse(another.at("/state/answered").asBoolean(), "a visit has begun");
        assertFalse(granted("undo").at("/state/answered").asBoolean());
        granted("map");
        granted("next");
        granted("plan");
        assertTrue(
                granted("dayLine", "line", "line 1 fish").at("/state/answered").asBoolean());
        assertTrue(granted("undo").at("/state/answered").asBoolean());
        assertFalse(granted("add", "line", "11 20L 4'6").at("/state/answered").asBoolean());
        assertFalse(granted("undo").at("/state/answered").asBoolean());
    }

    @Test
    void theDayIsPaintedAsHighAsItIs() throws IOException {
        granted("open", "text", sample());
        granted("plan");
        Counting canvas = new Counting();
        List<Double> heights = new ArrayList<>();
        Conversation.Sheet sheet = height -> {
            heights.add(height);
            return canvas;
        };
        String now = "{\"now\":\"" + NOW + "\"}";
        assertEquals("{\"height\":0}", conversation.paintDay(sheet, 360, now, LetterOutlines.MEASURE));
        granted("dayLine", "line", "line 1 fish");
        JsonNode painted = JSON.readTree(conversation.paintDay(sheet, 360, now, LetterOutlines.MEASURE));
        assertEquals(List.of(painted.path("height").asDouble()), heights);
        assertTrue(canvas.texts.contains("line 1") && canvas.texts.contains("1 fish"), canvas.texts.toString());
    }

    @Test
    void otherPegsOfTheWaterInformANewOne() throws IOException {
        ObjectNode request = JSON.createObjectNode()
                .put("do", "open")
                .put("name", "tansy-cut-9.peg.json")
                .put("text", sample());
        request.putArray("neighbours")
                .addObject()
                .put("name", "tansy-cut-14.peg.json")
                .put("text", Files.readString(Path.of("sample-pegs/tansy-cut-14.peg.json")));
        ask(request);
        JsonNode alone = ask(JSON.createObjectNode().put("do", "map").put("provisional", true));
        assertTrue(alone.path("shown").asBoolean() && alone.path("provisional").asBoolean(), alone.toString());
        assertTrue(alone.path("neighbours").isMissingNode(), "its own readings come first");
        JsonNode all = granted("map");
        assertFalse(all.path("provisional").asBoolean());
        assertTrue(all.path("neighbours").asText().contains("other peg"), all.toString());
    }

    @Test
    void theMapIsPannedZoomedAndTapped() throws IOException {
        granted("open", "text", sample());
        granted("map");
        paint("{\"here\":{\"x\":1,\"y\":8}}");
        ObjectNode closer = JSON.createObjectNode()
                .put("do", "camera")
                .put("zoom", 2)
                .put("x", 180)
                .put("y", 190);
        assertFalse(ask(closer).path("all").asBoolean());
        assertTrue(paint("{\"moving\":true}").fills > 3);
        assertTrue(paint("{\"moving\":true}").strokes > 0);
        JsonNode at =
                ask(JSON.createObjectNode().put("do", "place").put("x", 180).put("y", 190));
        assertFalse(at.path("words").asText().isEmpty());
        assertTrue(Math.abs(at.path("x").asDouble()) < 16);
        assertTrue(ask(JSON.createObjectNode().put("do", "camera").put("all", true))
                .path("all")
                .asBoolean());
    }
}
