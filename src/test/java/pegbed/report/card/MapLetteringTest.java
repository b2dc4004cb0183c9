package pegbed.report.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import pegbed.report.map.Pegs;

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

    @Test
    @Tag("slow")
    void onEveryPegInEveryThemeAndSize() throws Exception {
        for (Map.Entry<String, Plan> peg : MapLettering.pegs().entrySet()) {
            for (Size size : Size.values()) {
                for (Shown shown : MapLettering.shown(peg.getValue(), size)) {
                    assertLegible(peg.getKey() + ", " + size.words, shown, MapLettering.THEMES);
                }
            }
        }
    }

    /** The names that a line is aimed by, and straight out, which is an aim too. */
    @Test
    void everyMarkAndTwelveAreNamedOnCardAndMap() {
        for (Plan plan : List.of(Plans.SAMPLES.get(0), Plans.SAMPLES.get(1), Plans.SAMPLES.get(2))) {
            for (Size size : Size.values()) {
                for (Shown shown : MapLettering.shown(plan, size)) {
                    assertAimsAreNamed(plan, shown.drawing(), size.words);
                }
            }
        }
        assertAimsAreNamed(
                Plans.plan(Pegs.full()), CardDrawing.of(Plans.plan(Pegs.full()), pegbed.report.paint.AwtLetters.MEASURE), "card");
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
        Drawing card = CardDrawing.of(Plans.SAMPLES.get(0), pegbed.report.paint.AwtLetters.MEASURE);
        assertEquals(List.of(), card.of(Role.JOINED_UP));
        assertTrue(card.of(Role.LINE_BADGE).size() > 0);
    }
}
