package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.Place;

/** The page for a phone as a person uses it, in a real browser. Needs what the profile {@code phone} builds. */
@Tag("phone")
class PhoneUseTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** How often the page is left at a random moment; more by {@code -Dphone.ends=200}. */
    private static final int ENDS = Integer.getInteger("phone.ends", 6);

    /** Then another peg is begun: one with hundreds of readings would only make each end slower. */
    private static final int ENDS_A_PEG = 12;

    /** CSS px: at least 12 mm of a thumb. */
    private static final int THUMB_PIXELS = 56;

    @TempDir(cleanup = CleanupMode.NEVER)
    Path folder;

    /** An invented cut: 13 m across, 1.6 m deep, with shelves of about 0.8 m under both banks. */
    static double depth(Place place) {
        double fromNear = Math.max(0, place.yMetres() - 0.7);
        double fromFar = Math.max(0, 13 - place.yMetres());
        double nearer = Math.min(fromNear, fromFar);
        double shelf = 0.8 * (1 - Math.exp(-3 * nearer));
        return shelf + 0.8 / (1 + Math.exp(-4 * (nearer - 3.5)));
    }

    @Test
    void aPersonGoesFromANewPegToLinesWithTheNetworkGone() throws Exception {
        try (Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            person.tab().phone(390, 844, 2);
            String address;
            try (Site site = new Site(PhoneUser.files())) {
                address = site.address();
                person.open(address);
                person.tab().await("navigator.serviceWorker.controller");
            }
            person.open(address);
            person.beginPeg("");
            assertTrue(person.taps() <= 6, "a new peg took " + person.taps() + " taps");
            int before = person.taps();
            for (int i = 0; i < 12; i++) {
                person.plumb(PhoneUseTest::depth);
            }
            int taps = person.taps() - before;
            assertTrue(taps <= 4 * 12, "12 readings took " + taps + " taps");
            System.out.println("12 readings at proposed places took " + taps + " taps.");
            person.answered();
            assertSmall(person.tab());
            person.tap("#to-lines");
            assertSmall(person.tab());
            assertTrue(
                    person.tab()
                                    .value("document.querySelectorAll('#plan .line').length")
                                    .asInt()
                            > 0,
                    "no lines");
            person.tap("#to-peg");
            assertSmall(person.tab());
            assertEquals(
                    12,
                    JSON.readTree(person.kept().get(0)).at("/visits/0/readings").size(),
                    "readings kept");
            assertNoFault(browser);
        }
    }

    /** What a finger is meant for is large enough, and nothing is cut off at the side. */
    private static void assertSmall(Chromium.Tab tab) throws Exception {
        JsonNode small =
                tab.value("[...document.querySelectorAll('button, summary, select, input, label.choice, .file')]"
                        + ".filter((e) => e.checkVisibility() && !['radio', 'file'].includes(e.type))"
                        + ".map((e) => [e.id || e.textContent, e.getBoundingClientRect()])"
                        + ".filter(([, box]) => box.width > 0 && (box.width < " + (THUMB_PIXELS - 0.5)
                        + " || box.height < "
                        + (THUMB_PIXELS - 0.5)
                        + ")).map(([name, box]) => name + ' ' + box.width + ' x ' + box.height)");
        assertEquals("[]", small.toString());
        assertTrue(
                tab.value(
                                "document.documentElement.scrollWidth <= innerWidth"
                                        + " && document.querySelector('#parts').scrollWidth <= document.querySelector('#parts').clientWidth")
                        .asBoolean(),
                "something is wider than the screen");
    }

    private static void assertNoFault(Chromium browser) {
        assertEquals(
                List.of(),
                browser.said().stream()
                        .filter(said -> !said.contains("ERR_CONNECTION_REFUSED"))
                        .toList());
    }

    @Test
    void nothingThatWasConfirmedIsLostWhenThePageEndsAtAnyMoment() throws Exception {
        Random random = new Random(18);
        List<String> confirmed = new ArrayList<>();
        Path profile = folder.resolve("profile");
        try (Site site = new Site(PhoneUser.files())) {
            Chromium browser = new Chromium(profile);
            PhoneUser person = new PhoneUser(browser.tab());
            try {
                person.open(site.address());
                person.beginPeg("7");
                int number = 0;
                int inPeg = 0;
                for (int end = 0; end < ENDS; end++) {
                    int readings = 1 + random.nextInt(3);
                    for (int i = 0; i < readings; i++) {
                        number++;
                        String line = "11 " + (number % 60) + "L " + (60 + number % 100) + "cm n" + number;
                        assertEquals(Optional.empty(), person.type(line));
                        confirmed.add("n" + number);
                    }
                    // One more is on its way when the page ends; nobody has been told that it is kept.
                    number++;
                    person.tab()
                            .value("document.querySelector('#line').value = '9 10R 90cm n" + number + "';"
                                    + " document.querySelector('#entry').requestSubmit(); true");
                    TimeUnit.MILLISECONDS.sleep(random.nextInt(120));
                    if (random.nextBoolean()) {
                        browser.kill();
                        browser = new Chromium(profile);
                        person = new PhoneUser(browser.tab());
                    }
                    person.open(site.address());
                    String text = String.join("\n", person.kept());
                    for (String note : confirmed) {
                        assertTrue(text.contains('"' + note + '"'), note + " is lost after end " + end);
                    }
                    if (++inPeg == ENDS_A_PEG) {
                        inPeg = 0;
                        person.tap("#to-peg");
                        person.beginPeg(String.valueOf(end));
                    }
                }
            } finally {
                browser.close();
            }
        }
    }

    @Test
    void filesComeAndGoByteForByte() throws Exception {
        List<Path> samples;
        try (Stream<Path> files = Files.list(Path.of("sample-pegs"))) {
            samples = files.filter(file -> file.toString().endsWith(".peg.json"))
                    .sorted()
                    .toList();
        }
        Path downloads = Files.createDirectories(folder.resolve("downloads"));
        try (Site site = new Site(PhoneUser.files());
                Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            person.tab().phone(390, 844, 2);
            person.tab()
                    .send(
                            "Browser.setDownloadBehavior",
                            JSON.createObjectNode().put("behavior", "allow").put("downloadPath", downloads.toString()));
            person.open(site.address());
            for (Path sample : samples) {
                person.tab().value("document.body.dataset.done = 'false'");
                give(person.tab(), sample);
                person.answered();
                person.tap("#to-peg");
                person.tap("#save");
                Path saved = downloads.resolve(sample.getFileName());
                for (int i = 0; i < 400 && !Files.exists(saved); i++) {
                    Thread.sleep(25);
                }
                assertArrayEquals(Files.readAllBytes(sample), Files.readAllBytes(saved), sample.toString());
            }
            assertEquals(samples.size(), person.kept().size());
            assertNoFault(browser);
        }
    }

    private static void give(Chromium.Tab tab, Path file) throws Exception {
        int root = tab.send("DOM.getDocument", JSON.createObjectNode())
                .at("/root/nodeId")
                .asInt();
        int input = tab.send(
                        "DOM.querySelector",
                        JSON.createObjectNode().put("nodeId", root).put("selector", "#files"))
                .path("nodeId")
                .asInt();
        ObjectNode parameters = JSON.createObjectNode().put("nodeId", input);
        parameters.putArray("files").add(file.toAbsolutePath().toString());
        tab.send("DOM.setFileInputFiles", parameters);
    }

    @Test
    void aSecondTabSaysThatThePegIsOpen() throws Exception {
        try (Site site = new Site(PhoneUser.files());
                Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            person.open(site.address());
            person.beginPeg("4");
            PhoneUser second = new PhoneUser(browser.tab());
            second.open(site.address());
            second.tab().await("document.querySelector('#news').textContent.includes('open in another tab')");
        }
    }

    @Test
    void aFullStoreIsToldAndNothingIsAdded() throws Exception {
        Path profile = folder.resolve("profile");
        try (Site site = new Site(PhoneUser.files())) {
            try (Chromium browser = new Chromium(profile)) {
                PhoneUser person = new PhoneUser(browser.tab());
                person.open(site.address());
                person.beginPeg("4");
            }
            // The browser looks at its quota anew when it has just begun.
            try (Chromium browser = new Chromium(profile)) {
                PhoneUser person = new PhoneUser(browser.tab());
                ObjectNode full =
                        JSON.createObjectNode().put("origin", site.address().replaceAll("/$", ""));
                person.tab()
                        .send("Storage.overrideQuotaForOrigin", full.deepCopy().put("quotaSize", 1));
                person.open(site.address());
                person.answered();
                String refused = person.type("11 20L 4'6").orElse("nothing was refused");
                assertTrue(refused.contains("storage is full"), refused);
                assertEquals(
                        "11 20L 4'6",
                        person.tab()
                                .value("document.querySelector('#line').value")
                                .asText());
                assertTrue(!person.kept().get(0).contains("20L"), "kept all the same");
                person.tab().send("Storage.overrideQuotaForOrigin", full);
                assertEquals(Optional.empty(), person.type("11 20L 4'6"));
                assertTrue(person.kept().get(0).contains("20L"), "not kept");
            }
        }
    }

    @Test
    void thePageInOneFileDoesTheMainJob() throws Exception {
        try (Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            person.tab().phone(390, 844, 2);
            String address = PhoneUser.BUILT
                    .resolve("pegbed-phone.html")
                    .toAbsolutePath()
                    .toUri()
                    .toString();
            person.open(address);
            person.beginPeg("");
            for (int i = 0; i < 5; i++) {
                person.plumb(PhoneUseTest::depth);
            }
            person.answered();
            person.tap("#to-lines");
            assertTrue(
                    person.tab()
                                    .value("document.querySelectorAll('#plan .line').length")
                                    .asInt()
                            > 0,
                    "no lines");
            person.open(address);
            person.answered();
            assertTrue(!person.tab()
                    .value("document.querySelector('#to-plumb').hidden")
                    .asBoolean());
            assertNoFault(browser);
        }
    }

    @Test
    void axeFindsNoFaultOfAccessibility() throws Exception {
        try (Site site = new Site(PhoneUser.files());
                Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            Chromium.Tab tab = person.tab();
            tab.phone(390, 844, 2);
            tab.open(site.address());
            tab.await("document.querySelector('#cautions').open");
            try (InputStream in = PhoneUseTest.class.getResourceAsStream("/axe.min.js")) {
                String axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                List<String> faults = new ArrayList<>();
                tab.value(axe + "; true");
                look(tab, "cautions", faults);
                tab.tap("#cautions-read");
                person.ready();
                look(tab, "start", faults);
                tab.tap("#new");
                tab.await("document.querySelector('#new-peg').open");
                look(tab, "new peg", faults);
                tab.tap("#new-peg .main");
                for (int i = 0; i < 4; i++) {
                    person.plumb(PhoneUseTest::depth);
                }
                person.answered();
                for (int look = 0; look < 4; look++) {
                    tab.tap("#to-peg");
                    tab.tap(".choice:has([name=look][value='" + look + "'])");
                    for (String part : List.of("peg", "lines", "plumb")) {
                        tab.tap("#to-" + part);
                        look(tab, part + " in look " + look, faults);
                    }
                    tab.tap("#distance-wheel .value");
                    look(tab, "a wheel's sheet in look " + look, faults);
                    tab.tap("#choices > button");
                }
                assertEquals(List.of(), faults);
            }
        }
    }

    private static void look(Chromium.Tab tab, String state, List<String> faults) throws Exception {
        JsonNode found = tab.value(
                "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa',"
                        + " 'best-practice'] }).then((all) => all.violations.map((fault) => fault.id + ': '"
                        + " + fault.nodes.map((node) => node.html.slice(0, 120) + ' ' + node.failureSummary).join('; ')))");
        found.forEach(fault -> faults.add(state + ": " + fault.asText()));
    }
}
