package pegbed.phone;

import java.nio.file.Files;
import java.nio.file.Path;

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
        person.tap("#to-plumb");
        tab.media("prefers-color-scheme", "dark");
        picture("phone-dark");
        tab.media("prefers-contrast", "more");
        picture("phone-contrast");
        tab.media("prefers-contrast", "no-preference");
        tab.phone(844, 390, DENSITY);
        picture("phone-landscape");
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
