package pegbed.notation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pegbed.model.Mark;

/**
 * Finds the mark that a typed name means: a whole name first, the longest that fits; else the beginning of one, or one
 * of its words, where that fits one mark alone. Capitals and the number of blanks don't matter.
 */
final class MarkNames {
    private MarkNames() {}

    /** A right example of a direction by mark. */
    static String example(List<Mark> marks) {
        return marks.isEmpty() ? "@post" : "@" + marks.get(0).name();
    }

    /** Reads {@code @} and the name of a mark. */
    static Mark take(Text text, List<Mark> marks) throws NotationException {
        int from = text.at();
        text.take(Pattern.compile("@ *"));
        List<Mark> longestFirst = marks.stream()
                .sorted(Comparator.comparingInt((Mark mark) -> mark.name().length())
                        .reversed())
                .toList();
        for (Mark mark : longestFirst) {
            if (text.take(whole(mark)).isPresent()) {
                return mark;
            }
        }
        List<Integer> ends = wordEnds(text);
        int max = marks.stream().mapToInt(mark -> words(mark).size()).max().orElse(0);
        int start = text.at();
        for (int count = Math.min(max, ends.size()); count > 0; count--) {
            String typed = oneBlank(text.plainRest().substring(0, ends.get(count - 1) - start));
            List<Mark> meant =
                    marks.stream().filter(mark -> couldMean(typed, mark)).toList();
            if (meant.size() > 1) {
                text.goTo(ends.get(count - 1));
                throw NotationException.about(text.since(from), ambiguous(meant));
            }
            if (meant.size() == 1) {
                text.goTo(ends.get(count - 1));
                return meant.get(0);
            }
        }
        text.goTo(ends.isEmpty() ? start : ends.get(0));
        throw NotationException.about(text.since(from), unknown(marks));
    }

    private static Pattern whole(Mark mark) {
        String name = words(mark).stream().map(Pattern::quote).collect(Collectors.joining(" +"));
        return Pattern.compile(name + "(?=[ ;+-]|,(?:[ ;]|$)|$)");
    }

    private static boolean couldMean(String typed, Mark mark) {
        List<String> words = words(mark);
        return String.join(" ", words).startsWith(typed) || words.contains(typed);
    }

    private static List<String> words(Mark mark) {
        return Stream.of(Text.plain(mark.name()).split(" +"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static String oneBlank(String text) {
        return text.replaceAll(" +", " ");
    }

    /** Where the words ahead end; an offset, a semicolon or a comma before a blank ends the last of them. */
    private static List<Integer> wordEnds(Text text) {
        String rest = text.plainRest();
        List<Integer> ends = new ArrayList<>();
        int i = 0;
        while (i < rest.length()) {
            int from = i;
            while (i < rest.length() && rest.charAt(i) != ' ' && !endsName(rest, i)) {
                i++;
            }
            if (i > from) {
                ends.add(text.at() + i);
            }
            if (i == rest.length() || rest.charAt(i) != ' ') {
                return ends;
            }
            i++;
        }
        return ends;
    }

    private static boolean endsName(String rest, int i) {
        String after = rest.substring(i + 1, Math.min(i + 2, rest.length()));
        return switch (rest.charAt(i)) {
            case ';' -> true;
            case ',' -> after.isEmpty() || " ;".contains(after);
            case '+', '-' -> after.isEmpty() || " .,½¼¾0123456789".contains(after);
            default -> false;
        };
    }

    private static String ambiguous(List<Mark> meant) {
        String last = meant.get(meant.size() - 1).name();
        String others =
                meant.subList(0, meant.size() - 1).stream().map(Mark::name).collect(Collectors.joining(", "));
        return "could be " + others + " or " + last + "; type more of the name, like " + "@"
                + meant.get(0).name() + ".";
    }

    private static String unknown(List<Mark> marks) {
        if (marks.isEmpty()) {
            return "names a mark, but this peg has none yet; type degrees like 20L or a clock time like 11:30.";
        }
        return "is none of this peg's marks, which are "
                + marks.stream().map(Mark::name).collect(Collectors.joining(", ")) + "; type one like "
                + example(marks) + ".";
    }
}
