package pegbed.report.drawing;

import java.util.Optional;

/**
 * How letters are drawn.
 *
 * @param colour of the letters
 * @param halo pen round the letters, painted before them; empty for none
 */
public record Ink(Colour colour, Optional<Pen> halo) {}
