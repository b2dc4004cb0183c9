package pegbed.phone;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.notation.FeetAndInches;
import pegbed.notation.Line;
import pegbed.notation.Notation;

/** What a person does on the page with a thumb, each tap counted. */
final class PhoneUser {
    /** What the profile {@code phone} built; another folder by {@code -Dpegbed.phone}. */
    static final Path BUILT = Path.of(System.getProperty("pegbed.phone", "target"));

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String ADDED = "document.querySelector('#understood.added')";

    private final Chromium.Tab tab;
    private int taps;

    PhoneUser(Chromium.Tab tab) {
        this.tab = tab;
    }

    /** The files of the installable page. */
    static Map<String, byte[]> files() throws IOException {
        Map<String, byte[]> files = new HashMap<>();
        try (Stream<Path> all = Files.list(BUILT.resolve("phone"))) {
            for (Path file : all.toList()) {
                files.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }

    int taps() {
        return taps;
    }

    Chromium.Tab tab() {
        return tab;
    }

    void tap(String selector) throws Exception {
        taps++;
        tab.tap(selector);
    }

    /** Opens the page and waits until it takes taps; the cautions of a first start are read. */
    void open(String address) throws Exception {
        tab.open(address);
        tab.await("document.documentElement.dataset.ready || document.querySelector('#cautions').open");
        if (tab.value("document.querySelector('#cautions').open").asBoolean()) {
            tab.tap("#cautions-read");
        }
        ready();
    }

    void ready() throws Exception {
        tab.await("document.documentElement.dataset.ready");
    }

    /** All answers about the open peg are there. */
    void answered() throws Exception {
        tab.await("document.body.dataset.done === 'true' && document.querySelector('#depth-keys .key')");
    }

    /** A new peg with the usual banks, its number typed. */
    void beginPeg(String number) throws Exception {
        tap("#new");
        tab.await("document.querySelector('#new-peg').open");
        if (!number.isEmpty()) {
            tap("#new-number");
            tab.type(number);
        }
        tap("#new-peg .main");
        tab.await("!document.querySelector('#new-peg').open");
        answered();
    }

    /** Plumbs where the wheels stand, by keys alone. */
    void plumb(ToDoubleFunction<Place> depthMetres) throws Exception {
        choose(depthMetres);
        tap("#add");
        tab.await(ADDED);
    }

    /** Taps the key of a depth where the wheels stand; what is understood is shown. */
    void choose(ToDoubleFunction<Place> depthMetres) throws Exception {
        answered();
        String line = tab.value("document.querySelector('#line').value").asText();
        int step = (int) Math.round(depthMetres.applyAsDouble(place(line)) / FeetAndInches.INCH_METRES);
        for (JsonNode keys = keys();
                step < keys.get(0).asInt() || step > keys.get(1).asInt(); ) {
            int first = keys.get(0).asInt();
            tap(step < first ? "#shallower" : "#deeper");
            tab.await("document.querySelector('#depth-keys .key').dataset.step !== '" + first + "'");
            keys = keys();
        }
        tap("#depth-keys .key[data-step='" + step + "']");
        tab.await("!document.querySelector('#add').disabled");
    }

    private JsonNode keys() throws Exception {
        return tab.value("(() => { const keys = [...document.querySelectorAll('#depth-keys .key')];"
                + " return [Number(keys[0].dataset.step), Number(keys.at(-1).dataset.step)]; })()");
    }

    private static Place place(String line) throws InputException {
        Line read = Notation.of(Peg.EMPTY.withPole(Pole.USUAL)).parse(line + " 1m");
        return ((Line.ReadingLine) read).reading().place();
    }

    /** Types a line and adds it; the sentence that refuses it, if it was refused. */
    Optional<String> type(String line) throws Exception {
        tab.value("(() => { const said = document.querySelector('#understood'); said.className = '';"
                + " const box = document.querySelector('#line'); box.value = '" + line.replace("'", "\\'") + "';"
                + " document.querySelector('#entry').requestSubmit(); })()");
        tab.await("document.querySelector('#understood.added, #understood.refused')");
        return tab.value("Boolean(" + ADDED + ")").asBoolean()
                ? Optional.empty()
                : Optional.of(tab.value("document.querySelector('#understood').textContent")
                        .asText());
    }

    /** From now on files are saved into a folder. */
    void downloadTo(Path folder) throws Exception {
        tab.send(
                "Browser.setDownloadBehavior",
                JSON.createObjectNode().put("behavior", "allow").put("downloadPath", folder.toString()));
    }

    /** What was saved into a file, which is waited for. */
    static byte[] saved(Path file) throws Exception {
        for (int i = 0; i < 400 && !Files.exists(file); i++) {
            Thread.sleep(25);
        }
        return Files.readAllBytes(file);
    }

    /** Opens a peg file by the page's box for files. */
    void give(Path file) throws Exception {
        int root = tab.send("DOM.getDocument", JSON.createObjectNode())
                .at("/root/nodeId")
                .asInt();
        int input = tab.send(
                        "DOM.querySelector",
                        JSON.createObjectNode().put("nodeId", root).put("selector", "#files"))
                .path("nodeId")
                .asInt();
        ObjectNode parameters = JSON.createObjectNode().put("nodeId", input);
        parameters.putArray("files").add(file.toAbsolutePath().toString());
        tab.send("DOM.setFileInputFiles", parameters);
    }

    /** Taps one after the other; what the last one notes is kept. */
    void noted(String... selectors) throws Exception {
        tab.value("document.querySelector('#noted').className = ''");
        for (String selector : selectors) {
            tap(selector);
        }
        tab.await("document.querySelector('#noted.added')");
    }

    /** Types an event of the day and adds it. */
    void typeEvent(String line) throws Exception {
        tab.value("document.querySelector('#event').value = '" + line.replace("'", "\\'") + "'");
        noted("#day-line .main");
    }

    /** The texts of all pegs that the store holds. */
    List<String> kept() throws Exception {
        JsonNode texts = tab.value("new Promise((given, failed) => { const asked = indexedDB.open('pegbed', 1);"
                + " asked.onerror = () => failed(asked.error);"
                + " asked.onsuccess = () => { const all = asked.result.transaction('pegs').objectStore('pegs').getAll();"
                + " all.onsuccess = () => { asked.result.close(); given(all.result.map((peg) => peg.text)); }; }; })");
        List<String> kept = new ArrayList<>();
        texts.forEach(text -> kept.add(text.asText()));
        return kept;
    }
}
