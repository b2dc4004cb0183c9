package pegbed.cli.output;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Standard output that remembers whether its reader has gone, as {@code head} does once it has its lines. */
public final class StandardOutput extends PrintStream {
    private static final Path DESCRIPTOR = Path.of("/proc/self/fd/1");

    private final Watched watched;

    public StandardOutput() {
        this(new Watched(new FileOutputStream(FileDescriptor.out)));
    }

    private StandardOutput(Watched watched) {
        super(watched, false, StandardCharsets.UTF_8);
        this.watched = watched;
    }

    /** Whether something could not be written because nobody reads it any more. */
    public boolean readerHasGone() {
        return watched.readerHasGone;
    }

    private static final class Watched extends OutputStream {
        private final OutputStream out;
        private boolean readerHasGone;

        Watched(OutputStream out) {
            this.out = out;
        }

        @Override
        public void write(int octet) throws IOException {
            write(new byte[] {(byte) octet}, 0, 1);
        }

        @Override
        public void write(byte[] octets, int from, int length) throws IOException {
            try {
                out.write(octets, from, length);
            } catch (IOException e) {
                readerHasGone |= brokenPipe(e);
                throw e;
            }
        }

        @Override
        public void flush() throws IOException {
            out.flush();
        }

        /** By the system's words in English, or by what standard output is: no other write to a pipe fails. */
        private static boolean brokenPipe(IOException e) {
            if (e.getMessage() != null
                    && e.getMessage().toLowerCase(Locale.ROOT).contains("broken pipe")) {
                return true;
            }
            try {
                return Files.isSymbolicLink(DESCRIPTOR)
                        && Files.readSymbolicLink(DESCRIPTOR).toString().startsWith("pipe:");
            } catch (IOException | SecurityException unknown) {
                return false;
            }
        }
    }
}
