package pegbed.phone;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How quick the page is at a part of this machine's speed: opening, and from a reading's line to the maps and all
 * answers, in milliseconds of the page's own clock; and how long the page's thread was held.
 */
final class PhoneTimes {
    /** Marks when what is waited for comes true, looked at each time that the page shows a frame. */
    private static final String WHEN = "(condition) => new Promise((at) => { const look = () => condition()"
            + " ? at(performance.now()) : requestAnimationFrame(look); look(); })";

    private static final int OPENINGS = 5;

    private PhoneTimes() {}

    private static int median(List<Integer> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }

    /**
     * Measures, and prints what was measured.
     *
     * @param args how many times slower than this machine; 4 if there is none
     */
    public static void main(String[] args) throws Exception {
        double slower = args.length > 0 ? Double.parseDouble(args[0]) : 4;
        try (Site site = new Site(PhoneUser.files());
                Chromium browser = new Chromium(Files.createTempDirectory("phone-times"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            Chromium.Tab tab = person.tab();
            tab.phone(390, 844, 2);
            tab.send(
                    "Page.addScriptToEvaluateOnNewDocument",
                    new ObjectMapper()
                            .createObjectNode()
                            .put(
                                    "source",
                                    "window.held = []; new PerformanceObserver((list) => held.push(...list.getEntries()"
                                            + ".map((each) => Math.round(each.duration))))"
                                            + ".observe({ type: 'longtask', buffered: true });"
                                            + " window.holders = []; new PerformanceObserver((list) => holders.push("
                                            + "...list.getEntries().map((frame) => Math.round(frame.duration)"
                                            + " + ' ms at ' + Math.round(frame.startTime) + ': ' + frame.scripts.map("
                                            + "(script) => Math.round(script.duration) + ' ms ' + script.invoker"
                                            + " + ' ' + script.sourceFunctionName).concat('layout and paint '"
                                            + " + Math.round(frame.startTime + frame.duration - frame.styleAndLayoutStart)"
                                            + " + ' ms').join(', '))))"
                                            + ".observe({ type: 'long-animation-frame', buffered: true });"));
            person.open(site.address());
            person.beginPeg("");
            for (int i = 0; i < 12; i++) {
                person.plumb(PhoneUseTest::depth);
            }
            person.answered();
            tab.await("navigator.serviceWorker.controller");
            tab.throttle(slower);
            List<Integer> opened = new ArrayList<>();
            List<Integer> held = new ArrayList<>();
            for (int i = 0; i < OPENINGS; i++) {
                browser.trace();
                tab.open(site.address());
                tab.await("window.performance && document.readyState === 'complete'");
                opened.add(tab.value("(" + WHEN + ")(() => document.body.dataset.done === 'true')")
                        .asInt());
                List<Double> tasks = browser.tasksMilliseconds();
                held.add((int) Math.round(tasks.get(0)));
                System.out.println("Longest tasks " + tasks.subList(0, Math.min(8, tasks.size()))
                        + " ms of the processor's time; by the clock " + tab.value("held") + " by "
                        + tab.value("holders"));
            }
            System.out.println("Open until all answers: " + opened + " ms; the page's thread was held at most " + held
                    + " ms of the processor's time, median " + median(held) + ", worst " + Collections.max(held));
            List<Integer> soon = new ArrayList<>();
            List<Integer> whole = new ArrayList<>();
            for (int i = 0; i < 7; i++) {
                JsonNode times = tab.value("(async () => { const when = " + WHEN + "; held.length = 0;"
                        + " document.querySelector('#line').value = '" + (5 + i) + " " + (3 * i)
                        + "L 4ft " + i + "in'; const from = performance.now();"
                        + " const maps = Number(document.body.dataset.maps);"
                        + " document.querySelector('#entry').requestSubmit();"
                        + " const soon = await when(() => Number(document.body.dataset.maps) > maps);"
                        + " const whole = await when(() => document.body.dataset.done === 'true');"
                        + " return [soon - from, whole - from]; })()");
                soon.add(times.get(0).asInt());
                whole.add(times.get(1).asInt());
            }
            System.out.println("Reading until a map: " + soon + " ms; until all answers: " + whole
                    + " ms; the page's thread was held " + tab.value("held"));
        }
    }
}
