package pegbed.ui.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import pegbed.exchange.Export;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.plan.Plan;
import pegbed.session.BackgroundTask;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.ProgramLog;
import pegbed.storage.disk.WholeFile;
import pegbed.ui.controls.Texts;

/** Exports the peg as it stands, aside; what was asked for last is what is written. */
public final class ExportViewModel {
    private final BackgroundTask task;
    private final Consumer<String> news;

    /**
     * @param worker does the work
     * @param owner runs what belongs to the owner's thread
     * @param log keeps errors that nobody expected
     * @param news gets one sentence about each export
     */
    public ExportViewModel(Executor worker, Executor owner, ProgramLog log, Consumer<String> news) {
        task = new BackgroundTask("The peg could not be exported", worker, owner, log);
        this.news = news;
    }

    /** A name for the file: the peg's. */
    public static String suggestedName(Peg peg) {
        return Texts.fileName(peg.name().title()) + Export.Kind.GEOPACKAGE.ending();
    }

    /** Writes the kind of file that its name asks for. */
    public void export(Plan plan, Path path) {
        news.accept("Exporting " + AtomicFileWriter.name(path) + " …");
        task.latest(
                monitor -> {
                    Export export = Export.of(plan.findings().map().peg(), Export.Kind.of(path), false);
                    try {
                        WholeFile.write(path, export.bytes(plan, monitor));
                    } catch (IOException e) {
                        throw new InputException(
                                AtomicFileWriter.name(path) + " could not be made: " + AtomicFileWriter.reason(e) + ".",
                                e);
                    }
                    return "Exported " + AtomicFileWriter.name(path) + "."
                            + (export.isLocal()
                                    ? " The peg has no position, so that the file has the coordinates of its own plane;"
                                            + " give it one under Place."
                                    : "");
                },
                new BackgroundTask.Outcome<String>(news, news));
    }
}
