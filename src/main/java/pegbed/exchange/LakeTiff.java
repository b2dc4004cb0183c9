package pegbed.exchange;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import pegbed.geodesy.UtmZone;
import pegbed.lake.LakeBottom;
import pegbed.lake.LakeGrid;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Position;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

/**
 * The bottom of a whole water as a GeoTIFF like a peg's.
 *
 * @param file the bytes of the GeoTIFF
 * @param known how many nodes have a depth
 * @param unknown how many nodes among the soundings are too unsure or above the water
 */
public record LakeTiff(byte[] file, int known, int unknown) {
    /** More pixels than this are refused; they are held in memory. */
    private static final long MOST_PIXELS = 20_000_000;

    /**
     * Makes the GeoTIFF.
     *
     * @param position of the log's origin, and the bearing of its y; empty where it has no place on the earth
     * @throws InputException if there are too many pixels, or the position lies at a pole
     */
    public static LakeTiff of(LakeBottom bottom, LakeGrid grid, Optional<Position> position, Monitor monitor)
            throws InputException, IOException {
        GridFrame frame = grid.frame();
        if ((long) frame.columns() * frame.rows() > MOST_PIXELS) {
            throw new InputException(String.format(
                    Locale.ROOT,
                    "A GeoTIFF of %d by %d nodes is too large; give a wider --grid, or a .csv file.",
                    frame.columns(),
                    frame.rows()));
        }
        Georeference reference = Georeference.of(position);
        Optional<UtmZone> zone = reference.zone();
        double[] depth = new double[frame.size()];
        float[][] bands = new float[PegRaster.NAMES.length][frame.size()];
        Arrays.fill(depth, Double.NaN);
        for (float[] band : bands) {
            Arrays.fill(band, Float.NaN);
        }
        int[] counts = new int[2];
        grid.forEach(bottom, monitor, (x, y, depths) -> {
            for (int i = 0; i < x.length; i++) {
                boolean known = bottom.tells(depths, i);
                counts[known ? 0 : 1]++;
                if (known) {
                    int column = (int) Math.round((x[i] - frame.xMinMetres()) / frame.cellMetres());
                    int row = (int) Math.round((y[i] - frame.yMinMetres()) / frame.cellMetres());
                    depth[frame.index(column, row)] = depths.depthMetres()[i];
                    int pixel = frame.index(column, frame.rows() - 1 - row);
                    bands[0][pixel] = (float) depths.depthMetres()[i];
                    bands[1][pixel] = (float) depths.sdMetres()[i];
                }
            }
        });
        Field field = new Field(frame, depth);
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                if (!Double.isNaN(field.at(column, row))) {
                    bands[2][frame.index(column, frame.rows() - 1 - row)] =
                            (float) PegRaster.slope(field, column, row, 1, 8 * frame.cellMetres());
                }
            }
        }
        RasterPlace place = PegRaster.place(frame, reference, zone);
        Raster raster = new Raster(frame.columns(), frame.rows(), bands, PegRaster.NAMES, PegRaster.UNITS);
        String said = PegRaster.description("A whole water", place.citation());
        return new LakeTiff(GeoTiffFile.bytes(raster, place, said, Monitor.NONE), counts[0], counts[1]);
    }
}
