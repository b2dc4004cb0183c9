package pegbed.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files of the page for a phone, put together from its sources with a small file in the place of the core. */
class PhonePageTest {
    private static final Path SOURCES = Path.of("src/phone/page");
    private static final byte[] CORE = "in the place of the core".getBytes(StandardCharsets.UTF_8);
    private static final PhonePage.PegInside HOSTILE =
            new PhonePage.PegInside("a.peg.json", "{\"venue\": \"</script><!-- & \\\" é\"}\n");

    @TempDir
    private static Path core;

    private static Map<String, byte[]> parts;

    @BeforeAll
    static void putTogether() throws IOException {
        Files.write(core.resolve("pegbed.wasm"), CORE);
        Files.write(core.resolve("pegbed-core.js"), CORE);
        Files.writeString(core.resolve("pegbed.wasm-runtime.js"), "// the loader");
        parts = PageParts.parts(SOURCES, core);
    }

    @Test
    void everyModuleStandsInTheScriptOnceBeforeThoseThatUseIt() {
        String script = text(parts, "page.js");

        assertFalse(Pattern.compile("(?m)^(import|export) ").matcher(script).find(), "imports are left");
        assertEquals(1, script.split("export function make|function make\\(", -1).length - 1);
        assertTrue(script.indexOf("function make(") < script.indexOf("class MapView"));
        assertTrue(script.strip().endsWith("begin();"));
    }

    @Test
    void theInstallablePageNamesAllItsFilesAndItsVersionFollowsThem() {
        SortedMap<String, byte[]> files = new PhonePage(parts).files(Optional.empty());
        String worker = text(files, "service-worker.js");

        for (String name : files.keySet()) {
            assertEquals(!name.equals("service-worker.js"), worker.contains('"' + name + '"'), name);
        }
        assertFalse(worker.contains("@"), "something was not put in");
        assertEquals(worker, text(new PhonePage(parts).files(Optional.empty()), "service-worker.js"));
        assertNotEquals(worker, text(new PhonePage(parts).files(Optional.of(HOSTILE)), "service-worker.js"));
    }

    @Test
    void thePolicyAllowsNoInlineScriptAndNoEval() {
        String index = text(new PhonePage(parts).files(Optional.empty()), "index.html");
        String policy = policy(index);

        assertTrue(policy.startsWith("default-src 'none';"), policy);
        assertFalse(policy.contains("unsafe-inline") || policy.contains("'unsafe-eval'"), policy);
        assertFalse(Pattern.compile("<script(?![^>]* src=)|<style|style=|\\son\\w+=")
                .matcher(index)
                .find());
    }

    @Test
    void theOneFileTellsItsScriptAndStyleByHashAndHoldsTheCore() throws Exception {
        String html = new String(new PhonePage(parts).oneFile(Optional.empty()), StandardCharsets.UTF_8);

        assertTrue(policy(html).contains(hash(found(html, "<script type=\"module\">(.*?)</script>"))));
        assertTrue(policy(html).contains(hash(found(html, "<style>(.*?)</style>"))));
        byte[] packed = Base64.getDecoder().decode(found(html, "id=\"packed-core\">(.*?)</script>"));
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
            assertEquals(
                    new String(CORE, StandardCharsets.UTF_8), new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        assertFalse(Pattern.compile("(src|href)=\"(?!data:)").matcher(html).find(), "something is fetched");
    }

    @Test
    void aPegInsideComesBackAsItWasAndEndsNoElement() throws Exception {
        for (String html : new String[] {
            text(new PhonePage(parts).files(Optional.of(HOSTILE)), "index.html"),
            new String(new PhonePage(parts).oneFile(Optional.of(HOSTILE)), StandardCharsets.UTF_8)
        }) {
            String json = found(html, "id=\"packed-peg\">(.*?)</script>");
            JsonNode peg = new ObjectMapper().readTree(json);
            assertEquals(HOSTILE.name(), peg.path("name").asText());
            assertEquals(HOSTILE.text(), peg.path("text").asText());
            assertFalse(json.contains("<"), json);
        }
    }

    @Test
    void missingPartsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new PhonePage(Map.of("index.html", new byte[0])));
    }

    private static String text(Map<String, byte[]> files, String name) {
        return new String(files.get(name), StandardCharsets.UTF_8);
    }

    private static String policy(String html) {
        return found(html, "http-equiv=\"Content-Security-Policy\" content=\"(.*?)\"");
    }

    private static String found(String html, String form) {
        Matcher matcher = Pattern.compile(form, Pattern.DOTALL).matcher(html);
        assertTrue(matcher.find(), form);
        return matcher.group(1);
    }

    private static String hash(String text) throws Exception {
        return "'sha256-"
                + Base64.getEncoder()
                        .encodeToString(
                                MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)))
                + "'";
    }
}
