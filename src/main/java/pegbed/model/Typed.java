package pegbed.model;

/**
 * What a person typed, word for word. Empty where a value came from a table of numbers.
 *
 * @param distance the distance as typed, such as {@code s6+0.5}
 * @param direction the direction as typed, such as {@code @post+1}
 * @param depth the depth as typed, such as {@code 5'6}; of a snag, its radius as typed
 */
public record Typed(String distance, String direction, String depth) {
    public static final Typed NOTHING = new Typed("", "", "");
}
