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

/** Links and pictures in README.md, DEVELOPERS.md and docs lead somewhere, and every page can be found. */
class DocsLinksTest {
    private static final Path README = Path.of("README.md");
    private static final Path INDEX = Path.of("docs/README.md");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");

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
                    pictures.filter(picture -> !shown.contains(picture)).sorted().toList(),
                    "Pictures that no page shows.");
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
