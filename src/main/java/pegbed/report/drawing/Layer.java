package pegbed.report.drawing;

import java.util.EnumSet;
import java.util.Set;

/** What is switched on and off together, in the order in which it lies on the sheet: the later on top. */
public enum Layer {
    /** Depth bands, land and banks. */
    GROUND("depths and banks"),
    /** The veil where the map is a guess. */
    DOUBT("doubt"),
    /** Contours and their labels. */
    CONTOURS("contours"),
    /** Rings at the pole's joints. */
    RINGS("pole rings"),
    /** Clock figures round the rim. */
    CLOCK("clock"),
    /** Outlines of the zones. */
    ZONES("zones"),
    /** Hazards. */
    HAZARDS("hazards"),
    /** Where the bottom has changed between visits. */
    CHANGED("changed places"),
    /** Soundings. */
    READINGS("readings"),
    /** Marks on the far bank. */
    MARKS("marks"),
    /** Flat spots at the target. */
    FLATS("flat spots"),
    /** The deepest place. */
    DEEPEST("deepest"),
    /** Lines to fish. */
    LINES("lines"),
    /** The next reading to take. */
    NEXT("next reading"),
    /** The seat. */
    SEAT("seat"),
    /** Title, legends, scale bar. */
    FURNITURE("title and legend"),
    /** The caution. */
    CAUTION("caution");

    private final String words;

    Layer(String words) {
        this.words = words;
    }

    /** What a switch for it says. */
    public String words() {
        return words;
    }

    /** All but the zones. */
    public static Set<Layer> usual() {
        return EnumSet.complementOf(EnumSet.of(ZONES));
    }

    /** Those of a peg on which nothing was found yet: the place alone, hatched as the guess that it is. */
    public static Set<Layer> ofPlaceAlone(Set<Layer> layers) {
        Set<Layer> place = EnumSet.noneOf(Layer.class);
        place.addAll(layers);
        place.removeAll(EnumSet.of(CONTOURS, ZONES, FLATS, DEEPEST, LINES, NEXT));
        return place;
    }
}
