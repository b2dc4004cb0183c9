package pegbed.storage.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.SoundingLog;

/** What is wrong with a log is told as what it is. */
class LogTableTest {
    /** More than is read ahead. */
    private static final String LONG = "x_m,y_m,depth_m\n" + "1,2,1.5\n".repeat(50_000);

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static InputStream failing() {
        return new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("Input/output error");
            }

            @Override
            public int read(byte[] into, int from, int length) throws IOException {
                return read();
            }
        };
    }

    private static String refusal(InputStream bytes) {
        return assertThrows(InputException.class, () -> LogTable.read(bytes, "log.csv", 2.5))
                .getMessage();
    }

    @Test
    void aLongLogIsReadToItsEnd() throws InputException {
        SoundingLog log = LogTable.read(bytes(LONG), "log.csv", 2.5).log();
        assertEquals(50_000, log.size());
        assertEquals(1.5, log.depthMetres(49_999), 1e-12);
    }

    @Test
    void aDiskThatFailsIsToldAsADiskThatFailsWhereverThatHappens() {
        for (String before : new String[] {"", "x_m,y_m,depth_m\n1,2,", LONG, LONG + "1,2,\"1"}) {
            assertEquals(
                    "log.csv could not be read: Input/output error.",
                    refusal(new SequenceInputStream(bytes(before), failing())));
        }
    }

    @Test
    void aQuoteThatIsNotClosedIsToldWithItsLine() {
        String told = refusal(bytes(LONG + "1,2,\"1\n"));
        assertTrue(told.startsWith("log.csv, line 50002: a quote (\") is not closed"), told);
        told = refusal(bytes("x_m,y_m,depth_m\n1,2,\"1\"5\n"));
        assertTrue(told.startsWith("log.csv, line 2: a quote (\") is not closed or stands inside a value"), told);
    }

    @Test
    void aLongColumnNameDoesNotMakeALongSentence() {
        String name = "1".repeat(3000) + "x";
        String told = refusal(bytes("x_m," + name + "," + name + "\n1,2,3\n"));
        assertTrue(told.startsWith("log.csv has two columns 111") && told.length() < 200, told);
    }

    @Test
    void bytesThatAreNoTextAreToldAsSuchFarDownToo() {
        InputStream latin = new ByteArrayInputStream("1,2,\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(refusal(new SequenceInputStream(bytes(LONG), latin)).startsWith("log.csv is not UTF-8 text"));
    }
}
