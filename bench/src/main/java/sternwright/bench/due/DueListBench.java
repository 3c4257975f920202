package sternwright.bench.due;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.due.BoatCase;
import sternwright.due.Due;
import sternwright.due.YardDueList;
import sternwright.history.ServiceEntry;
import sternwright.service.RuleBook;
import sternwright.service.RuleInForce;
import sternwright.yard.SeasonDates;

/**
 * The due list of 10,000 boats, and its growth to 100,000 in batches of 10,000, beside the spreadsheet's equal in the same run.
 *
 * <p>Command: {@code bench/run due [boats]}.
 */
public final class DueListBench {
    private DueListBench() {}

    /**
     * Runs the measurement.
     *
     * @param args number of boats of one batch, 10,000 if not given
     */
    public static void main(String[] args) {
        int boats = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        RuleBook rules = ManyBoats.rules(1);
        List<BoatCase> batch = ManyBoats.boats(boats, 1);
        System.out.printf("%d boats, %d parts and %d rules each%n", boats, ManyBoats.PARTS, ManyBoats.RULES);
        double before = processorSeconds();
        double cold = seconds(() -> due(batch, rules));
        double coldProcessor = processorSeconds() - before;
        before = processorSeconds();
        double warm = seconds(() -> due(batch, rules));
        double warmProcessor = processorSeconds() - before;
        double peer = seconds(() -> spreadsheet(batch, rules));
        double peerWarm = seconds(() -> spreadsheet(batch, rules));
        List<List<Due>> kept = due(batch, rules);
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        long used = (runtime.totalMemory() - runtime.freeMemory()) >> 20;
        long dues = kept.stream().mapToLong(List::size).sum();
        System.out.printf(
                "due list, first run after start  %6.2f s, %.2f processor s   (goal 2 s on 2 cores)%n",
                cold, coldProcessor);
        System.out.printf("due list, second run             %6.2f s, %.2f processor s%n", warm, warmProcessor);
        System.out.printf(
                "spreadsheet's equal, first/second %5.2f / %.2f s   ratio %.1f / %.1f%n",
                peer, peerWarm, cold / peer, warm / peerWarm);
        System.out.printf(
                "%d dues kept with all boats: %d MiB used, heap at most %d MiB%n",
                dues, used, runtime.maxMemory() >> 20);
        growth(boats, rules);
    }

    private static void growth(int boats, RuleBook rules) {
        double total = 0;
        for (int i = 1; i <= 10; i++) {
            List<BoatCase> batch = ManyBoats.boats(boats, i);
            total += seconds(() -> due(batch, rules));
            System.out.printf("%7d boats %6.2f s, %.1f µs a boat%n", i * boats, total, 1e6 * total / i / boats);
        }
    }

    private static List<List<Due>> due(List<BoatCase> boats, RuleBook rules) {
        return YardDueList.of(boats, SeasonDates.NORTHERN, rules::forPart, ManyBoats.TODAY);
    }

    /** Last date plus interval for every pair: what a sheet of formulas does. */
    private static List<LocalDate> spreadsheet(List<BoatCase> boats, RuleBook rules) {
        return boats.parallelStream()
                .flatMap(b -> sheet(b, rules).stream())
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static List<LocalDate> sheet(BoatCase b, RuleBook rules) {
        record Cell(PartRef part, String rule) {}
        Map<Cell, LocalDate> last = b.history().entries().stream()
                .collect(Collectors.toMap(
                        (ServiceEntry e) -> new Cell(e.part(), e.ruleId()),
                        ServiceEntry::date,
                        (x, y) -> x.isAfter(y) ? x : y));
        List<LocalDate> dates = new ArrayList<>();
        b.boat().installations().forEach(i -> {
            for (Part p : i.parts()) {
                for (RuleInForce r : rules.forPart(b.boat(), i, p)) {
                    LocalDate date = last.get(
                            new Cell(new PartRef(i.id(), p.id()), r.rule().id()));
                    int months = Objects.requireNonNullElse(r.rule().interval().months(), 12);
                    dates.add(date == null ? ManyBoats.TODAY : date.plusMonths(months));
                }
            }
        });
        return dates;
    }

    /** Of all threads, the compiler's and the collector's too: what the run costs however busy the machine is. */
    private static double processorSeconds() {
        return ProcessHandle.current()
                        .info()
                        .totalCpuDuration()
                        .orElse(Duration.ZERO)
                        .toNanos()
                / 1e9;
    }

    private static double seconds(Supplier<?> work) {
        long start = System.nanoTime();
        Object kept = work.get();
        double seconds = (System.nanoTime() - start) / 1e9;
        if (kept == null) {
            throw new IllegalStateException("nothing came out");
        }
        return seconds;
    }
}
