package pegbed.launcher;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;

/**
 * Makes the class data archive that the start script reads (Java's <i>class data sharing</i>, JEP 310), and writes down
 * the checksums that it verifies first. Needs no display.
 *
 * <p>A training run without the archive tells which classes the commands and the window load; Java then puts those of
 * the jar and its own into one file. Pegbed's other classes, and what only a real display loads, are added by name.
 */
public final class ClassArchive {
    /** All of Pegbed, and packages of the toolkit that the headless screen of the training run does without. */
    private static final List<String> WHOLE_PACKAGES =
            List.of("pegbed/", "com/sun/glass/ui/gtk/", "com/sun/glass/ui/mac/", "com/sun/glass/ui/");

    private static final long LONGEST_SECONDS = 120;

    private ClassArchive() {}

    /**
     * Makes the archive beside the jar, or says on standard error why there is none: the program starts without it.
     *
     * @param args the jar, the file of a sample peg
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path jar = Path.of(args[0]).toRealPath();
        try {
            make(jar, Path.of(args[1]).toRealPath());
        } catch (IOException e) {
            Files.deleteIfExists(checksums(jar));
            Files.deleteIfExists(archive(jar));
            System.err.println("No class data archive, Pegbed will start slower: " + e.getMessage());
        }
    }

    /** The archive that belongs to a jar. */
    static Path archive(Path jar) {
        return jar.resolveSibling("pegbed.jsa");
    }

    /** The checksums that belong to a jar's archive. */
    static Path checksums(Path jar) {
        return jar.resolveSibling("pegbed.jsa.cksum");
    }

    private static void make(Path jar, Path peg) throws IOException, InterruptedException {
        Files.deleteIfExists(checksums(jar));
        Files.deleteIfExists(archive(jar));
        Path folder = Files.createTempDirectory("pegbed-archive");
        try {
            Path list = folder.resolve("classes.lst");
            run(training(jar, peg, folder, list));
            addWholePackages(jar, list);
            run(List.of(
                    java(),
                    "-XX:+UseSerialGC",
                    "-Xlog:disable",
                    "-Xshare:dump",
                    "-XX:SharedClassListFile=" + list,
                    "-XX:SharedArchiveFile=" + archive(jar),
                    "-classpath",
                    jar.toString()));
            writeChecksums(jar, Path.of(System.getProperty("java.home")));
        } finally {
            deleteWithContents(folder);
        }
    }

    private static List<String> training(Path jar, Path peg, Path folder, Path list) {
        // The jar comes first: the archive is made for it alone, and a class counts with the place it came from.
        String classPath = jar + System.getProperty("path.separator") + System.getProperty("java.class.path");
        return List.of(
                java(),
                "-XX:+UseSerialGC",
                "-Xlog:disable",
                "-XX:TieredStopAtLevel=1",
                "-XX:DumpLoadedClassList=" + list,
                "-Dglass.platform=Monocle",
                "-Dmonocle.platform=Headless",
                "-Dprism.order=sw",
                "-Djava.awt.headless=true",
                "-classpath",
                classPath,
                TrainingRun.class.getName(),
                peg.toString(),
                folder.toString());
    }

    private static void addWholePackages(Path jar, Path list) throws IOException {
        Set<String> lines = new LinkedHashSet<>(Files.readAllLines(list));
        try (JarFile file = new JarFile(jar.toFile())) {
            file.stream()
                    .map(ZipEntry::getName)
                    .filter(name -> name.endsWith(".class"))
                    .filter(name -> WHOLE_PACKAGES.stream().anyMatch(name::startsWith))
                    .map(name -> name.substring(0, name.length() - ".class".length()))
                    .forEach(lines::add);
        }
        Files.write(list, lines);
    }

    /**
     * Writes the jar's place, then checksum and size of the archive, the jar and the Java's release, as the start
     * script does.
     *
     * @param javaHome the folder of the Java that made the archive
     */
    static void writeChecksums(Path jar, Path javaHome) throws IOException, InterruptedException {
        Path release = javaHome.resolve("release");
        List<String> lines = new ArrayList<>(List.of(jar.toString()));
        for (Path file : List.of(archive(jar), jar, release)) {
            String[] words = run(List.of("cksum", file.toString())).split(" ", 3);
            lines.add(words[0] + " " + words[1]);
        }
        Files.write(checksums(jar), lines);
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** What a program says; with an exception if it can't be started, fails or takes too long. */
    private static String run(List<String> command) throws IOException, InterruptedException {
        Path said = Files.createTempFile("pegbed", ".txt");
        try {
            ProcessBuilder builder =
                    new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile());
            builder.environment().put("PEGBED_HOME", said + ".none");
            Process process = builder.start();
            boolean ended = process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS);
            if (!ended) {
                process.destroyForcibly();
            }
            String text = Files.readString(said, StandardCharsets.UTF_8).strip();
            if (!ended || process.exitValue() != 0) {
                throw new IOException(command.get(0) + (ended ? " failed: " : " took too long: ") + text);
            }
            return text;
        } finally {
            Files.delete(said);
        }
    }

    private static void deleteWithContents(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(file);
            }
        }
    }
}
