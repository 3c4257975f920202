package sternwright.app.certificate;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.util.IPAddress;

/**
 * What a root may vouch for: addresses that no public site has, and names of the yard's own network.
 *
 * @param names names, each with everything below it, lower case
 */
record Reach(Set<String> names) {
    /**
     * Private and loopback ranges: RFC 1918, RFC 4193, RFC 6598 (shared address space, used by private overlay networks), and
     * loopback by RFC 1122 and RFC 4291.
     */
    private static final List<String> RANGES = List.of(
            "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "100.64.0.0/10", "127.0.0.0/8", "fc00::/7", "::1/128");

    /** Names that lead nowhere outside: RFC 6762 (local), RFC 8375 (home.arpa), RFC 6761 (localhost); lan and internal by common practice. */
    private static final List<String> INNER = List.of("localhost", "local", "lan", "internal", "home.arpa");

    /** Copies the set. */
    Reach {
        names = Set.copyOf(names);
    }

    /** The inner names and those given, addresses left out. */
    static Reach of(Collection<String> given) {
        Set<String> names = new LinkedHashSet<>(INNER);
        given.stream()
                .map(n -> n.toLowerCase(Locale.ROOT))
                .filter(n -> !isAddress(n))
                .forEach(names::add);
        return new Reach(names);
    }

    /** The reach that a root states. */
    static Reach of(NameConstraints constraints) {
        Set<String> names = new LinkedHashSet<>();
        for (GeneralSubtree tree : constraints.getPermittedSubtrees()) {
            GeneralName name = tree.getBase();
            if (name.getTagNo() == GeneralName.dNSName) {
                names.add(name.getName().toString().toLowerCase(Locale.ROOT));
            }
        }
        return new Reach(names);
    }

    /** As a root states it. */
    NameConstraints stated() {
        List<GeneralName> all = new java.util.ArrayList<>();
        names.stream().sorted().forEach(n -> all.add(new GeneralName(GeneralName.dNSName, n)));
        RANGES.forEach(r -> all.add(new GeneralName(GeneralName.iPAddress, r)));
        GeneralSubtree[] trees = all.stream().map(GeneralSubtree::new).toArray(GeneralSubtree[]::new);
        return new NameConstraints(trees, null);
    }

    /** Whether a name or address lies within it. */
    boolean holds(String name) {
        String bare = bare(name);
        if (isAddress(bare)) {
            return RANGES.stream().anyMatch(r -> inside(bare, r));
        }
        return names.stream().anyMatch(n -> bare.equals(n) || bare.endsWith("." + n));
    }

    /** An address without the brackets that an IPv6 one has in a web address; lower case. */
    static String bare(String name) {
        return name.replaceAll("[\\[\\]]", "").toLowerCase(Locale.ROOT);
    }

    static boolean isAddress(String name) {
        return IPAddress.isValid(bare(name));
    }

    private static boolean inside(String address, String range) {
        int slash = range.indexOf('/');
        byte[] one = bytes(address);
        byte[] other = bytes(range.substring(0, slash));
        int bits = Integer.parseInt(range.substring(slash + 1));
        if (one.length != other.length) {
            return false;
        }
        for (int i = 0; i < bits; i++) {
            int mask = 0x80 >> (i % 8);
            if ((one[i / 8] & mask) != (other[i / 8] & mask)) {
                return false;
            }
        }
        return true;
    }

    /** Only for what is an address already, so that no name is looked up. */
    private static byte[] bytes(String address) {
        try {
            return InetAddress.getByName(address).getAddress();
        } catch (UnknownHostException e) {
            throw new IllegalArgumentException("not an address: " + address, e);
        }
    }
}
