package org.berrywatt.server.platform;

import jakarta.servlet.http.HttpServletRequest;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** The addresses under which a phone on the same network can open this server. */
@Component
public class Addresses {

    private static final Set<String> LOCAL_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");

    /** Each of these settings makes the server speak TLS. */
    private static final List<String> TLS =
            List.of("server.ssl.certificate", "server.ssl.bundle", "server.ssl.key-store");

    private final BerrywattSettings settings;
    private final Environment environment;

    Addresses(BerrywattSettings settings, Environment environment) {
        this.settings = settings;
        this.environment = environment;
    }

    /** Base addresses without a slash at the end, the best one first; never empty. */
    public List<String> baseUrls() {
        var fixed = settings.publicAddress();
        if (fixed != null) {
            return List.of(fixed.replaceFirst("/+$", ""));
        }
        var found = networkAddresses().map(this::url).toList();
        return found.isEmpty() ? List.of(local()) : found;
    }

    /**
     * The base address to hand on to a phone: the one that this browser uses itself, unless it sits at the server's own
     * computer, whose {@code localhost} leads nowhere else.
     */
    public String reachableFrom(HttpServletRequest request) {
        boolean elsewhere = settings.publicAddress() == null && !LOCAL_NAMES.contains(request.getServerName());
        return elsewhere
                ? ServletUriComponentsBuilder.fromContextPath(request).toUriString()
                : baseUrls().get(0);
    }

    /** The address on this computer itself. */
    String local() {
        return url("localhost");
    }

    private String url(String host) {
        var scheme = TLS.stream().anyMatch(environment::containsProperty) ? "https" : "http";
        return scheme + "://" + host + ":" + environment.getProperty("local.server.port", "8080");
    }

    private static Stream<String> networkAddresses() {
        try {
            return NetworkInterface.networkInterfaces()
                    .filter(Addresses::isOutward)
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(Inet4Address.class::isInstance)
                    .filter(address -> !address.isLinkLocalAddress())
                    .map(InetAddress::getHostAddress)
                    .sorted();
        } catch (SocketException none) {
            return Stream.empty();
        }
    }

    /** Bridges and pairs that containers make lead nowhere a phone could come from. */
    private static boolean isOutward(NetworkInterface card) {
        try {
            return card.isUp()
                    && !card.isLoopback()
                    && !card.isPointToPoint()
                    && !card.getName().matches("(docker|br-|veth|virbr).*");
        } catch (SocketException gone) {
            return false;
        }
    }
}
