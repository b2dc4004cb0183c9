package pegbed.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import pegbed.cli.output.Output;
import pegbed.model.InputException;
import pegbed.page.PhonePage;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.WholeFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed phone}: Pegbed itself as a page for a phone's browser. */
@Command(
        name = "phone",
        mixinStandardHelpOptions = true,
        description = "Writes Pegbed as a page for a phone: a folder for web space of your own, or one HTML file.")
final class PhoneCommand implements Callable<Integer> {
    private static final String FOLDER_WORDS =
            "Put the whole folder on web space of your own that is reached by https, open its address on the phone once,"
                    + " and add it to the home screen: from then on it needs no network.";

    private static final String FILE_WORDS =
            "Send the file to the phone and open it there in Chrome or Firefox. Where a"
                    + " phone opens no such file, or forgets its pegs, write a folder and put it on web space of your own.";

    @Parameters(paramLabel = "PEG", arity = "0..1", description = "A peg file that the page opens at its first start.")
    private Path path;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FOLDER|FILE.html",
            description = "A folder, made if there is none, or a file whose name ends in .html.")
    private Path out;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        if (out.toString().isBlank()) {
            throw new InputException("--out is empty; give a folder, or the name of a file that ends in .html.");
        }
        PhonePage page = PhonePage.built();
        Optional<PhonePage.PegInside> peg = inside();
        boolean isFile = out.toString().toLowerCase(Locale.ROOT).endsWith(".html");
        if (isFile) {
            WholeFile.write(out, page.oneFile(peg));
        } else {
            write(page.files(peg));
        }
        if (output.json()) {
            ObjectNode node = output.object().put("phone", out.toString());
            output.print(node);
        } else {
            output.out().println("Wrote " + out + ". " + (isFile ? FILE_WORDS : FOLDER_WORDS));
        }
        return 0;
    }

    private void write(SortedMap<String, byte[]> files) throws InputException {
        try {
            Files.createDirectories(out);
        } catch (FileAlreadyExistsException e) {
            throw new InputException(out + " is a file; give a folder, or the name of a file that ends in .html.", e);
        } catch (IOException e) {
            throw new InputException("The folder " + out + " could not be made; give one that you may write to.", e);
        }
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            WholeFile.write(out.resolve(file.getKey()), file.getValue());
        }
    }

    /** The peg file as it is: the page reads what is damaged as far as it goes, and says so. */
    private Optional<PhonePage.PegInside> inside() throws InputException {
        if (path == null) {
            return Optional.empty();
        }
        PegArgument.look(path, output.err());
        try {
            String text = Files.readString(path, StandardCharsets.UTF_8);
            return Optional.of(new PhonePage.PegInside(AtomicFileWriter.name(path), text));
        } catch (IOException e) {
            throw new InputException(AtomicFileWriter.name(path) + " could not be read as text in UTF-8.", e);
        }
    }
}
