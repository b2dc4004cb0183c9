package pegbed.bench.quality;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import pegbed.findings.Confidence;

/**
 * One figure of a table.
 *
 * @param text for people
 * @param json for machines; null where there is none
 */
record Cell(String text, JsonNode json) {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    static Cell words(String words) {
        return new Cell(words, JSON.textNode(words));
    }

    static Cell count(long number) {
        return new Cell(Long.toString(number), JSON.numberNode(number));
    }

    /** A number; a dash where it is not one. */
    static Cell number(double value, int decimals) {
        return Double.isFinite(value)
                ? new Cell(String.format(Locale.ROOT, "%." + decimals + "f", value), JSON.numberNode(rounded(value)))
                : new Cell("–", JSON.nullNode());
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP);
    }

    /** A mean with its standard error. */
    static Cell figure(Figure figure) {
        if (!Double.isFinite(figure.mean())) {
            return number(figure.mean(), 3);
        }
        var node = JSON.objectNode();
        node.put("mean", rounded(figure.mean()));
        node.set("standard_error", number(figure.error(), 3).json());
        return new Cell(figure.toString(), node);
    }

    /** So many of so many. */
    static Cell share(long part, long whole) {
        var node = JSON.objectNode();
        node.put("right", part);
        node.put("of", whole);
        return new Cell(
                whole == 0 ? "none" : String.format(Locale.ROOT, "%d/%d = %.2f", part, whole, (double) part / whole),
                node);
    }

    static Cell share(List<Outcome> outcomes, Predicate<Outcome> good) {
        return share(outcomes.stream().filter(good).count(), outcomes.size());
    }

    /** How often a word was right. */
    static Cell kept(List<Outcome> outcomes, Confidence word, Predicate<Outcome> good) {
        return share(outcomes.stream().filter(o -> o.confidence() == word).toList(), good);
    }
}
