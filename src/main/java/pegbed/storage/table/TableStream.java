package pegbed.storage.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import pegbed.model.InputException;
import pegbed.storage.disk.AtomicFileWriter;

/** Reads a table as {@link Table} does, but row by row, so that one of millions of rows is never held whole. */
final class TableStream {
    /** As many letters are looked at to see what parts the values. */
    private static final int FIRST_LETTERS = 1 << 16;

    private TableStream() {}

    /** What is done with a table. */
    interface Use {
        /** Is given the table's header, and answers what is done with its rows. */
        Rows columns(Table header) throws InputException;
    }

    /** What is done with a row. */
    interface Rows {
        void row(Table.Row row) throws InputException;
    }

    /**
     * Reads a table from a file.
     *
     * @param example a right header, for sentences
     * @throws InputException with file, line and column of the first thing that is wrong
     */
    static void read(Path path, String example, Use use) throws InputException {
        String name = AtomicFileWriter.name(path);
        Table.reading(path, 1, () -> {
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                // A pipe may never begin and a device never end.
                throw new FileSystemException(path.toString(), null, "it is not a plain file");
            }
            try (InputStream bytes = Files.newInputStream(path)) {
                rows(bytes, name, example, use);
            }
            return name;
        });
    }

    /**
     * Reads a table from its bytes, to their end.
     *
     * @param name of the table, for sentences
     * @param example a right header, for sentences
     * @throws InputException with name, line and column of the first thing that is wrong
     */
    static void read(InputStream bytes, String name, String example, Use use) throws InputException {
        try {
            rows(bytes, name, example, use);
        } catch (IOException e) {
            throw Table.unreadable(name, e);
        }
    }

    private static void rows(InputStream bytes, String name, String example, Use use)
            throws IOException, InputException {
        BufferedReader reader =
                new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8.newDecoder()), FIRST_LETTERS);
        long line = 1;
        try (CSVParser parser = CSVParser.parse(reader, Table.format(beginning(reader)))) {
            Rows rows = null;
            int columns = 0;
            for (CSVRecord each : parser) {
                List<String> cells = each.toList();
                if (!cells.stream().allMatch(String::isBlank)) {
                    if (rows == null) {
                        Table header = Table.of(name, cells, example);
                        columns = cells.size();
                        rows = use.columns(header);
                    } else {
                        rows.row(new Table.Row(line, Table.fitted(name, line, cells, columns)));
                    }
                }
                line = parser.getCurrentLineNumber() + 1;
            }
            if (rows == null) {
                throw Table.empty(name, example);
            }
        } catch (UncheckedIOException e) {
            // Of all that goes wrong while a row is read, the parser's own complaints alone are of the table's text.
            if (e.getCause() instanceof CSVException) {
                throw Table.openQuote(name, line, e);
            }
            throw e.getCause();
        }
    }

    /** The first letters, which are not taken from the reader; a mark of the byte order before them is. */
    private static String beginning(BufferedReader reader) throws IOException {
        reader.mark(FIRST_LETTERS);
        if (reader.read() != '\uFEFF') {
            reader.reset();
        }
        char[] letters = new char[FIRST_LETTERS - 1];
        reader.mark(FIRST_LETTERS);
        int count = 0;
        for (int n = 0; n >= 0 && count < letters.length; n = reader.read(letters, count, letters.length - count)) {
            count += n;
        }
        reader.reset();
        return new String(letters, 0, count);
    }
}
