package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
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
        List<Path> samples;
        try (Stream<Path> files = Files.list(Path.of("sample-pegs"))) {
            samples = files.filter(file -> file.toString().endsWith(".peg.json"))
                    .sorted()
                    .toList();
        }
        List<String> pegs = new ArrayList<>();
        for (Path sample : samples) {
            pegs.add(Files.readString(sample));
        }
        assertTrue(pegs.size() >= 3, "the samples are missing");
        List<String> typed = typedLines();
        assertTrue(typed.size() > 60, "the page of the notation lost its examples");
        ObjectNode questions = JSON.createObjectNode();
        pegs.forEach(questions.putArray("pegs")::add);
        typed.forEach(questions.putArray("typed")::add);
        questions.put("at", pegs.get(0));

        JsonNode answers = JSON.readTree(Browser.result(files(JSON.writeValueAsBytes(questions)), profile));

        assertTrue(answers.path("error").isMissingNode(), answers.path("error").asText());
        for (int i = 0; i < pegs.size(); i++) {
            check(samples.get(i).toString(), PegAnswers.of(pegs.get(i)), answers.at("/pegs/" + i));
        }
        for (int i = 0; i < typed.size(); i++) {
            assertEquals(
                    PegAnswers.understood(pegs.get(0), typed.get(i)),
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
