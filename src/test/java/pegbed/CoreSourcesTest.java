package pegbed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Patterns in sources that are compiled for a page too use nothing that its regular expressions lack. */
class CoreSourcesTest {
    /** Linebreak and horizontal or vertical white space as java.util.regex has them, within a text of Java. */
    private static final Pattern LACKING = Pattern.compile("\\\\\\\\[RhHX]");

    private static final List<String> CORE = List.of(
            "model",
            "geometry",
            "notation",
            "surface",
            "findings",
            "guidance",
            "visits",
            "plan",
            "day",
            "wording",
            "report/day",
            "report/drawing",
            "report/map",
            "storage/peg",
            "phone");

    @Test
    void patternsUseWhatAPageHasToo() throws IOException {
        List<String> found = new ArrayList<>();
        int looked = 0;
        for (String folder : CORE) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/pegbed", folder))) {
                for (Path file :
                        files.filter(each -> each.toString().endsWith(".java")).toList()) {
                    looked++;
                    if (LACKING.matcher(Files.readString(file)).find()) {
                        found.add(file.toString());
                    }
                }
            }
        }
        assertTrue(looked > 150, "the core has moved");
        assertEquals(List.of(), found);
    }
}
