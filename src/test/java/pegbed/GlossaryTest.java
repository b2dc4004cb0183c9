package pegbed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The glossary has a row for every public type of the packages that work the bottom out. */
class GlossaryTest {
    private static final Path PAGE = Path.of("docs/glossary.md");
    private static final Path SOURCES = Path.of("src/main/java/pegbed");
    private static final List<String> PACKAGES = List.of("surface", "lake", "findings", "guidance", "day");
    private static final Pattern PUBLIC_TYPE = Pattern.compile(
            "^public (?:(?:abstract|final|sealed|non-sealed) )*(?:class|record|interface|enum) (\\w+)",
            Pattern.MULTILINE);
    private static final Pattern NAME = Pattern.compile("`([A-Z]\\w*)`");

    @Test
    void everyPublicTypeHasARow() throws IOException {
        Set<String> missing = new TreeSet<>();
        for (String name : PACKAGES) {
            for (Path file : sources(SOURCES.resolve(name))) {
                Matcher type = PUBLIC_TYPE.matcher(Files.readString(file));
                while (type.find()) {
                    missing.add(type.group(1));
                }
            }
        }
        missing.removeAll(named());
        assertEquals(
                Set.of(),
                missing,
                "Add a row to " + PAGE + " for each of these public types (trade's word, field's term, `Type`)");
    }

    /** Types in the last column of the page's tables. */
    private static Set<String> named() throws IOException {
        Set<String> named = new TreeSet<>();
        for (String line : Files.readAllLines(PAGE)) {
            if (line.startsWith("|")) {
                String[] cells = line.split("\\|");
                Matcher name = NAME.matcher(cells[cells.length - 1]);
                while (name.find()) {
                    named.add(name.group(1));
                }
            }
        }
        return named;
    }

    private static List<Path> sources(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).collect(Collectors.toList());
        }
    }
}
