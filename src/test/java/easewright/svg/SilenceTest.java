package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A listener on this machine's own address, to which every hostile drawing's references lead, hears nothing while the
 * drawings are read, marked and written.
 */
class SilenceTest {
    private static final String PORT = "18999";

    /** All kept and made drawings that are light, with the port they name replaced by the listener's. */
    private static List<byte[]> drawings(int port) throws IOException {
        List<byte[]> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/hostile"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".svg")).toList()) {
                all.add(Files.readAllBytes(file));
            }
        }
        HostileDrawings.all().stream()
                .filter(h -> !h.heavy())
                .forEach(h -> all.add(h.bytes().get()));
        return all.stream()
                .map(bytes -> new String(bytes, StandardCharsets.ISO_8859_1)
                        .replace(PORT, Integer.toString(port))
                        .getBytes(StandardCharsets.ISO_8859_1))
                .toList();
    }

    @Test
    void nothingIsEverFetched() throws Exception {
        try (ServerSocket listener = new ServerSocket(0, 50, InetAddress.getByName("127.0.0.1"))) {
            int port = listener.getLocalPort();
            List<byte[]> drawings = drawings(port);
            long naming = drawings.stream()
                    .filter(b -> new String(b, StandardCharsets.ISO_8859_1).contains("127.0.0.1:" + port))
                    .count();
            assertThat(naming).isGreaterThan(15);
            int opened = 0;
            for (byte[] bytes : drawings) {
                try {
                    SvgFile file = SvgFile.read(bytes, "hostile.svg");
                    file.write(file.pattern().withWish("hip", 10));
                    opened++;
                } catch (SvgProblem refused) {
                    assertThat(refused.code()).isNotBlank();
                }
            }
            assertThat(opened).isGreaterThan(40);
            assertThat(heard(listener)).isFalse();
            try (Socket call = new Socket("127.0.0.1", port)) {
                assertThat(call.isConnected()).isTrue();
                assertThat(heard(listener)).as("the listener works").isTrue();
            }
        }
    }

    /** Whether anybody has called: a call waits in the system's queue until it is taken. */
    private static boolean heard(ServerSocket listener) throws IOException {
        listener.setSoTimeout(50);
        try (Socket call = listener.accept()) {
            return call.isBound();
        } catch (SocketTimeoutException nobody) {
            return false;
        }
    }
}
