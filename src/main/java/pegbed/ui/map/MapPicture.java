package pegbed.ui.map;

import java.util.Optional;
import javafx.scene.image.Image;
import org.locationtech.jts.geom.Envelope;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.View;

/**
 * A finished picture of the map.
 *
 * @param image the water, without the findings; empty where only the findings were made anew
 * @param findings deepest place and flat spots, painted over the image
 * @param view the view that both were made for
 * @param bounds what there is to see, metres
 * @param legend what the signs mean; empty where the one before still holds
 */
record MapPicture(Optional<Image> image, Drawing findings, View view, Envelope bounds, Optional<Drawing> legend) {}
