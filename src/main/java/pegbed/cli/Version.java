package pegbed.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The program's version, which the build writes into a resource; nothing is read before it is asked for. */
final class Version implements IVersionProvider {
    private static final String RESOURCE = "/pegbed-version.properties";

    @Override
    public String[] getVersion() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IOException(RESOURCE + " is missing; it is made by the build.");
            }
            properties.load(in);
        }
        return new String[] {"pegbed " + properties.getProperty("version")};
    }
}
