package pegbed.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/** axe-core looks over every view of the page in every look. Needs what the profile {@code phone} builds. */
@Tag("phone")
class PhoneAccessibilityTest {
    @TempDir(cleanup = CleanupMode.NEVER)
    Path folder;

    @Test
    void axeFindsNoFaultOfAccessibility() throws Exception {
        try (Site site = new Site(PhoneUser.files());
                Chromium browser = new Chromium(folder.resolve("profile"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            Chromium.Tab tab = person.tab();
            tab.phone(390, 844, 2);
            tab.open(site.address());
            tab.await("document.querySelector('#cautions').open");
            List<String> faults = new ArrayList<>();
            faults.addAll(PhoneAudit.axe(tab, "cautions"));
            tab.tap("#cautions-read");
            person.ready();
            faults.addAll(PhoneAudit.axe(tab, "start"));
            tab.tap("#new");
            tab.await("document.querySelector('#new-peg').open");
            faults.addAll(PhoneAudit.axe(tab, "new peg"));
            tab.tap("#new-peg .main");
            for (int i = 0; i < 4; i++) {
                person.plumb(PhoneUseTest::depth);
            }
            person.answered();
            for (int look = 0; look < 4; look++) {
                tab.tap("#to-peg");
                tab.tap(".choice:has([name=look][value='" + look + "'])");
                for (String part : List.of("peg", "lines", "fishing", "plumb")) {
                    tab.tap("#to-" + part);
                    faults.addAll(PhoneAudit.axe(tab, part + " in look " + look));
                }
                tab.tap("#distance-wheel .value");
                faults.addAll(PhoneAudit.axe(tab, "a wheel's sheet in look " + look));
                tab.tap("#choices > button");
            }
            assertEquals(List.of(), faults);
        }
    }
}
