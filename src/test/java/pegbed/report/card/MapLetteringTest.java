package pegbed.report.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.plan.Plan;
import pegbed.report.card.MapLettering.Shown;
import pegbed.report.card.MapLettering.Size;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Theme;
import pegbed.report.paint.LetterOutlines;

/** What {@code docs/map-lettering.md} states: letters that can be read, and nothing that covers anything. */
class MapLetteringTest {
    private static void assertLegible(String name, Shown shown, Map<String, Theme> themes) {
        assertEquals(List.of(), MapLettering.overlaps(shown).found, name);
        themes.forEach((theme, colours) -> {
            Map<Text, Double> contrasts = MapLettering.contrasts(shown, colours, 2);
            assertEquals(MapLettering.texts(shown).size(), contrasts.size(), name + ": labels that were not measured");
            contrasts.forEach((text, contrast) -> assertTrue(
                    contrast >= MapLettering.LEAST_CONTRAST,
                    name + ", " + theme + ", " + text.role() + " '" + text.words() + "': " + contrast));
        });
    }

    @Test
    void onACardAndASmallWindow() {
        Plan plan = Plans.SAMPLES.get(0);
        for (Size size : List.of(Size.CARD, Size.TWICE)) {
            Shown shown = MapLettering.shown(plan, size).get(0);
            Theme print = MapLettering.THEMES.get("print");
            Theme dark = MapLettering.THEMES.get("dark");
            assertLegible(size.words, shown, Map.of("print", print, "dark", dark));
        }
    }

    /** Contrast with the flat spots shown; in light as in print, whose tints and inks are the same. */
    @Test
    @Tag("slow")
    void onEveryPegInEveryThemeAndSize() throws Exception {
        Map<String, Theme> themes = new LinkedHashMap<>(MapLettering.THEMES);
        themes.remove("light");
        for (Map.Entry<String, Plan> peg : MapLettering.pegs().entrySet()) {
            for (Size size : Size.values()) {
                String name = peg.getKey() + ", " + size.words;
                List<Shown> shown = MapLettering.shown(peg.getValue(), size);
                assertLegible(name, shown.get(shown.size() - 1), themes);
                for (Shown one : shown) {
                    assertEquals(List.of(), MapLettering.overlaps(one).found, name);
                    assertAimsAreNamed(peg.getValue(), one.drawing(), name);
                }
            }
        }
    }

    /** The names that a line is aimed by, and straight out, which is an aim too. */
    @Test
    void everyMarkAndTwelveAreNamedOnCardAndMap() {
        for (Size size : List.of(Size.CARD, Size.PHONE, Size.TWICE)) {
            for (Shown shown : MapLettering.shown(Plans.SAMPLES.get(1), size)) {
                assertAimsAreNamed(Plans.SAMPLES.get(1), shown.drawing(), size.words);
            }
        }
    }

    private static void assertAimsAreNamed(Plan plan, Drawing drawing, String where) {
        List<String> names = drawing.of(Role.MARK_LABEL).stream()
                .map(item -> ((Text) item).words())
                .sorted()
                .toList();
        assertEquals(
                plan.findings().map().peg().marks().stream()
                        .map(mark -> mark.name())
                        .sorted()
                        .toList(),
                names,
                where);
        assertTrue(
                drawing.of(Role.CLOCK_FIGURE).stream()
                        .anyMatch(item -> ((Text) item).words().equals("12")),
                where);
    }

    /** The model's alone: what is joined up must not get onto a card, whatever the window shows. */
    @Test
    void aCardIsNeverJoinedUp() {
        Drawing card = CardDrawing.of(Plans.SAMPLES.get(0), LetterOutlines.MEASURE);
        assertEquals(List.of(), card.of(Role.JOINED_UP));
        assertTrue(card.of(Role.LINE_BADGE).size() > 0);
    }
}
