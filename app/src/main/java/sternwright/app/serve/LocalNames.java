package sternwright.app.serve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.UnknownHostException;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Names and addresses by which this machine is called. */
final class LocalNames {
    private LocalNames() {}

    /** All of them, lower case, and those given. */
    static Set<String> all(Collection<String> given) {
        Set<String> names = new LinkedHashSet<>(List.of("localhost", "127.0.0.1", "[::1]", "::1"));
        given.forEach(n -> names.add(n.toLowerCase(Locale.ROOT)));
        hostName().forEach(names::add);
        addresses().forEach(a -> names.add(text(a)));
        return names;
    }

    /** The address under which others on the network most likely reach this machine. */
    static String first() {
        return addresses().stream()
                .filter(a -> a instanceof Inet4Address)
                .map(LocalNames::text)
                .findFirst()
                .orElse("127.0.0.1");
    }

    private static Set<String> hostName() {
        try {
            String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            return Set.of(name, name.endsWith(".local") ? name : name + ".local");
        } catch (UnknownHostException e) {
            return Set.of();
        }
    }

    private static List<InetAddress> addresses() {
        try {
            return Collections.list(NetworkInterface.getNetworkInterfaces()).stream()
                    .flatMap(i -> Collections.list(i.getInetAddresses()).stream())
                    .filter(a -> !a.isLoopbackAddress() && !a.isLinkLocalAddress())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot ask for the addresses of this machine", e);
        }
    }

    private static String text(InetAddress address) {
        String plain = address.getHostAddress();
        int zone = plain.indexOf('%');
        String bare = zone < 0 ? plain : plain.substring(0, zone);
        return address instanceof Inet4Address ? bare : "[" + bare + "]";
    }
}
