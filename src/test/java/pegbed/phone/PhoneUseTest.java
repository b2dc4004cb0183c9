package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
            assertReached(person.tab());
            person.tap("#to-lines");
            assertReached(person.tab());
            assertTrue(
                    person.tab()
                                    .value("document.querySelectorAll('#plan .line').length")
                                    .asInt()
                            > 0,
                    "no lines");
            person.tap("#to-peg");
            assertReached(person.tab());
            assertEquals(
                    12,
                    JSON.readTree(person.kept().get(0)).at("/visits/0/readings").size(),
                    "readings kept");
            assertNoFault(browser);
        }
    }

    private static void assertReached(Chromium.Tab tab) throws Exception {
        assertEquals(List.of(), PhoneAudit.targets(tab, ""));
        assertEquals(List.of(), PhoneAudit.reach(tab, ""));
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
            person.downloadTo(downloads);
            person.open(site.address());
            for (Path sample : samples) {
                person.tab().value("document.body.dataset.done = 'false'");
                person.give(sample);
                person.answered();
                person.tap("#to-peg");
                person.tap("#save");
                assertArrayEquals(
                        Files.readAllBytes(sample),
                        PhoneUser.saved(downloads.resolve(sample.getFileName())),
                        sample.toString());
            }
            assertEquals(samples.size(), person.kept().size());
            assertNoFault(browser);
        }
    }

    @Tag("phone-long")
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

    @Tag("phone-long")
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
}
