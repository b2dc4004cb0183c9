package pegbed.phone;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Looks over what a page shows now: how large its targets are, what can't be reached, and what axe-core finds. */
final class PhoneAudit {
    /** CSS px: at least 12 mm of a thumb. */
    private static final int THUMB_PIXELS = 56;

    /** Half a pixel is lost by rounding. */
    private static final double LEAST_PIXELS = THUMB_PIXELS - 0.5;

    /** What a finger is meant for; a radio button is tapped by its label, a file's box by the label over it. */
    private static final String CONTROLS =
            "(() => { const top = [...document.querySelectorAll('dialog[open]')].at(-1) ?? document;"
                    + " return [...top.querySelectorAll('button, summary, select, input, a[href], label.choice, .file')]"
                    + ".filter((e) => e.checkVisibility() && !['radio', 'file'].includes(e.type)); })()";

    private static final String NAME = "(e) => (e.id || e.getAttribute('aria-label') || e.textContent).slice(0, 60)";

    private PhoneAudit() {}

    /** All faults of what is shown, each with the state that it was found in. */
    static List<String> of(Chromium.Tab tab, String state) throws Exception {
        List<String> faults = new ArrayList<>(targets(tab, state));
        faults.addAll(reach(tab, state));
        faults.addAll(axe(tab, state));
        return faults;
    }

    /** Targets that are too small for a thumb. */
    static List<String> targets(Chromium.Tab tab, String state) throws Exception {
        return told(
                tab,
                state,
                CONTROLS + ".map((e) => [(" + NAME + ")(e), e.getBoundingClientRect()])"
                        + ".filter(([, box]) => box.width < " + LEAST_PIXELS + " || box.height < " + LEAST_PIXELS
                        + ").map(([name, box]) => name + ' is ' + box.width + ' x ' + box.height)");
    }

    /** Targets that no finger can reach even after scrolling, and what is wider than its place. */
    static List<String> reach(Chromium.Tab tab, String state) throws Exception {
        List<String> faults = new ArrayList<>(told(
                tab,
                state,
                CONTROLS + ".filter((e) => { e.scrollIntoView({ block: 'nearest' });"
                        + " const b = e.getBoundingClientRect();"
                        + " const top = document.elementFromPoint(b.x + b.width / 2, b.y + b.height / 2);"
                        + " return !(top && (e === top || e.contains(top) || e.closest('label') === top.closest('label')"
                        + " && top.closest('label'))); })"
                        + ".map((e) => (" + NAME + ")(e) + ' is out of reach')"));
        faults.addAll(told(
                tab,
                state,
                "[document.documentElement, ...document.querySelectorAll('#parts, #news, dialog[open], button, .value')]"
                        + ".filter((e) => e === document.documentElement || e.checkVisibility())"
                        + ".filter((e) => e.scrollWidth > e.clientWidth + 1)"
                        + ".map((e) => (" + NAME + ")(e) + ' is wider than its place')"));
        return faults;
    }

    /** What axe-core finds by the Web Content Accessibility Guidelines 2.2, level AA, and good practice. */
    static List<String> axe(Chromium.Tab tab, String state) throws Exception {
        if (!tab.value("typeof axe === 'object'").asBoolean()) {
            try (InputStream in = PhoneAudit.class.getResourceAsStream("/axe.min.js")) {
                tab.value(new String(in.readAllBytes(), StandardCharsets.UTF_8) + "; true");
            }
        }
        return told(
                tab,
                state,
                "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa',"
                        + " 'best-practice'] }).then((all) => all.violations.map((fault) => fault.id + ': '"
                        + " + fault.nodes.map((node) => node.html.slice(0, 120) + ' ' + node.failureSummary).join('; ')))");
    }

    private static List<String> told(Chromium.Tab tab, String state, String found) throws Exception {
        List<String> faults = new ArrayList<>();
        tab.value(found).forEach(fault -> faults.add(state + ": " + fault.asText()));
        return faults;
    }
}
