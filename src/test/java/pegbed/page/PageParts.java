package pegbed.page;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import pegbed.launcher.Icon;

/** Puts the parts of the page for a phone together when Pegbed is built with it, and writes the page beside the jar. */
public final class PageParts {
    /** A module's import; modules name what they take, and their paths begin with a dot. */
    private static final Pattern IMPORT = Pattern.compile("(?m)^import \\{[^}]*} from \"\\./([a-z-]+\\.js)\";\\R");

    private static final Pattern EXPORT = Pattern.compile("(?m)^export ");

    /** The background of an icon that the phone cuts to its own shape. */
    private static final Color GROUND = new Color(0x6B7F4A);

    /** Of an icon's width, what every phone shows (W3C Web Application Manifest: a circle of 80 %). */
    private static final double SAFE_PART = 0.8;

    private PageParts() {}

    /**
     * Writes the parts for the jar, the page's folder and the page in one file.
     *
     * @param args the page's sources, the folder of the compiled core and its loader, the folder for the parts, the
     *     folder for the page, and the file for the page in one
     */
    public static void main(String[] args) throws IOException {
        Map<String, byte[]> parts = parts(Path.of(args[0]), Path.of(args[1]));
        write(Path.of(args[2]), parts);
        PhonePage page = new PhonePage(parts);
        write(Path.of(args[3]), page.files(Optional.empty()));
        Files.write(Path.of(args[4]), page.oneFile(Optional.empty()));
    }

    static Map<String, byte[]> parts(Path sources, Path core) throws IOException {
        Map<String, byte[]> parts = new TreeMap<>();
        for (String same : new String[] {"index.html", "page.css", "manifest.webmanifest"}) {
            parts.put(same, Files.readAllBytes(sources.resolve(same)));
        }
        String canLoad = Files.readString(sources.resolve("can-load.js"));
        parts.put(
                "service-worker.js",
                (canLoad + Files.readString(sources.resolve("service-worker.js"))).getBytes(StandardCharsets.UTF_8));
        parts.put("page.js", bundle(sources, "page.js").getBytes(StandardCharsets.UTF_8));
        String loader = Files.readString(core.resolve("pegbed.wasm-runtime.js"));
        parts.put("worker.js", worker(sources, loader, canLoad).getBytes(StandardCharsets.UTF_8));
        parts.put("pegbed.wasm", Files.readAllBytes(core.resolve("pegbed.wasm")));
        parts.put("pegbed-core.js", Files.readAllBytes(core.resolve("pegbed-core.js")));
        parts.put("icon-192.png", png(icon(192, 1)));
        parts.put("icon-512.png", png(icon(512, 1)));
        parts.put("icon-maskable-512.png", png(maskable(512)));
        return parts;
    }

    /** TeaVM's loader in the scope of a Function that needs no eval, then the worker. */
    private static String worker(Path sources, String loader, String canLoad) throws IOException {
        return "\"use strict\";\n(() => {\n" + Files.readString(sources.resolve("functions.js"))
                + "((Function) => {\n" + loader + "\n})(functionOfText);\n})();\n" + canLoad
                + Files.readString(sources.resolve("worker.js"));
    }

    /** A module and all that it imports as one module: each stands once, before those that import it. */
    static String bundle(Path sources, String first) throws IOException {
        Map<String, String> modules = new LinkedHashMap<>();
        collect(sources, first, modules);
        return String.join("\n", modules.values());
    }

    private static void collect(Path sources, String name, Map<String, String> modules) throws IOException {
        if (modules.containsKey(name)) {
            return;
        }
        String text = Files.readString(sources.resolve(name));
        Matcher imported = IMPORT.matcher(text);
        while (imported.find()) {
            collect(sources, imported.group(1), modules);
        }
        String body = EXPORT.matcher(IMPORT.matcher(text).replaceAll("")).replaceAll("");
        if (body.lines().anyMatch(line -> line.startsWith("import "))) {
            throw new IOException(name + " has an import of another form than import { names } from \"./module.js\";");
        }
        modules.put(name, body);
    }

    private static BufferedImage maskable(int size) {
        BufferedImage image = icon(size, SAFE_PART);
        BufferedImage whole = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = whole.createGraphics();
        g.drawImage(image, 0, 0, GROUND, null);
        g.dispose();
        return whole;
    }

    private static BufferedImage icon(int size, double part) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.translate(size * (1 - part) / 2, size * (1 - part) / 2);
        g.scale(size * part / Icon.SIZE, size * part / Icon.SIZE);
        Icon.draw(g);
        g.dispose();
        return image;
    }

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private static void write(Path folder, Map<String, byte[]> files) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
    }
}
