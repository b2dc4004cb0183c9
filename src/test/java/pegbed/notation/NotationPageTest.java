package pegbed.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import pegbed.wording.TypedLineWords;

/** Every example on the page for anglers does what the page says. */
class NotationPageTest {
    private static final Notation NOTATION = Notation.of(Pegs.TANSY);
    private static final TypedLineWords WORDS = TypedLineWords.of(Pegs.TANSY);

    private record Example(String header, String typed, String answer) {}

    @TestFactory
    Stream<DynamicTest> examples() throws IOException {
        List<Example> examples = read(Path.of("docs/notation.md"));
        assertTrue(examples.size() > 40, "the page lost its examples");
        return examples.stream().map(example -> dynamicTest(example.typed, () -> check(example)));
    }

    private static void check(Example example) throws NotationException {
        switch (example.header) {
            case "You type" -> {
                if (example.answer.endsWith(".")) {
                    NotationException refusal =
                            assertThrows(NotationException.class, () -> NOTATION.parse(example.typed));
                    assertEquals(example.answer, refusal.getMessage());
                } else {
                    assertEquals(example.answer, echo(example.typed));
                }
            }
            case "Distance" ->
                assertEquals(example.answer + ", 20° left (11:20), 5 ft (1.52 m)", echo(example.typed + " 20L 5'"));
            case "Direction" ->
                assertEquals("10.0 m (s6), " + example.answer + ", 5 ft (1.52 m)", echo("s6 " + example.typed + " 5'"));
            case "Depth" ->
                assertEquals("10.0 m (s6), 20° left (11:20), " + example.answer, echo("s6 20L " + example.typed));
            case "An event" -> {
                DayLine event = DayNotation.of(Pegs.TANSY).parse(example.typed);
                assertTrue(example.typed.contains(event.kind().word()), event.toString());
            }
            default -> throw new AssertionError("a table with an unknown header: " + example.header);
        }
    }

    private static String echo(String typed) throws NotationException {
        return WORDS.understood(NOTATION.parse(typed));
    }

    private static List<Example> read(Path page) throws IOException {
        List<Example> examples = new ArrayList<>();
        String header = "";
        String before = "";
        for (String line : Files.readAllLines(page)) {
            if (line.startsWith("|---")) {
                header = cell(before, 1);
            } else if (line.startsWith("| `")) {
                examples.add(new Example(header, cell(line, 1).replace("`", ""), cell(line, 2)));
            }
            before = line;
        }
        return examples;
    }

    private static String cell(String row, int number) {
        return row.split("\\|", -1)[number].strip();
    }
}
