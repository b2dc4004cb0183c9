package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Pole;
import pegbed.model.Visit;
import pegbed.storage.peg.PegWriter;
import pegbed.storage.table.BanksTable;
import pegbed.storage.table.ReadingsTable;

/**
 * The core as WebAssembly in a real browser's worker gives Java's numbers and Java's words. Needs
 * {@code target/phone-core}, which the profile {@code phone} builds, and a Chromium.
 */
@Tag("phone")
class PhoneCoreTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path BUILT = Path.of("target/phone-core");

    /** What an angler might type wrongly, or in another hand, beside all that the page for anglers shows. */
    private static final List<String> MORE_LINES = List.of(
            "",
            "11",
            "11 20L",
            "s6 @post 2'9",
            "s99 12 4'",
            "11 20L 4'6\n12 20L 5'",
            "11\u00A020L 4'6",
            "11 20L 4 ½",
            "11 20L 4'6 SILT and leaves",
            "snag 9 20R 40",
            "edge 0.01 80L",
            "40 0 4'6",
            "11 200L 4'6",
            "18.5 0 1.005m",
            "s6 11:30 0");

    @TempDir(cleanup = CleanupMode.NEVER)
    Path profile;

    @Test
    void numbersAndWordsAreThoseOfJava() throws Exception {
        Map<String, String> pegs = new LinkedHashMap<>();
        try (Stream<Path> files = Files.list(Path.of("sample-pegs"))) {
            for (Path sample : files.filter(file -> file.toString().endsWith(".peg.json"))
                    .sorted()
                    .toList()) {
                pegs.put(sample.toString(), Files.readString(sample));
            }
        }
        assertTrue(pegs.size() >= 3, "the samples are missing");
        List<String> typed = typedLines();
        assertTrue(typed.size() > 60, "the page of the notation lost its examples");
        compare(pegs, typed);
    }

    /** Simulated pegs stand beside the project where it is developed; elsewhere they are left out. */
    @Test
    void practicePegsToo() throws Exception {
        Map<String, String> pegs = new LinkedHashMap<>();
        for (String folder : List.of("practice", "practice-dug", "practice-relief")) {
            Path practice = Path.of("../shared", folder);
            if (Files.isDirectory(practice)) {
                Path first = firstPeg(practice);
                pegs.put(first.toString(), PegWriter.text(peg(first)));
            }
        }
        assumeFalse(pegs.isEmpty(), "no folder of practice pegs stands beside the project");
        compare(pegs, List.of("11 20L 4'6"));
    }

    private static Path firstPeg(Path practice) throws IOException {
        try (Stream<Path> folders = Files.list(practice)) {
            return folders.filter(Files::isDirectory).sorted().findFirst().orElseThrow();
        }
    }

    private static Peg peg(Path folder) throws IOException, InputException {
        ReadingsTable readings = ReadingsTable.read(folder.resolve("fan15.csv"));
        double reach = JSON.readTree(folder.resolve("about.json").toFile())
                .path("reach_m")
                .asDouble();
        return Peg.EMPTY
                .withPole(Pole.USUAL.withReach(reach))
                .withBanks(BanksTable.read(folder.resolve("banks.csv")).banks())
                .withToday(visit -> Visit.EMPTY.withReadings(readings.readings()));
    }

    private void compare(Map<String, String> pegs, List<String> typed) throws Exception {
        List<String> texts = List.copyOf(pegs.values());
        ObjectNode questions = JSON.createObjectNode();
        texts.forEach(questions.putArray("pegs")::add);
        typed.forEach(questions.putArray("typed")::add);
        questions.put("at", texts.get(0));

        JsonNode answers = answers(JSON.writeValueAsBytes(questions));

        assertTrue(answers.path("error").isMissingNode(), answers.path("error").asText());
        List<String> names = List.copyOf(pegs.keySet());
        for (int i = 0; i < texts.size(); i++) {
            check(names.get(i), PegAnswers.of(texts.get(i)), answers.at("/pegs/" + i));
        }
        for (int i = 0; i < typed.size(); i++) {
            assertEquals(
                    PegAnswers.understood(texts.get(0), typed.get(i)),
                    answers.at("/typed/" + i).asText(),
                    typed.get(i));
        }
    }

    private static void check(String name, PegAnswers java, JsonNode browser) {
        String[] numbers = browser.path("numbers").asText().split(" ");
        assertEquals(java.numbers().size(), numbers.length, name + ": " + numbers[0]);
        for (int i = 0; i < numbers.length; i++) {
            assertEquals(java.numbers().get(i), Double.parseDouble(numbers[i]), 1e-9, name + ", number " + i);
        }
        assertEquals(String.join("\n", java.words()), browser.path("words").asText(), name);
        assertEquals(java.text(), browser.path("text").asText(), name);
    }

    /** What the core answers in a worker of a page. */
    private JsonNode answers(byte[] questions) throws Exception {
        try (Site site = new Site(files(questions));
                Chromium browser = new Chromium(profile)) {
            Chromium.Tab tab = browser.tab();
            tab.open(site.address());
            tab.await("window.answers");
            return tab.value("window.answers");
        }
    }

    private static Map<String, byte[]> files(byte[] questions) throws IOException {
        Map<String, byte[]> files = new HashMap<>();
        files.put("questions.json", questions);
        for (String built : List.of("pegbed.wasm", "pegbed.wasm-runtime.js")) {
            files.put(built, Files.readAllBytes(BUILT.resolve(built)));
        }
        for (String own : List.of("index.html", "page.js", "worker.js")) {
            try (InputStream in = PhoneCoreTest.class.getResourceAsStream("/phone/" + own)) {
                files.put(own, in.readAllBytes());
            }
        }
        return files;
    }

    /** Everything in code letters in the tables of the page for anglers, and more. */
    private static List<String> typedLines() throws IOException {
        Set<String> lines = new LinkedHashSet<>(MORE_LINES);
        Pattern code = Pattern.compile("`([^`]+)`");
        for (String row : Files.readAllLines(Path.of("docs/notation.md"))) {
            Matcher each = code.matcher(row);
            while (row.startsWith("|") && each.find()) {
                lines.add(each.group(1));
                lines.add("11 20L " + each.group(1));
                lines.add(each.group(1) + " 20L 4'6");
                lines.add("s6 " + each.group(1) + " 4'6");
            }
        }
        return List.copyOf(lines);
    }
}
