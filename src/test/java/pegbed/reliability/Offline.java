package pegbed.reliability;

import java.io.IOException;
import java.io.PrintStream;
import java.net.ProtocolFamily;
import java.net.Proxy;
import java.net.ProxySelector;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketAddress;
import java.net.SocketImpl;
import java.net.URI;
import java.nio.channels.DatagramChannel;
import java.nio.channels.Pipe;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.channels.spi.AbstractSelector;
import java.nio.channels.spi.SelectorProvider;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import pegbed.cli.Cli;
import pegbed.session.Answer;
import pegbed.session.Session;

/**
 * The main commands and a window's work without its views, in a process in which every way to the network is barred.
 * Says {@code tried} for each attempt on one, with where it came from, and each command with its status; first makes an
 * attempt of its own, which must be noticed. Started with itself as the provider of channels.
 */
public final class Offline {
    private Offline() {}

    /**
     * Works without a network.
     *
     * @param args a folder to work in, a peg file in it
     */
    @SuppressWarnings("deprecation") // Nothing else bars a whole process from the network.
    public static void main(String[] args) throws IOException {
        Socket.setSocketImplFactory(Offline::socket);
        ServerSocket.setSocketFactory(Offline::socket);
        ProxySelector.setDefault(new NoProxies());
        System.out.println("bars: " + attempts());
        Path folder = Path.of(args[0]);
        String peg = args[1];
        for (List<String> command : List.of(
                List.of("add", peg, "11 -20 4'6 silt", "s6 5R 1.2m firm"),
                List.of("lines", peg),
                List.of("lines", peg, "--json", "--target", "2'6"),
                List.of("next", peg, "--count", "2"),
                List.of("level", peg),
                List.of("check", peg),
                List.of("shelf", folder.toString()),
                List.of("map", peg, "--out", folder.resolve("map.png").toString()),
                List.of("map", peg, "--out", folder.resolve("map.svg").toString()),
                List.of("card", peg, "--out", folder.resolve("card.pdf").toString()),
                List.of("card", peg, "--out", folder.resolve("card.html").toString()))) {
            int status = Cli.run(
                    command.toArray(String[]::new),
                    new PrintStream(PrintStream.nullOutputStream()),
                    System.out,
                    folder.resolve("own"));
            System.out.println(command.get(0) + ": " + status);
        }
        Session session = new Session(folder.resolve("journals"), Session.Executors.AT_ONCE, InstantSource.system());
        session.open(Path.of(peg), System.out::println);
        System.out.println("session: " + (session.answer() instanceof Answer.Ready));
        session.close(false, () -> {});
    }

    /** How many of our own attempts came through; none should. */
    @SuppressWarnings("AddressSelection") // Every way out is tried.
    private static int attempts() {
        int through = 0;
        try (Socket socket = new Socket("127.0.0.1", 9)) {
            through++;
        } catch (IOException | IllegalStateException barred) {
            // As it should be.
        }
        try (SocketChannel channel = SocketChannel.open()) {
            through++;
        } catch (IOException barred) {
            // As it should be.
        }
        return through;
    }

    private static SocketImpl socket() {
        tried("a socket");
        throw new IllegalStateException("There is no network here.");
    }

    private static void tried(String what) {
        System.out.println("tried " + what + " "
                + StackWalker.getInstance()
                        .walk(frames ->
                                frames.skip(2).limit(8).map(Object::toString).toList()));
    }

    private static IOException barred(String what) {
        tried(what);
        return new IOException("There is no network here.");
    }

    /** Notes who asks for a way out. */
    private static final class NoProxies extends ProxySelector {
        @Override
        public List<Proxy> select(URI uri) {
            tried("a proxy for " + uri);
            return List.of(Proxy.NO_PROXY);
        }

        @Override
        public void connectFailed(URI uri, SocketAddress address, IOException e) {
            tried("a connection to " + uri);
        }
    }

    /** Gives no channel to anywhere. */
    public static final class NoChannels extends SelectorProvider {
        @Override
        public DatagramChannel openDatagramChannel() throws IOException {
            throw barred("a datagram channel");
        }

        @Override
        public DatagramChannel openDatagramChannel(ProtocolFamily family) throws IOException {
            throw barred("a datagram channel");
        }

        @Override
        public Pipe openPipe() throws IOException {
            throw barred("a pipe");
        }

        @Override
        public AbstractSelector openSelector() throws IOException {
            throw barred("a selector");
        }

        @Override
        public ServerSocketChannel openServerSocketChannel() throws IOException {
            throw barred("a server channel");
        }

        @Override
        public SocketChannel openSocketChannel() throws IOException {
            throw barred("a socket channel");
        }
    }
}
