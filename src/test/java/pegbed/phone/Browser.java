package pegbed.phone;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * A headless Chromium with a profile of its own that opens one page from a local server and is asked for what the page
 * sends back. Nothing else is asked of any network.
 */
final class Browser {
    private static final int PATIENCE_SECONDS = 240;

    private Browser() {}

    /**
     * Opens {@code /index.html} of some files and waits for the text that it posts to {@code /result}.
     *
     * @param files name to content
     * @param profile an empty folder
     */
    static String result(Map<String, byte[]> files, Path profile) throws Exception {
        CompletableFuture<String> result = new CompletableFuture<>();
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> answer(exchange, files, result));
        server.start();
        Process browser = null;
        try {
            String page = "http://127.0.0.1:" + server.getAddress().getPort() + "/index.html";
            browser = new ProcessBuilder(List.of(
                            "chromium",
                            "--headless",
                            "--no-sandbox",
                            "--disable-gpu",
                            "--no-first-run",
                            "--disable-background-networking",
                            "--disable-component-update",
                            "--disable-sync",
                            "--remote-debugging-port=0",
                            "--user-data-dir=" + profile,
                            page))
                    .redirectErrorStream(true)
                    .redirectOutput(profile.resolve("said.txt").toFile())
                    .start();
            return result.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } finally {
            if (browser != null) {
                browser.descendants().forEach(ProcessHandle::destroyForcibly);
                browser.destroyForcibly();
                browser.waitFor(10, TimeUnit.SECONDS);
            }
            server.stop(0);
        }
    }

    private static void answer(HttpExchange exchange, Map<String, byte[]> files, CompletableFuture<String> result)
            throws IOException {
        try (exchange) {
            String name = exchange.getRequestURI().getPath().substring(1);
            if (name.equals("result")) {
                result.complete(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
                exchange.sendResponseHeaders(204, -1);
                return;
            }
            byte[] content = files.get(name);
            if (content == null) {
                exchange.sendResponseHeaders(404, -1);
                return;
            }
            exchange.getResponseHeaders().set("Content-Type", type(name));
            exchange.sendResponseHeaders(200, content.length);
            exchange.getResponseBody().write(content);
        }
    }

    private static String type(String name) {
        return name.endsWith(".html")
                ? "text/html; charset=utf-8"
                : name.endsWith(".js")
                        ? "text/javascript; charset=utf-8"
                        : name.endsWith(".wasm") ? "application/wasm" : "application/json; charset=utf-8";
    }
}
