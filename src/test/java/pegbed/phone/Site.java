package pegbed.phone;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Files of a page on a server of this machine, as any web space would give them. */
final class Site implements AutoCloseable {
    private final HttpServer server;
    private final ExecutorService threads = Executors.newFixedThreadPool(4);

    /** @param files name to content */
    Site(Map<String, byte[]> files) throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> answer(exchange, files));
        server.setExecutor(threads);
        server.start();
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
    }

    private static void answer(HttpExchange exchange, Map<String, byte[]> files) throws IOException {
        try (exchange) {
            String name = exchange.getRequestURI().getPath().substring(1);
            byte[] content = files.get(name.isEmpty() ? "index.html" : name);
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
        String end = name.substring(name.lastIndexOf('.') + 1);
        return switch (end) {
            case "js" -> "text/javascript; charset=utf-8";
            case "css" -> "text/css; charset=utf-8";
            case "wasm" -> "application/wasm";
            case "webmanifest" -> "application/manifest+json";
            case "png" -> "image/png";
            default -> "text/html; charset=utf-8";
        };
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
