package pegbed.phone;

import java.util.List;
import java.util.Locale;
import pegbed.model.Peg;

/** Which of the pegs that a phone holds inform another. */
final class Neighbours {
    private Neighbours() {}

    /** Other pegs of a peg's own water. */
    static List<Peg> of(Peg peg, List<Peg> held) {
        return peg.name().water().isBlank()
                ? List.of()
                : held.stream()
                        .filter(other -> same(other.name().venue(), peg.name().venue())
                                && same(other.name().water(), peg.name().water())
                                && !same(other.name().number(), peg.name().number()))
                        .toList();
    }

    private static boolean same(String a, String b) {
        return a.strip().toLowerCase(Locale.ROOT).equals(b.strip().toLowerCase(Locale.ROOT));
    }
}
