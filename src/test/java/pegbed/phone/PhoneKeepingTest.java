package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the page keeps, and what it says where it can't, in a real browser. Needs what the profile {@code phone} builds.
 */
@Tag("phone")
@Tag("phone-long")
class PhoneKeepingTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir(cleanup = CleanupMode.NEVER)
    Path folder;

    @Test
    void aDamagedFileIsKeptAsItWas() throws Exception {
        String sample = Files.readString(Path.of("sample-pegs/tansy-cut-9.peg.json"));
        byte[] damaged =
                (sample.substring(0, 2 * sample.length() / 3) + "\uFEFF\r\né").getBytes(StandardCharsets.UTF_8);
        Path file = Files.write(folder.resolve("cut.peg.json"), damaged);
        Path downloads = Files.createDirectories(folder.resolve("downloads"));
        try (Site site = new Site(PhoneUser.files());
                Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            person.downloadTo(downloads);
            person.open(site.address());
            person.give(file);
            person.answered();
            person.tab().await("document.querySelector('#news').textContent.includes('is damaged at')");
            assertEquals(Optional.empty(), person.type("11 20L 4'6"));
            person.open(site.address());
            person.answered();
            person.tap("#to-peg");
            person.tap("#save-as-it-was");
            assertArrayEquals(damaged, PhoneUser.saved(downloads.resolve("damaged-cut.peg.json")));
            person.tap("#save");
            JsonNode whole = JSON.readTree(PhoneUser.saved(downloads.resolve("cut.peg.json")));
            assertTrue(whole.at("/visits").size() > 0, "what could be read, with the reading");
        }
    }

    @Test
    void aPrivateWindowIsToldThatItForgets() throws Exception {
        Path profile = folder.resolve("profile");
        try (Site site = new Site(PhoneUser.files())) {
            whilePrivate(site, profile);
            try (Chromium browser = new Chromium(profile)) {
                PhoneUser person = new PhoneUser(browser.tab());
                person.open(site.address());
                assertEquals(List.of(), person.kept(), "the window was not private");
            }
        }
    }

    private static void whilePrivate(Site site, Path profile) throws Exception {
        try (Chromium browser = new Chromium(profile)) {
            PhoneUser person = new PhoneUser(browser.privateTab());
            person.open(site.address());
            person.beginPeg("4");
            assertEquals(Optional.empty(), person.type("11 20L 4'6"));
            person.open(site.address());
            person.answered();
            assertTrue(person.kept().get(0).contains("20L"), "lost while the window is open");
            assertTrue(
                    person.tab()
                            .value("document.querySelector('#how-kept').textContent")
                            .asText()
                            .contains("a private window forgets them"),
                    "not told");
        }
    }

    @Test
    void withoutAStoreThePageSaysSoAndWorks() throws Exception {
        Path downloads = Files.createDirectories(folder.resolve("downloads"));
        try (Site site = new Site(PhoneUser.files());
                Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            person.downloadTo(downloads);
            person.tab()
                    .send(
                            "Page.addScriptToEvaluateOnNewDocument",
                            JSON.createObjectNode()
                                    .put(
                                            "source",
                                            "IDBFactory.prototype.open = () => { throw new DOMException('', 'SecurityError'); };"));
            person.open(site.address());
            person.tab().await("document.querySelector('#news').textContent.includes('keeps nothing here')");
            person.beginPeg("4");
            assertEquals(Optional.empty(), person.type("11 20L 4'6"));
            person.tap("#to-peg");
            person.tap("#save");
            String saved = new String(PhoneUser.saved(downloads.resolve("4.peg.json")), StandardCharsets.UTF_8);
            assertTrue(saved.contains("20L"), saved);
        }
    }
}
