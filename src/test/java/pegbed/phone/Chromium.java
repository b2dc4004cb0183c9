package pegbed.phone;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** A headless Chromium with a profile of its own, told what to do by the Chrome DevTools Protocol. */
final class Chromium implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int PATIENCE_SECONDS = 120;

    private final Process process;
    private final WebSocket socket;
    private final AtomicInteger number = new AtomicInteger();
    private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
    private final List<String> said = new CopyOnWriteArrayList<>();
    private final List<JsonNode> traced = new CopyOnWriteArrayList<>();
    private volatile CompletableFuture<Boolean> traceEnds = new CompletableFuture<>();

    /**
     * @param profile the browser's own folder; a used one keeps what it has
     * @param more options of its command line
     */
    Chromium(Path profile, String... more) throws Exception {
        Files.createDirectories(profile);
        Path port = profile.resolve("DevToolsActivePort");
        Files.deleteIfExists(port);
        List<String> command = new ArrayList<>(List.of(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile));
        command.addAll(List.of(more));
        command.add("about:blank");
        process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(profile.resolve("said.txt").toFile())
                .start();
        List<String> lines = List.of();
        for (int i = 0; i < 1200 && lines.size() < 2; i++) {
            Thread.sleep(50);
            lines = Files.exists(port) ? Files.readAllLines(port) : List.of();
        }
        if (lines.size() < 2) {
            process.destroyForcibly();
            throw new IOException("Chromium did not start");
        }
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create("ws://127.0.0.1:" + lines.get(0) + lines.get(1)), new Listener())
                .get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    /** A page of its own, not yet anywhere. */
    Tab tab() throws Exception {
        return tab(JSON.createObjectNode());
    }

    /** A page of its own in a private window of its own, not yet anywhere. */
    Tab privateTab() throws Exception {
        String context = send("", "Target.createBrowserContext", JSON.createObjectNode())
                .path("browserContextId")
                .asText();
        return tab(JSON.createObjectNode().put("browserContextId", context));
    }

    private Tab tab(ObjectNode where) throws Exception {
        String target = send("", "Target.createTarget", where.put("url", "about:blank"))
                .path("targetId")
                .asText();
        String session = send(
                        "",
                        "Target.attachToTarget",
                        JSON.createObjectNode().put("targetId", target).put("flatten", true))
                .path("sessionId")
                .asText();
        Tab tab = new Tab(session, target);
        tab.send("Page.enable", JSON.createObjectNode());
        tab.send("Runtime.enable", JSON.createObjectNode());
        tab.send("Log.enable", JSON.createObjectNode());
        return tab;
    }

    /** Errors and warnings that pages wrote, policies broken among them. */
    List<String> said() {
        return List.copyOf(said);
    }

    /** From now on the browser writes down what its threads do. */
    void trace() throws Exception {
        traced.clear();
        traceEnds = new CompletableFuture<>();
        ObjectNode wanted = JSON.createObjectNode().put("transferMode", "ReportEvents");
        wanted.putObject("traceConfig")
                .putArray("includedCategories")
                .add("toplevel")
                .add("__metadata");
        send("", "Tracing.start", wanted);
    }

    /**
     * Tasks of the pages' own threads since {@link #trace}, by the processor's time that each took, milliseconds: other
     * programs on the machine change that less than what a clock shows.
     */
    List<Double> tasksMilliseconds() throws Exception {
        send("", "Tracing.end", JSON.createObjectNode());
        traceEnds.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        Set<String> pages = new HashSet<>();
        for (JsonNode event : traced) {
            if (event.path("name").asText().equals("thread_name")
                    && event.at("/args/name").asText().equals("CrRendererMain")) {
                pages.add(thread(event));
            }
        }
        return traced.stream()
                .filter(event -> event.path("name").asText().endsWith("RunTask") && pages.contains(thread(event)))
                .map(event -> event.path("tdur").asDouble() / 1000)
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    private static String thread(JsonNode event) {
        return event.path("pid") + " " + event.path("tid");
    }

    private JsonNode send(String session, String method, ObjectNode parameters) throws Exception {
        int id = number.incrementAndGet();
        ObjectNode message = JSON.createObjectNode().put("id", id).put("method", method);
        message.set("params", parameters);
        if (!session.isEmpty()) {
            message.put("sessionId", session);
        }
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        waiting.put(id, answer);
        synchronized (socket) {
            socket.sendText(JSON.writeValueAsString(message), true).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        }
        JsonNode got = answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        if (got.has("error")) {
            throw new IOException(method + ": " + got.path("error"));
        }
        return got.path("result");
    }

    /** Ends it as a killed phone's browser ends: at once. */
    void kill() throws InterruptedException {
        List<ProcessHandle> all = new ArrayList<>(process.descendants().toList());
        process.destroyForcibly();
        all.forEach(ProcessHandle::destroyForcibly);
        process.waitFor(10, TimeUnit.SECONDS);
        for (ProcessHandle each : all) {
            try {
                each.onExit().get(10, TimeUnit.SECONDS);
            } catch (Exception e) {
                // It will end by itself.
            }
        }
    }

    @Override
    public void close() throws Exception {
        kill();
    }

    /** One page. */
    final class Tab {
        private final String session;
        private final String target;

        private Tab(String session, String target) {
            this.session = session;
            this.target = target;
        }

        JsonNode send(String method, ObjectNode parameters) throws Exception {
            return Chromium.this.send(session, method, parameters);
        }

        /** Makes it a phone's screen with touch: CSS px, and pixels of the screen for each. */
        void phone(int width, int height, double density) throws Exception {
            send(
                    "Emulation.setDeviceMetricsOverride",
                    JSON.createObjectNode()
                            .put("width", width)
                            .put("height", height)
                            .put("deviceScaleFactor", density)
                            .put("mobile", true));
            send(
                    "Emulation.setTouchEmulationEnabled",
                    JSON.createObjectNode().put("enabled", true).put("maxTouchPoints", 5));
        }

        /** Sets what the page sees of the screen or the person's wishes, such as {@code prefers-color-scheme}. */
        void media(String feature, String value) throws Exception {
            ObjectNode parameters = JSON.createObjectNode();
            parameters.putArray("features").addObject().put("name", feature).put("value", value);
            send("Emulation.setEmulatedMedia", parameters);
        }

        /** Slows the page and its workers by a factor. */
        void throttle(double factor) throws Exception {
            send("Emulation.setCPUThrottlingRate", JSON.createObjectNode().put("rate", factor));
        }

        void open(String address) throws Exception {
            send("Page.navigate", JSON.createObjectNode().put("url", address));
        }

        /** What an expression gives, as JSON; a promise is waited for. */
        JsonNode value(String expression) throws Exception {
            JsonNode got = send(
                    "Runtime.evaluate",
                    JSON.createObjectNode()
                            .put("expression", expression)
                            .put("awaitPromise", true)
                            .put("returnByValue", true));
            if (got.has("exceptionDetails")) {
                throw new IOException(expression + ": " + got.path("exceptionDetails"));
            }
            return got.at("/result/value");
        }

        /** Waits until an expression is true. */
        void await(String expression) throws Exception {
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
            while (!isTrue(expression)) {
                if (System.nanoTime() > end) {
                    throw new IOException("never true: " + expression + "; the page said " + said + "; it shows "
                            + value("document.body.innerText"));
                }
                Thread.sleep(15);
            }
        }

        private boolean isTrue(String expression) throws Exception {
            try {
                return value("Boolean(" + expression + ")").asBoolean();
            } catch (IOException e) {
                // The page is being exchanged for another.
                return false;
            }
        }

        /** A finger's tap on the middle of the first element that a selector finds, brought into sight first. */
        void tap(String selector) throws Exception {
            JsonNode box = value("(() => { const e = document.querySelector(" + JSON.writeValueAsString(selector)
                    + "); if (!e) return null; e.scrollIntoView({ block: 'nearest' });"
                    + " const b = e.getBoundingClientRect();"
                    + " const x = b.x + b.width / 2, y = b.y + b.height / 2, top = document.elementFromPoint(x, y);"
                    + " return { x, y, hit: e === top || e.contains(top) || top?.contains(e), disabled: e.disabled === true };"
                    + " })()");
            if (box.isNull()
                    || !box.path("hit").asBoolean()
                    || box.path("disabled").asBoolean()) {
                throw new IOException("a finger can't reach " + selector + ": " + box + "; the page shows "
                        + value("document.body.innerText"));
            }
            tap(box.path("x").asDouble(), box.path("y").asDouble());
        }

        void tap(double x, double y) throws Exception {
            touch("touchStart", x, y);
            touch("touchEnd");
        }

        /** A touch event: touchStart, touchMove or touchEnd, with the fingers' places. */
        void touch(String type, double... places) throws Exception {
            ObjectNode parameters = JSON.createObjectNode().put("type", type);
            var points = parameters.putArray("touchPoints");
            for (int i = 0; i < places.length; i += 2) {
                points.addObject().put("x", places[i]).put("y", places[i + 1]).put("id", i / 2);
            }
            send("Input.dispatchTouchEvent", parameters);
        }

        /** Text typed into the element that has the focus. */
        void type(String text) throws Exception {
            send("Input.insertText", JSON.createObjectNode().put("text", text));
        }

        byte[] picture() throws Exception {
            return Base64.getDecoder()
                    .decode(send(
                                    "Page.captureScreenshot",
                                    JSON.createObjectNode().put("format", "png"))
                            .path("data")
                            .asText());
        }

        void close() throws Exception {
            Chromium.this.send("", "Target.closeTarget", JSON.createObjectNode().put("targetId", target));
        }
    }

    private final class Listener implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
            text.append(part);
            if (last) {
                take(text.toString());
                text.setLength(0);
            }
            from.request(1);
            return null;
        }

        private void take(String message) {
            try {
                JsonNode node = JSON.readTree(message);
                CompletableFuture<JsonNode> answered =
                        waiting.remove(node.path("id").asInt(-1));
                if (answered != null) {
                    answered.complete(node);
                    return;
                }
                switch (node.path("method").asText()) {
                    case "Runtime.exceptionThrown" ->
                        said.add(node.at("/params/exceptionDetails").toString());
                    case "Runtime.consoleAPICalled" ->
                        said.add(node.at("/params/args").toString());
                    case "Tracing.dataCollected" -> node.at("/params/value").forEach(traced::add);
                    case "Tracing.tracingComplete" -> traceEnds.complete(true);
                    case "Log.entryAdded" -> said.add(node.at("/params/entry").toString());
                    default -> {
                        // Nothing that a test asks for.
                    }
                }
            } catch (IOException e) {
                said.add("not read: " + message);
            }
        }
    }
}
