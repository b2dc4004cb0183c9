package pegbed.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;
import pegbed.model.InputException;

/**
 * The page for a phone's browser. Its parts are built once, with the core as WebAssembly, and as JavaScript for
 * browsers without garbage-collected WebAssembly, and lie in the program; here they become the files of an installable
 * page, or one HTML file that holds all of them.
 */
public final class PhonePage {
    /** All parts, by the names of the files that they become. */
    public static final List<String> PARTS = List.of(
            "index.html",
            "page.css",
            "page.js",
            "worker.js",
            "pegbed.wasm",
            "pegbed-core.js",
            "service-worker.js",
            "manifest.webmanifest",
            "icon-192.png",
            "icon-512.png",
            "icon-maskable-512.png");

    private static final String INDEX = "index.html";
    private static final String SERVICE_WORKER = "service-worker.js";

    /** What the one file puts text in the place of, in index.html. */
    private static final String STYLE = "<link rel=\"stylesheet\" href=\"page.css\">";

    private static final String SCRIPT = "<script type=\"module\" src=\"page.js\"></script>";
    private static final String MANIFEST = "<link rel=\"manifest\" href=\"manifest.webmanifest\">";
    private static final String ICON = "<link rel=\"icon\" href=\"icon-192.png\">";
    private static final String HOME_ICON = "<link rel=\"apple-touch-icon\" href=\"icon-192.png\">";

    /** Content Security Policy Level 3: nothing from elsewhere, no inline script, no eval but of WebAssembly. */
    private static final String FOLDER_POLICY = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval';"
            + " worker-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; manifest-src 'self';"
            + " base-uri 'none'; form-action 'none'";

    private final Map<String, byte[]> parts;

    /** @param parts by their names in {@link #PARTS} */
    public PhonePage(Map<String, byte[]> parts) {
        if (!parts.keySet().containsAll(PARTS)) {
            throw new IllegalArgumentException("parts of the page are missing: "
                    + PARTS.stream().filter(name -> !parts.containsKey(name)).toList());
        }
        this.parts = Map.copyOf(parts);
    }

    /**
     * A peg file inside the page, opened at the page's first start.
     *
     * @param name of the file
     * @param text all that is in it
     */
    public record PegInside(String name, String text) {}

    /**
     * The page that this program was built with.
     *
     * @throws InputException if it was built without one
     */
    public static PhonePage built() throws InputException {
        Map<String, byte[]> parts = new TreeMap<>();
        for (String name : PARTS) {
            try (InputStream in = PhonePage.class.getResourceAsStream("parts/" + name)) {
                if (in == null) {
                    throw new InputException("This Pegbed was built without the page for a phone; build it with"
                            + " 'mvn -P phone package'.");
                }
                parts.put(name, in.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return new PhonePage(parts);
    }

    /** The files of the installable page by their names; the same parts give the same bytes. */
    public SortedMap<String, byte[]> files(Optional<PegInside> peg) {
        SortedMap<String, byte[]> files = new TreeMap<>(parts);
        String index = put(text(INDEX), "@policy@", FOLDER_POLICY);
        files.put(INDEX, bytes(put(index, SCRIPT, data(peg) + SCRIPT)));
        files.remove(SERVICE_WORKER);
        String names = files.keySet().stream().map(name -> '"' + name + '"').collect(Collectors.joining(", "));
        String version = version(files);
        files.put(
                SERVICE_WORKER,
                bytes(put(put(text(SERVICE_WORKER), "\"@files@\"", names), "\"@version@\"", '"' + version + '"')));
        return files;
    }

    /**
     * The page in one HTML file, without the core as JavaScript: the core packed by gzip in base64, scripts and style
     * told to the policy by hash.
     */
    public byte[] oneFile(Optional<PegInside> peg) {
        String script = text("page.js");
        String style = text("page.css");
        String worker = text("worker.js");
        refuseEnd(script);
        refuseEnd(worker);
        String icon = "<link rel=\"icon\" href=\"data:image/png;base64,"
                + Base64.getEncoder().encodeToString(parts.get("icon-192.png")) + "\">";
        String html = put(text(INDEX), "@policy@", oneFilePolicy(script, style));
        html = put(html, MANIFEST + "\n", "");
        html = put(html, HOME_ICON + "\n", "");
        html = put(html, ICON, icon);
        html = put(html, STYLE, "<style>" + style + "</style>");
        String scripts = data(peg) + "<script type=\"text/plain\" id=\"packed-worker\">" + worker + "</script>\n"
                + "<script type=\"text/plain\" id=\"packed-core\">" + packed(parts.get("pegbed.wasm")) + "</script>\n"
                + "<script type=\"module\">" + script + "</script>";
        return bytes(put(html, SCRIPT, scripts));
    }

    private static String oneFilePolicy(String script, String style) {
        return "default-src 'none'; script-src '" + hash(script) + "' 'wasm-unsafe-eval'; worker-src blob:; style-src '"
                + hash(style) + "'; img-src data:; base-uri 'none'; form-action 'none'";
    }

    private static String data(Optional<PegInside> peg) {
        return peg.map(inside -> "<script type=\"application/json\" id=\"packed-peg\">{\"name\":" + json(inside.name())
                        + ",\"text\":" + json(inside.text()) + "}</script>\n")
                .orElse("");
    }

    /** A JSON string (RFC 8259) that neither ends a script element nor begins a comment in one. */
    private static String json(String text) {
        StringBuilder json = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c == '<' || c == '"' || c == '\\' || c > '~') {
                json.append("\\u").append(HexFormat.of().toHexDigits(c));
            } else {
                json.append(c);
            }
        }
        return json.append('"').toString();
    }

    private static void refuseEnd(String script) {
        if (script.contains("</script") || script.contains("<!--")) {
            throw new IllegalStateException("a script of the page would end its element");
        }
    }

    private static String put(String text, String there, String instead) {
        int at = text.indexOf(there);
        if (at < 0) {
            throw new IllegalStateException("the page has no " + there);
        }
        return text.substring(0, at) + instead + text.substring(at + there.length());
    }

    private String text(String name) {
        return new String(parts.get(name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String hash(String inline) {
        return "sha256-" + Base64.getEncoder().encodeToString(sha256().digest(bytes(inline)));
    }

    private static String version(SortedMap<String, byte[]> files) {
        MessageDigest all = sha256();
        files.forEach((name, content) -> {
            all.update(bytes(name));
            all.update(sha256().digest(content));
        });
        return HexFormat.of().formatHex(all.digest(), 0, 8);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    private static String packed(byte[] content) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new BestGzip(bytes)) {
            out.write(content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Base64.getEncoder().encodeToString(bytes.toByteArray());
    }

    /** Packs as small as it goes. */
    private static final class BestGzip extends GZIPOutputStream {
        BestGzip(ByteArrayOutputStream out) throws IOException {
            super(out);
            def.setLevel(Deflater.BEST_COMPRESSION);
        }
    }
}
