package pegbed.model;

/**
 * Something on the far bank to sight on.
 *
 * @param name one word or more, as typed after {@code @}; not blank
 * @param place where it stands
 * @param extras fields of a later version
 */
public record Mark(String name, Place place, Extras extras) {
    public Mark {
        if (name.isBlank()) {
            throw new IllegalArgumentException("A mark needs a name.");
        }
    }
}
