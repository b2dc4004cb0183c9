package pegbed.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import pegbed.geodesy.UtmZone;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Position;
import pegbed.plan.Plan;
import pegbed.storage.disk.AtomicFileWriter;

/** What is known of one peg, as a file for other programs. */
public final class Export {
    /** Nodes for each of the 25 cm grid along each side in a GeoTIFF: 5 cm. */
    private static final int FINE = 5;

    /** Kinds of files, by the end of their names. */
    public enum Kind {
        GEOJSON(".geojson"),
        GEOPACKAGE(".gpkg"),
        GEOTIFF(".tif"),
        CSV(".csv");

        private final String ending;

        Kind(String ending) {
            this.ending = ending;
        }

        public String ending() {
            return ending;
        }

        /**
         * The kind that a file's name asks for.
         *
         * @throws InputException if it asks for none
         */
        public static Kind of(Path file) throws InputException {
            String name = AtomicFileWriter.name(file).toLowerCase(Locale.ROOT);
            for (Kind kind : values()) {
                if (name.endsWith(kind.ending) || (kind == GEOTIFF && name.endsWith(".tiff"))) {
                    return kind;
                }
            }
            throw new InputException(AtomicFileWriter.name(file) + " must end in .geojson, .gpkg, .tif or .csv.");
        }
    }

    private final Kind kind;
    private final boolean grid;
    private final CompletableFuture<Georeference> reference;
    private final CompletableFuture<Optional<UtmZone>> zone;

    private Export(
            Kind kind,
            boolean grid,
            CompletableFuture<Georeference> reference,
            CompletableFuture<Optional<UtmZone>> zone) {
        this.kind = kind;
        this.grid = grid;
        this.reference = reference;
        this.zone = zone;
    }

    /**
     * Gets an export of a peg ready, while its bottom is still being fitted: what knows of projections takes long to
     * load.
     *
     * @param kind of the file
     * @param grid whether a CSV file has the grid, else the readings
     */
    public static Export of(Peg peg, Kind kind, boolean grid) {
        Optional<Position> position = peg.position();
        CompletableFuture<Georeference> reference = started(() -> Georeference.of(position));
        CompletableFuture<Optional<UtmZone>> zone = kind == Kind.GEOPACKAGE || kind == Kind.GEOTIFF
                ? started(() -> zone(position))
                : CompletableFuture.completedFuture(Optional.empty());
        return new Export(kind, grid, reference, zone);
    }

    private static Optional<UtmZone> zone(Optional<Position> position) throws InputException {
        return position.isPresent()
                ? Optional.of(UtmZone.of(
                        position.get().latitudeDegrees(), position.get().longitudeDegrees()))
                : Optional.empty();
    }

    private interface Work<T> {
        T done() throws InputException;
    }

    private static <T> CompletableFuture<T> started(Work<T> work) {
        return CompletableFuture.supplyAsync(() -> {
            try {
                return work.done();
            } catch (InputException e) {
                throw new CompletionException(e);
            }
        });
    }

    private static <T> T ended(CompletableFuture<T> work) throws InputException {
        try {
            return work.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof InputException refused) {
                throw refused;
            }
            throw e;
        }
    }

    /** Whether the peg has no position, so that the file has the coordinates of its own plane. */
    public boolean isLocal() throws InputException {
        return ended(reference).isLocal();
    }

    /**
     * The bytes of the file.
     *
     * @throws InputException if the position lies at a pole, or the kind of file can't have this peg
     * @throws IOException if the temporary file of a GeoPackage can't be written
     */
    public byte[] bytes(Plan plan, Monitor monitor) throws InputException, IOException {
        Georeference frame = ended(reference);
        return switch (kind) {
            case GEOJSON -> GeoJsonFile.bytes(PegLayers.of(plan), frame);
            case CSV ->
                (grid
                                ? CsvFiles.grid(plan.findings().map(), frame)
                                : CsvFiles.readings(plan.findings().map(), frame))
                        .getBytes(StandardCharsets.UTF_8);
            case GEOTIFF -> tiff(plan, frame, monitor);
            case GEOPACKAGE -> {
                List<Layer> layers = PegLayers.of(plan);
                monitor.check();
                yield GeoPackageFile.bytes(
                        ended(zone),
                        into -> into.add(
                                layers,
                                frame,
                                PegLayers.visited(plan.findings().map().peg())));
            }
        };
    }

    private byte[] tiff(Plan plan, Georeference frame, Monitor monitor) throws InputException {
        var map = plan.findings().map();
        Raster raster = PegRaster.of(map, FINE);
        RasterPlace place = PegRaster.place(PegRaster.frame(map, FINE), frame, ended(zone));
        String title = map.peg().name().title();
        return GeoTiffFile.bytes(raster, place, PegRaster.description(title, place.citation()), monitor);
    }

    /** The EPSG code of the coordinates of a GeoPackage or GeoTIFF; empty without a position. */
    public OptionalInt epsgCode() throws InputException {
        Optional<UtmZone> utm = ended(zone);
        return utm.isPresent() ? OptionalInt.of(utm.get().epsgCode()) : OptionalInt.empty();
    }
}
