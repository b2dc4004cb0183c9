package pegbed.phone;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import pegbed.model.Peg;
import pegbed.storage.peg.OtherPegs;

/** Which of the pegs that a phone holds inform another. */
final class Neighbours {
    private Neighbours() {}

    /** Other pegs of a peg's own water, the nearest by number first: one of each number, and no copies. */
    static List<Peg> of(Peg peg, List<Peg> held) {
        if (peg.name().water().isBlank()) {
            return List.of();
        }
        Set<String> numbers = new HashSet<>(Set.of(plain(peg.name().number())));
        List<Peg> chosen = new ArrayList<>();
        held.stream()
                .filter(other -> same(other.name().venue(), peg.name().venue())
                        && same(other.name().water(), peg.name().water())
                        && numbers.add(plain(other.name().number())))
                .sorted(Comparator.comparingLong((Peg other) -> OtherPegs.apart(other.name(), peg.name()))
                        .thenComparing(other -> other.name().number()))
                .limit(OtherPegs.MOST)
                .filter(other -> !OtherPegs.isCopy(other, peg)
                        && chosen.stream().noneMatch(before -> OtherPegs.isCopy(other, before)))
                .forEach(chosen::add);
        return chosen;
    }

    private static boolean same(String a, String b) {
        return plain(a).equals(plain(b));
    }

    /** Without capitals, and blanks at its ends. */
    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
