package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/** The page where its workers have no WebAssembly. Needs what the profile {@code phone} builds. */
@Tag("phone")
@Tag("phone-long")
class PhoneFallbackTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String SAMPLE = "sample-pegs/tansy-cut-9.peg.json";

    @TempDir(cleanup = CleanupMode.NEVER)
    Path folder;

    @Test
    void withoutWebAssemblyTheMapIsTheSameAndWorksWithTheNetworkGone() throws Exception {
        try (Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            Chromium.Tab tab = person.tab();
            tab.phone(390, 844, 2);
            String address;
            try (Site site = new Site(withoutWebAssembly())) {
                address = site.address();
                person.open(address);
                tab.value("document.body.dataset.done = 'false'");
                person.give(Path.of(SAMPLE));
                person.answered();
                tab.await("navigator.serviceWorker.controller");
                assertEquals(deepest(), shown(tab));
                JsonNode kept = tab.value("caches.keys().then((all) => caches.open(all[0]))"
                        + ".then((cache) => cache.keys()).then((all) => all.map(({ url }) => url.split('/').pop()))");
                assertTrue(kept.toString().contains("\"pegbed-core.js\""), kept.toString());
                assertTrue(!kept.toString().contains("wasm"), kept.toString());
            }
            person.open(address);
            person.answered();
            assertEquals(deepest(), shown(tab));
            person.tap("#to-lines");
            assertTrue(
                    tab.value("document.querySelectorAll('#plan .line').length").asInt() > 0, "no lines");
            assertEquals(
                    List.of(),
                    browser.said().stream()
                            .filter(said -> !said.contains("ERR_CONNECTION_REFUSED"))
                            .toList());
        }
    }

    private static Map<String, byte[]> withoutWebAssembly() throws Exception {
        Map<String, byte[]> files = PhoneUser.files();
        for (String script : List.of("worker.js", "service-worker.js")) {
            String text = new String(files.get(script), StandardCharsets.UTF_8);
            files.put(script, ("delete self.WebAssembly;\n" + text).getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }

    private static String shown(Chromium.Tab tab) throws Exception {
        return tab.value("document.querySelector('#map').getAttribute('aria-label')")
                .asText();
    }

    /** What Java says of the sample, as the page says it. */
    private static String deepest() throws Exception {
        Conversation java = new Conversation();
        java.ask(JSON.createObjectNode()
                .put("do", "open")
                .put("text", Files.readString(Path.of(SAMPLE)))
                .toString());
        JsonNode map = JSON.readTree(java.ask("{\"do\":\"map\"}"));
        JsonNode deepest = map.path("deepest");
        return "Map of " + map.at("/state/title").asText() + ". "
                + deepest.path("title").asText() + ": " + deepest.path("where").asText() + ". "
                + deepest.path("what").asText();
    }
}
