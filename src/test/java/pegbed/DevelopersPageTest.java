package pegbed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** DEVELOPERS.md lists the packages as they are, and its arrows are those that {@link ArchitectureTest} allows. */
class DevelopersPageTest {
    private static final Path PAGE = Path.of("DEVELOPERS.md");
    private static final Path SOURCES = Path.of("src/main/java");
    private static final Path RULES = Path.of("src/test/java/pegbed/ArchitectureTest.java");
    private static final int MOST_FILES = 25;
    private static final Pattern ROW = Pattern.compile("\\| `(pegbed[\\w.]*)` \\| (.+) \\|");
    private static final Pattern ARROW = Pattern.compile("([a-z ]+?) +→ (.+)");
    private static final Pattern RULE =
            Pattern.compile("\\.whereLayer\\(\"([^\"]+)\"\\)\\s*\\.may(?:NotBe|OnlyBe)Accessed\\w+\\(([^)]*)\\)");

    @Test
    void thePackagesAreTheFolders() throws IOException {
        assertEquals(
                filesByPackage().keySet(),
                rows("Packages").keySet(),
                "Correct the table under 'Packages' in " + PAGE
                        + ": one line for each package (expected: the folders)");
    }

    @Test
    void everyPackageSaysWhatIsInIt() throws IOException {
        rows("Packages").forEach((name, words) -> assertFalse(words.isBlank(), name));
    }

    @Test
    void packagesAreSmallUnlessThePageSaysWhy() throws IOException {
        Set<String> large = new TreeSet<>();
        filesByPackage().forEach((name, files) -> {
            if (files > MOST_FILES) {
                large.add(name);
            }
        });
        assertEquals(
                large,
                rows("Larger packages").keySet(),
                "Packages of more than " + MOST_FILES + " files: divide them, or give the reason under"
                        + " 'Larger packages' in " + PAGE + " (expected: those that are so large)");
    }

    @Test
    void theArrowsAreThoseOfTheArchitectureTest() throws IOException {
        Set<String> allowed = new TreeSet<>();
        Matcher rule = RULE.matcher(Files.readString(RULES));
        while (rule.find()) {
            for (String user : rule.group(2).split(",")) {
                if (!user.isBlank()) {
                    allowed.add(user.replace("\"", "").strip() + " → " + rule.group(1));
                }
            }
        }
        Set<String> drawn = new TreeSet<>();
        String text = String.join("\n", section("Arrows")).replaceAll(",\\n +", ", ");
        for (String line : text.split("\n")) {
            Matcher arrow = ARROW.matcher(line);
            if (arrow.matches()) {
                for (String used : arrow.group(2).split(",")) {
                    drawn.add(arrow.group(1).strip() + " → " + used.strip());
                }
            }
        }
        assertTrue(allowed.size() > 20, "The rules of " + RULES + " are not understood any more.");
        assertEquals(allowed, drawn, "Draw the arrows of " + RULES + " under 'Arrows' in " + PAGE);
    }

    /** Number of source files of each package, {@code package-info} aside. */
    private static Map<String, Integer> filesByPackage() throws IOException {
        Map<String, Integer> files = new TreeMap<>();
        try (Stream<Path> sources = Files.walk(SOURCES)) {
            sources.filter(file -> file.toString().endsWith(".java")).forEach(file -> {
                String name = SOURCES.relativize(file.getParent()).toString().replaceAll("[/\\\\]", ".");
                files.merge(name, file.endsWith("package-info.java") ? 0 : 1, Integer::sum);
            });
        }
        return files;
    }

    private static Map<String, String> rows(String heading) throws IOException {
        Map<String, String> rows = new TreeMap<>();
        for (String line : section(heading)) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                rows.put(row.group(1), row.group(2));
            }
        }
        return rows;
    }

    /** The lines below a heading of any level, up to the next heading. */
    private static List<String> section(String heading) throws IOException {
        List<String> lines = new ArrayList<>();
        boolean inside = false;
        for (String line : Files.readAllLines(PAGE)) {
            if (line.startsWith("#")) {
                inside = line.replaceFirst("#+ ", "").equals(heading);
            } else if (inside) {
                lines.add(line);
            }
        }
        assertFalse(lines.isEmpty(), PAGE + " has no section '" + heading + "'.");
        return lines;
    }
}
