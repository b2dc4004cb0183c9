package pegbed.exchange;

/**
 * Where a raster lies.
 *
 * @param affine a, b, c, d, e, f: the corner (column, row) of the pixels lies at a·column + b·row + c, d·column + e·row
 *     + f
 * @param epsgCode the projected coordinate reference system, 0 where there is none
 * @param citation its name, or what the coordinates are
 */
record RasterPlace(double[] affine, int epsgCode, String citation) {}
