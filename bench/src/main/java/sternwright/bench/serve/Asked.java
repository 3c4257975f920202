package sternwright.bench.serve;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is to be measured.
 *
 * @param boats boats of the yard, where one is made
 * @param rate requests a second
 * @param seconds seconds a page
 * @param yard a yard to be kept for the next time, made if it is not there; null for one that is thrown away
 * @param pages what the addresses begin with; empty for all
 * @param season whether a season is planned and published first
 */
record Asked(int boats, int rate, int seconds, @Nullable Path yard, List<String> pages, boolean season) {
    private static final List<String> NAMES = List.of("boats", "rate", "seconds", "yard", "pages", "season");

    /** Reads {@code name=value}. */
    static Asked of(String[] args) {
        Map<String, String> said = Arrays.stream(args)
                .map(a -> a.split("=", 2))
                .collect(Collectors.toMap(a -> a[0], a -> a.length > 1 ? a[1] : ""));
        said.keySet().stream().filter(n -> !NAMES.contains(n)).forEach(n -> {
            throw new IllegalArgumentException(n + " is none of " + NAMES + ", each followed by = and a value");
        });
        String yard = said.getOrDefault("yard", "");
        String pages = said.getOrDefault("pages", "");
        return new Asked(
                Integer.parseInt(said.getOrDefault("boats", "3000")),
                Integer.parseInt(said.getOrDefault("rate", "50")),
                Integer.parseInt(said.getOrDefault("seconds", "4")),
                yard.isEmpty() ? null : Path.of(yard).toAbsolutePath(),
                pages.isEmpty() ? List.of() : List.of(pages.split(",")),
                said.getOrDefault("season", "no").equals("yes"));
    }

    /** Whether a page is to be measured. An address that ends in a dollar is meant as a whole. */
    boolean wants(String path) {
        return pages.isEmpty()
                || pages.stream()
                        .anyMatch(p ->
                                p.endsWith("$") ? path.equals(p.substring(0, p.length() - 1)) : path.startsWith(p));
    }
}
