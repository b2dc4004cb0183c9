package pegbed.storage.shelf;

import java.nio.file.Path;
import java.text.Normalizer;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Reading;
import pegbed.model.Units;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.peg.Fingerprint;

/**
 * One peg on the shelf, as its file tells it; no bottom is fitted.
 *
 * @param file the peg file
 * @param fingerprint of the file as it was read; hand it back with every change
 * @param name what the peg is called; all empty where the file can't be read
 * @param units how the person says depths there
 * @param visits number of visits
 * @param lastVisit when the latest visit began, where known
 * @param readings number of readings of all visits
 * @param deepestReadingMetres the deepest reading of the latest visit that has any, below that visit's level, metres
 * @param boardToWaterMetres the latest visit's board measure, metres; empty if it was not measured
 * @param trouble what is wrong with the file, a sentence; empty for a sound one
 */
public record ShelfPeg(
        Path file,
        Fingerprint fingerprint,
        PegName name,
        Units units,
        int visits,
        Optional<OffsetDateTime> lastVisit,
        int readings,
        OptionalDouble deepestReadingMetres,
        OptionalDouble boardToWaterMetres,
        Optional<String> trouble) {
    static ShelfPeg of(Path file, Peg peg, Fingerprint fingerprint, Optional<String> trouble) {
        OptionalDouble deepest = OptionalDouble.empty();
        for (int v = peg.visits().size() - 1; v >= 0 && deepest.isEmpty(); v--) {
            deepest = peg.visits().get(v).readings().stream()
                    .mapToDouble(Reading::depthMetres)
                    .max();
        }
        return new ShelfPeg(
                file,
                fingerprint,
                peg.name(),
                peg.units(),
                peg.visits().size(),
                peg.today().start(),
                peg.visits().stream().mapToInt(visit -> visit.readings().size()).sum(),
                deepest,
                peg.today().boardToWaterMetres(),
                trouble);
    }

    static ShelfPeg unreadable(Path file, Fingerprint fingerprint, String why) {
        return new ShelfPeg(
                file,
                fingerprint,
                Peg.EMPTY.name(),
                Units.USUAL,
                0,
                Optional.empty(),
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(why));
    }

    /** What is searched: venue, water, number and file name, without capitals and accents. */
    String searched() {
        return plain(name.venue() + " " + name.water() + " " + name.number() + " " + AtomicFileWriter.name(file));
    }

    /** A text without capitals, accents and blanks at its ends. */
    static String plain(String text) {
        // Most names have no accents, and what knows of accents takes long to load.
        boolean ascii = text.chars().allMatch(c -> c < 128);
        String bare =
                ascii ? text : Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        return bare.toLowerCase(Locale.ROOT).strip();
    }
}
