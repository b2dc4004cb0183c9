package pegbed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Links, pictures and names of classes in README.md, DEVELOPERS.md and docs lead somewhere, every page can be found,
 * and so can the pages that the source names.
 */
class DocsLinksTest {
    private static final Path README = Path.of("README.md");
    private static final Path INDEX = Path.of("docs/README.md");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern CLASS = Pattern.compile("`([A-Z][a-z]\\w*)`");
    private static final Pattern PAGE_IN_SOURCE = Pattern.compile("\\bdocs/[\\w./-]*\\w");

    @Test
    void everyRelativeLinkLeadsToAFile() throws IOException {
        List<String> broken = new ArrayList<>();
        for (Path page : pages()) {
            for (String link : links(Files.readString(page))) {
                if (!Files.exists(target(page, link))) {
                    broken.add(page + " links to " + link + ", which does not exist.");
                }
            }
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void everyPageOfDocsIsReachedFromTheIndex() throws IOException {
        assertEquals(List.of(), unreached(INDEX), "Link these pages in " + INDEX + " or in a page that it links to.");
    }

    @Test
    void everyPageIsReachedFromMoreInTheReadme() throws IOException {
        String readme = Files.readString(README);
        int more = readme.indexOf("\n## More\n");
        assertTrue(more >= 0, README + " has no section 'More'.");
        Set<Path> reached = new TreeSet<>();
        for (String link : links(readme.substring(more))) {
            reached.addAll(reached(target(README, link)));
        }
        List<Path> missing = new ArrayList<>(pages());
        missing.removeAll(reached);
        missing.remove(README);
        assertEquals(List.of(), missing, "Link these pages under 'More' in " + README + ", or in " + INDEX + ".");
    }

    @Test
    void everyPictureIsShownOnAPage() throws IOException {
        Set<Path> shown = new TreeSet<>();
        for (Path page : pages()) {
            links(Files.readString(page)).forEach(link -> shown.add(target(page, link)));
        }
        try (Stream<Path> pictures = Files.list(Path.of("docs/images"))) {
            assertEquals(
                    List.of(),
                    pictures.filter(picture -> !shown.contains(picture))
                            .sorted()
                            .toList(),
                    "Pictures that no page shows.");
        }
    }

    /** Decisions may name classes of their day, and what is said of the build names checks of other tools. */
    @Test
    void everyClassThatIsNamedExists() throws IOException {
        Set<String> classes = new TreeSet<>();
        for (Path file : sources()) {
            classes.add(file.getFileName().toString().replace(".java", ""));
        }
        List<String> gone = new ArrayList<>();
        for (Path page : pages()) {
            String text = page.startsWith("docs/decisions") ? "" : Files.readString(page);
            Matcher name = CLASS.matcher(text.substring(Math.max(0, text.indexOf("\n## Packages\n"))));
            while (name.find()) {
                if (!classes.contains(name.group(1))) {
                    gone.add(page + " names " + name.group(1) + ", which is no class of the project.");
                }
            }
        }
        assertEquals(List.of(), gone);
    }

    @Test
    void everyPageThatTheSourceNamesExists() throws IOException {
        List<String> missing = new ArrayList<>();
        for (Path file : sources()) {
            Matcher page = PAGE_IN_SOURCE.matcher(Files.readString(file));
            while (page.find()) {
                if (!Files.exists(Path.of(page.group()))) {
                    missing.add(file + " names " + page.group() + ", which does not exist.");
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }

    private static List<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(README, Path.of("DEVELOPERS.md")));
        try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
            docs.filter(page -> page.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
        return pages;
    }

    private static List<Path> unreached(Path from) throws IOException {
        Set<Path> reached = reached(from);
        return pages().stream()
                .filter(page -> page.startsWith("docs") && !reached.contains(page))
                .toList();
    }

    private static Set<Path> reached(Path from) throws IOException {
        Set<Path> reached = new TreeSet<>();
        Deque<Path> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            Path page = open.remove();
            if (!page.toString().endsWith(".md") || !Files.exists(page) || !reached.add(page)) {
                continue;
            }
            links(Files.readString(page)).forEach(link -> open.add(target(page, link)));
        }
        return reached;
    }

    /** Links within the project, without the part after '#'. */
    private static List<String> links(String text) {
        List<String> links = new ArrayList<>();
        Matcher matcher = LINK.matcher(text);
        while (matcher.find()) {
            String link = matcher.group(1).replaceFirst("#.*", "");
            if (!link.isEmpty() && !link.contains("://") && !link.startsWith("mailto:")) {
                links.add(link);
            }
        }
        return links;
    }

    private static Path target(Path page, String link) {
        return page.resolveSibling(link).normalize();
    }
}
