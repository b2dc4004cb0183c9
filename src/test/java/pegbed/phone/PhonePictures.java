package pegbed.phone;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import pegbed.wording.DayLogWords;

/** Takes the pictures of the page for docs/images, from what the profile {@code phone} built, at an invented peg. */
final class PhonePictures {
    private static final int SETTLED_MILLIS = 900;

    /** Pixels of the screen for a CSS pixel. */
    private static final double DENSITY = 1.5;

    private final Chromium.Tab tab;
    private final Path folder;

    private PhonePictures(Chromium.Tab tab, Path folder) {
        this.tab = tab;
        this.folder = folder;
    }

    /**
     * Takes the pictures.
     *
     * @param args the folder; docs/images if there is none
     */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args.length > 0 ? args[0] : "docs/images");
        try (Site site = new Site(PhoneUser.files());
                Chromium browser = new Chromium(Files.createTempDirectory("phone-pictures"))) {
            PhoneUser person = new PhoneUser(browser.tab());
            new PhonePictures(person.tab(), folder).take(person, site.address());
        }
    }

    private void take(PhoneUser person, String address) throws Exception {
        tab.phone(390, 844, DENSITY);
        person.open(address);
        person.tap("#new");
        tab.await("document.querySelector('#new-peg').open");
        type("venue", "Mallowfield Pools");
        type("water", "Tansy Cut");
        type("number", "11");
        tab.value("document.activeElement.blur(); document.querySelector('#new-peg').scrollTop = 0; true");
        picture("phone-new-peg");
        person.tap("#new-peg .main");
        for (int i = 0; i < 12; i++) {
            if (i == 4) {
                person.choose(PhoneUseTest::depth);
                picture("phone-reading");
                person.tap("#add");
                tab.await("document.querySelector('#understood.added')");
            } else {
                person.plumb(PhoneUseTest::depth);
            }
        }
        person.answered();
        picture("phone-map");
        person.tap("#to-lines");
        picture("phone-lines");
        person.tap("#to-fishing");
        fish(person);
        picture("phone-fishing");
        tab.value("document.querySelector('#strip').scrollIntoView({ block: 'center' }); true");
        picture("phone-fishing-strip");
        person.tap("#to-plumb");
        tab.media("prefers-color-scheme", "dark");
        picture("phone-dark");
        tab.media("prefers-contrast", "more");
        picture("phone-contrast");
        tab.media("prefers-contrast", "no-preference");
        tab.phone(844, 390, DENSITY);
        picture("phone-landscape");
    }

    /** An invented hour: typed with its times, the last fish by a tap. */
    private void fish(PhoneUser person) throws Exception {
        note(person, 64, "line 2 start");
        note(person, 63, "line 2 feed pellets pinch");
        note(person, 55, "line 2 fish skimmer");
        note(person, 49, "line 2 bite");
        note(person, 46, "line 2 fish skimmer");
        note(person, 40, "line 2 fish roach");
        note(person, 33, "line 1 feed pellets pinch");
        note(person, 24, "line 2 lost");
        note(person, 20, "line 1 start");
        note(person, 14, "line 1 fish skimmer");
        note(person, 11, "line 1 fish roach");
        person.noted("#kinds [data-kind=skimmer]", ".fished-line:has([data-kind=start]:disabled) [data-kind=fish]");
        tab.value("document.querySelector('#parts').scrollTop = 0; true");
    }

    private void note(PhoneUser person, int minutesAgo, String what) throws Exception {
        OffsetDateTime time = OffsetDateTime.now(ZoneId.systemDefault()).minusMinutes(minutesAgo);
        person.typeEvent(DayLogWords.clock(time) + " " + what);
    }

    private void type(String field, String text) throws Exception {
        tab.tap("#new-" + field);
        tab.type(text);
    }

    private void picture(String name) throws Exception {
        Thread.sleep(SETTLED_MILLIS);
        Files.write(folder.resolve(name + ".png"), tab.picture());
    }
}
