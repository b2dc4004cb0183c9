package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/** Every view of the page on a small phone, in a real browser. Needs what the profile {@code phone} builds. */
@Tag("phone")
@Tag("phone-long")
class PhoneViewsTest {
    private static final int WIDTH = 360;
    private static final int HEIGHT = 740;

    @TempDir(cleanup = CleanupMode.NEVER)
    Path folder;

    /** Looks at a state of the page. */
    @FunctionalInterface
    private interface Look {
        List<String> at(Chromium.Tab tab, String state) throws Exception;
    }

    @Test
    void everyTargetIsAsLargeAsAThumbOnASmallPhone() throws Exception {
        List<String> faults = new ArrayList<>();
        try (Chromium browser = new Chromium(folder.resolve("profile"))) {
            walk(
                    browser,
                    (tab, state) -> {
                        faults.addAll(PhoneAudit.targets(tab, state));
                        return PhoneAudit.reach(tab, state);
                    },
                    faults);
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void allIsInReachWhereThePhonesLettersAreTwiceAsLarge() throws Exception {
        List<String> faults = new ArrayList<>();
        try (Chromium browser = new Chromium(folder.resolve("profile"), "--blink-settings=defaultFontSize=32")) {
            walk(browser, PhoneAudit::reach, faults);
        }
        assertEquals(List.of(), faults);
    }

    private static void walk(Chromium browser, Look look, List<String> faults) throws Exception {
        try (Site site = new Site(PhoneUser.files())) {
            PhoneUser person = new PhoneUser(browser.tab());
            Chromium.Tab tab = person.tab();
            tab.phone(WIDTH, HEIGHT, 2);
            tab.open(site.address());
            tab.await("document.querySelector('#cautions').open");
            faults.addAll(look.at(tab, "cautions"));
            tab.tap("#cautions-read");
            person.ready();
            faults.addAll(look.at(tab, "start"));
            tab.tap("#new");
            tab.await("document.querySelector('#new-peg').open");
            faults.addAll(look.at(tab, "new peg"));
            tab.tap("#near-0 .value");
            tab.await("document.querySelector('#choices').open");
            faults.addAll(look.at(tab, "a distance of the new peg"));
            tab.tap("#choices > button");
            tab.tap("#new-peg .main");
            person.answered();
            tab.value("document.body.dataset.done = 'false'");
            person.give(Path.of("sample-pegs/tansy-cut-9.peg.json"));
            person.answered();
            faults.addAll(look.at(tab, "plumb"));
            sheet(tab, "#distance-wheel .value", look, faults);
            sheet(tab, "#direction-wheel .value", look, faults);
            tab.tap("#direction-wheel .value");
            tab.value("[...document.querySelectorAll('#choices .key')][0].click()");
            faults.addAll(look.at(tab, "plumb beside a mark"));
            sheet(tab, "#expected", look, faults);
            tab.tap("#map-closer");
            tab.await("!document.querySelector('#map-left').hidden");
            faults.addAll(look.at(tab, "plumb, the map from near"));
            tab.tap("#to-lines");
            tab.value("document.querySelectorAll('details').forEach((each) => (each.open = true))");
            faults.addAll(look.at(tab, "lines"));
            tab.tap("#to-fishing");
            tab.await("document.querySelector('#fished-lines [data-kind=start]')");
            person.noted("#fished-lines [data-kind=start]");
            person.answered();
            person.typeEvent("fish a fish of a long name");
            tab.await("!document.querySelector('#strip-part').hidden && !document.querySelector('#kinds').hidden");
            faults.addAll(look.at(tab, "fishing"));
            tab.tap("#to-peg");
            tab.value(
                    "document.querySelector('#board').value = '20cm'; document.querySelector('#level').requestSubmit()");
            tab.await("!document.querySelector('#level-words').hidden");
            faults.addAll(look.at(tab, "peg"));
            sheet(tab, "#kept-pegs button.quiet", look, faults);
            tab.tap("#read-cautions");
            tab.await("document.querySelector('#cautions').open");
            faults.addAll(look.at(tab, "cautions again"));
            tab.tap("#cautions > button");
            PhoneUser second = new PhoneUser(browser.tab());
            second.tab().phone(WIDTH, HEIGHT, 2);
            second.open(site.address());
            second.tab().await("!document.querySelector('#news').hidden");
            faults.addAll(look.at(second.tab(), "open in another tab"));
        }
    }

    /** A sheet that a button opens, and that its last button closes. */
    private static void sheet(Chromium.Tab tab, String opener, Look look, List<String> faults) throws Exception {
        tab.tap(opener);
        tab.await("document.querySelector('#choices').open");
        faults.addAll(look.at(tab, "the sheet of " + opener));
        tab.tap("#choices > button:last-child");
        tab.await("!document.querySelector('#choices').open");
    }
}
