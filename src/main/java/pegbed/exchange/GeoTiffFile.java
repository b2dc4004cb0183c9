package pegbed.exchange;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Deflater;
import pegbed.model.Monitor;
import pegbed.model.Parallel;

/**
 * A raster as a Cloud Optimized GeoTIFF: TIFF 6.0 with 32-bit floating point numbers in deflated tiles, the keys of OGC
 * 19-008r4 (GeoTIFF 1.1), and the layout of OGC 21-026: all directories at the beginning, overviews of half, a quarter
 * ... of the size, whose tiles stand before those of the full size. Where there is no value stands {@link #NO_DATA}.
 *
 * <p>It is written here because no library does all of it: that of Apache SIS 1.6 writes one band without overviews,
 * that of the JDK puts directories where their pixels end (decision 0017).
 */
final class GeoTiffFile {
    /** Stands where there is no value. */
    static final float NO_DATA = -9999;

    private static final int TILE = 256;

    /**
     * The convention of GDAL's COG driver by which a reader knows that directories come first, tiles stand row by row,
     * and each has its length before it and its last four bytes once more behind it. The blank at the end is where a
     * program that breaks this leaves its mark.
     */
    private static final String STRUCTURE =
            "LAYOUT=IFDS_BEFORE_DATA\nBLOCK_ORDER=ROW_MAJOR\nBLOCK_LEADER=SIZE_AS_UINT4\n"
                    + "BLOCK_TRAILER=LAST_4_BYTES_REPEATED\nKNOWN_INCOMPATIBLE_EDITION=NO\n ";

    /** Bytes before and behind each tile. */
    private static final int LEADER = 4;

    private static final int TRAILER = 4;

    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int ASCII = 2;
    private static final int DOUBLE = 12;

    private final Raster raster;
    private final RasterPlace place;
    private final String description;

    private GeoTiffFile(Raster raster, RasterPlace place, String description) {
        this.raster = raster;
        this.place = place;
        this.description = description;
    }

    /** A picture of some size and its tiles, deflated. */
    private record Level(Raster raster, List<byte[]> tiles) {}

    /** A field of a directory, its values as bytes. */
    private record Entry(int type, int count, byte[] value) {}

    /**
     * The bytes of the file.
     *
     * @param description what the file says of itself, plain ASCII
     */
    static byte[] bytes(Raster raster, RasterPlace place, String description, Monitor monitor) {
        return new GeoTiffFile(raster, place, description).write(monitor);
    }

    private byte[] write(Monitor monitor) {
        List<Level> levels = new ArrayList<>();
        Raster size = raster;
        levels.add(new Level(size, tiles(size, monitor)));
        while (size.width() > TILE || size.height() > TILE) {
            monitor.check();
            size = size.halved();
            levels.add(new Level(size, tiles(size, Monitor.NONE)));
        }
        byte[] ghost = ghost();
        int start = 8 + ghost.length;
        // Once to know how long the directories are, once with the places of the tiles.
        int directories = directories(levels, start, new int[levels.size()]).length;
        int[] tilesAt = new int[levels.size()];
        int at = start + directories;
        for (int i = levels.size() - 1; i >= 0; i--) {
            tilesAt[i] = at;
            at += levels.get(i).tiles().stream()
                    .mapToInt(tile -> LEADER + tile.length + TRAILER)
                    .sum();
        }
        ByteBuffer out = ByteBuffer.allocate(at).order(ByteOrder.LITTLE_ENDIAN);
        out.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(start).put(ghost);
        out.put(directories(levels, start, tilesAt));
        for (int i = levels.size() - 1; i >= 0; i--) {
            for (byte[] tile : levels.get(i).tiles()) {
                out.putInt(tile.length).put(tile).put(tile, tile.length - TRAILER, TRAILER);
            }
        }
        return out.array();
    }

    private static byte[] ghost() {
        String text = String.format(
                java.util.Locale.ROOT, "GDAL_STRUCTURAL_METADATA_SIZE=%06d bytes\n%s", STRUCTURE.length(), STRUCTURE);
        // Directories begin at even places (TIFF 6.0, section 2).
        return (text.length() % 2 == 0 ? text : text + "\n").getBytes(StandardCharsets.US_ASCII);
    }

    private static List<byte[]> tiles(Raster raster, Monitor monitor) {
        int across = tiles(raster.width());
        int down = tiles(raster.height());
        byte[][] tiles = new byte[across * down][];
        Parallel.each(tiles.length, tile -> tiles[tile] = deflated(raster, tile % across, tile / across));
        monitor.progress(1);
        return new ArrayList<>(Arrays.asList(tiles));
    }

    private static int tiles(int pixels) {
        return (pixels + TILE - 1) / TILE;
    }

    private static byte[] deflated(Raster raster, int column, int row) {
        int bands = raster.bands().length;
        ByteBuffer pixels =
                ByteBuffer.allocate(TILE * TILE * bands * Float.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        for (int r = row * TILE; r < (row + 1) * TILE; r++) {
            for (int c = column * TILE; c < (column + 1) * TILE; c++) {
                boolean within = r < raster.height() && c < raster.width();
                for (int b = 0; b < bands; b++) {
                    float value = within ? raster.bands()[b][r * raster.width() + c] : Float.NaN;
                    pixels.putFloat(Float.isNaN(value) ? NO_DATA : value);
                }
            }
        }
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        deflater.setInput(pixels.array());
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream(pixels.capacity() / 2);
        byte[] piece = new byte[1 << 16];
        while (!deflater.finished()) {
            out.write(piece, 0, deflater.deflate(piece));
        }
        deflater.end();
        return out.toByteArray();
    }

    /** All directories, one after the other, each with its long values behind it. */
    private byte[] directories(List<Level> levels, int start, int[] tilesAt) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (int i = 0; i < levels.size(); i++) {
            all.writeBytes(directory(levels.get(i), i > 0, i + 1 == levels.size(), start + all.size(), tilesAt[i]));
        }
        return all.toByteArray();
    }

    private byte[] directory(Level level, boolean overview, boolean last, int at, int tilesAt) {
        Map<Integer, Entry> entries = entries(level, overview, tilesAt);
        int fixed = 2 + 12 * entries.size() + 4;
        int extra = 0;
        for (Entry entry : entries.values()) {
            extra += entry.value().length > 4 ? even(entry.value().length) : 0;
        }
        ByteBuffer out = ByteBuffer.allocate(fixed + extra).order(ByteOrder.LITTLE_ENDIAN);
        out.putShort((short) entries.size());
        int behind = fixed;
        for (Map.Entry<Integer, Entry> each : entries.entrySet()) {
            Entry entry = each.getValue();
            out.putShort(each.getKey().shortValue())
                    .putShort((short) entry.type())
                    .putInt(entry.count());
            if (entry.value().length > 4) {
                out.putInt(at + behind);
                ByteBuffer place = out.duplicate();
                place.position(behind);
                place.put(entry.value());
                behind += even(entry.value().length);
            } else {
                out.put(Arrays.copyOf(entry.value(), 4));
            }
        }
        out.putInt(last ? 0 : at + fixed + extra);
        return out.array();
    }

    private static int even(int length) {
        return length + length % 2;
    }

    /** The fields by their numbers (TIFF 6.0; from 33550 on GeoTIFF 1.1; from 42112 on GDAL's). */
    private Map<Integer, Entry> entries(Level level, boolean overview, int tilesAt) {
        Raster size = level.raster();
        int bands = size.bands().length;
        Map<Integer, Entry> entries = new TreeMap<>();
        entries.put(254, longs(overview ? 1 : 0));
        entries.put(256, longs(size.width()));
        entries.put(257, longs(size.height()));
        entries.put(258, shorts(repeated(32, bands)));
        entries.put(259, shorts(8)); // deflate
        entries.put(262, shorts(1)); // the least is black
        entries.put(277, shorts(bands));
        entries.put(284, shorts(1)); // all bands of a pixel together
        entries.put(322, shorts(TILE));
        entries.put(323, shorts(TILE));
        int[] places = new int[level.tiles().size()];
        int[] lengths = new int[places.length];
        int place = tilesAt;
        for (int i = 0; i < places.length; i++) {
            places[i] = place + LEADER;
            lengths[i] = level.tiles().get(i).length;
            place += LEADER + lengths[i] + TRAILER;
        }
        entries.put(324, longs(places));
        entries.put(325, longs(lengths));
        entries.put(338, shorts(repeated(0, bands - 1)));
        entries.put(339, shorts(repeated(3, bands))); // floating point
        entries.put(42113, ascii(Integer.toString((int) NO_DATA)));
        if (!overview) {
            entries.put(270, ascii(description));
            entries.put(305, ascii("Pegbed"));
            entries.put(42112, ascii(bandNames()));
            location(entries);
        }
        return entries;
    }

    private void location(Map<Integer, Entry> entries) {
        double[] a = place.affine();
        entries.put(
                34264,
                doubles(a[0], a[1], 0, a[2], a[3], a[4], 0, a[5], 0, 0, 0, 0, 0, 0, 0, 1)); // ModelTransformation
        String citation = place.citation() + "|";
        if (place.epsgCode() > 0) {
            entries.put(
                    34735,
                    shorts(
                            1,
                            1,
                            1,
                            5,
                            1024,
                            0,
                            1,
                            1, // GTModelType: projected
                            1025,
                            0,
                            1,
                            1, // GTRasterType: pixel is area
                            1026,
                            34737,
                            citation.length(),
                            0, // GTCitation
                            3072,
                            0,
                            1,
                            place.epsgCode(), // ProjectedCRS
                            3076,
                            0,
                            1,
                            9001)); // ProjLinearUnits: metre
        } else {
            entries.put(
                    34735,
                    shorts(
                            1,
                            1,
                            1,
                            3,
                            1024,
                            0,
                            1,
                            32767, // GTModelType: user-defined
                            1025,
                            0,
                            1,
                            1,
                            1026,
                            34737,
                            citation.length(),
                            0));
        }
        entries.put(34737, ascii(citation));
    }

    private String bandNames() {
        StringBuilder xml = new StringBuilder("<GDALMetadata>");
        for (int band = 0; band < raster.names().length; band++) {
            String item = "<Item name=\"%s\" sample=\"" + band + "\" role=\"%s\">%s</Item>";
            xml.append(item.replaceFirst("%s", "DESCRIPTION")
                    .replaceFirst("%s", "description")
                    .replaceFirst("%s", raster.names()[band]));
            xml.append(item.replaceFirst("%s", "UNITTYPE")
                    .replaceFirst("%s", "unittype")
                    .replaceFirst("%s", raster.units()[band]));
        }
        return xml.append("</GDALMetadata>").toString();
    }

    private static int[] repeated(int value, int times) {
        int[] values = new int[times];
        Arrays.fill(values, value);
        return values;
    }

    private static Entry shorts(int... values) {
        ByteBuffer bytes = ByteBuffer.allocate(2 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        return new Entry(SHORT, values.length, bytes.array());
    }

    private static Entry longs(int... values) {
        ByteBuffer bytes = ByteBuffer.allocate(4 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        for (int value : values) {
            bytes.putInt(value);
        }
        return new Entry(LONG, values.length, bytes.array());
    }

    private static Entry doubles(double... values) {
        ByteBuffer bytes = ByteBuffer.allocate(8 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        for (double value : values) {
            bytes.putDouble(value);
        }
        return new Entry(DOUBLE, values.length, bytes.array());
    }

    /** 7-bit letters with a zero at their end; others become question marks. */
    private static Entry ascii(String text) {
        byte[] letters = text.getBytes(StandardCharsets.US_ASCII);
        byte[] ended = Arrays.copyOf(letters, letters.length + 1);
        return new Entry(ASCII, ended.length, ended);
    }
}
