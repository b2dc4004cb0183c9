package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/** The day's fishing on the page, by a thumb, in a real browser. Needs what the profile {@code phone} builds. */
@Tag("phone")
class PhoneFishingTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String FIRST = "#fished-lines > :first-child ";

    @TempDir(cleanup = CleanupMode.NEVER)
    Path folder;

    @Test
    void aDayOfTapsIsThereAfterTheTabWasClosed() throws Exception {
        try (Site site = new Site(PhoneUser.files());
                Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            Chromium.Tab tab = person.tab();
            tab.phone(390, 844, 2);
            person.open(site.address());
            person.beginPeg("5");
            for (int i = 0; i < 4; i++) {
                person.plumb(PhoneUseTest::depth);
            }
            person.answered();
            person.tap("#to-fishing");
            tab.await("document.querySelector('#fished-lines article')");
            assertTrue(tab.value("document.querySelector('#stop').disabled").asBoolean(), "nothing is fished yet");

            person.noted(FIRST + "[data-kind=start]");
            tab.await("document.querySelector('#fished-lines > .fished')");
            int before = person.taps();
            person.noted(FIRST + "[data-kind=fish]");
            assertEquals(1, person.taps() - before, "taps for a fish");
            assertEquals("true", tab.value("document.body.dataset.done").asText(), "the map was worked out again");
            person.noted(FIRST + "[data-kind=feed]");
            person.noted(FIRST + "[data-kind=bite]");
            person.noted(FIRST + "[data-kind=lost]");
            person.typeEvent("fish skimmer");
            tab.await("document.querySelector('#kinds [data-kind=skimmer]')");
            person.noted("#kinds [data-kind=skimmer]", FIRST + "[data-kind=fish]");
            assertTrue(words(tab, "#noted").contains("skimmer"), words(tab, "#noted"));
            person.noted(FIRST + "[data-kind=bite]");
            person.tap("#undo");
            tab.await("document.querySelector('#noted').textContent === ''");
            tab.await("!document.querySelector('#strip-part').hidden");
            assertEquals(List.of(), PhoneAudit.of(tab, "fishing"));

            tab.close();
            PhoneUser again = new PhoneUser(browser.tab());
            again.tab().phone(390, 844, 2);
            again.open(site.address());
            again.answered();
            assertEquals(List.of("start", "fish", "feed", "bite", "lost", "fish", "fish"), kinds(again), "events kept");
            again.tap("#to-fishing");
            again.tab().await("document.querySelector('#fished-lines > .fished')");
            assertTrue(words(again.tab(), FIRST + ".state").contains("3 fish"), words(again.tab(), FIRST + ".state"));
            again.noted("#stop");
            again.tab().await("!document.querySelector('#fished-lines > .fished')");
            assertEquals("stop", kinds(again).get(7));
            assertEquals(List.of(), browser.said());
        }
    }

    private static List<String> kinds(PhoneUser person) throws Exception {
        List<String> kinds = new ArrayList<>();
        JsonNode events = JSON.readTree(person.kept().get(0)).at("/visits/0/events");
        events.forEach(event -> kinds.add(event.path("event").asText()));
        return kinds;
    }

    private static String words(Chromium.Tab tab, String selector) throws Exception {
        return tab.value("document.querySelector('" + selector + "').textContent")
                .asText();
    }
}
