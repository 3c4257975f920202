package sternwright.protection.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Severity;
import sternwright.protection.anode.AnodeForecast;
import sternwright.protection.anode.AnodeLife;
import sternwright.protection.diagnosis.Diagnosis;
import sternwright.protection.judgement.Protection;

/** What the owner should know, without a figure that needs a meter. */
final class OwnerWords {
    private OwnerWords() {}

    static List<String> of(List<PartLine> parts, AnodeLife life, @Nullable Diagnosis diagnosis, LocalDate today) {
        List<String> words = new ArrayList<>();
        words.add(metal(parts));
        words.add(anodes(life, today));
        words.addAll(life.findings());
        if (diagnosis != null) {
            words.add("What was read and weighed: " + diagnosis.summary());
        }
        return words;
    }

    private static String metal(List<PartLine> parts) {
        List<String> under = named(parts, Protection.UNDER);
        List<String> over = named(parts, Protection.OVER);
        if (under.isEmpty() && over.isEmpty()) {
            return "By calculation all the metal under water that needs protection has it at the berth.";
        }
        StringBuilder s = new StringBuilder("By calculation ");
        if (!under.isEmpty()) {
            s.append(PlainList.of(under, false))
                    .append(under.size() == 1 ? " is" : " are")
                    .append(" not fully protected at the berth");
        }
        if (!over.isEmpty()) {
            s.append(under.isEmpty() ? "" : ", and ")
                    .append(PlainList.of(over, false))
                    .append(over.size() == 1 ? " gets" : " get")
                    .append(" more protection than is good for the metal");
        }
        return s.append(".").toString();
    }

    private static List<String> named(List<PartLine> parts, Protection state) {
        return parts.stream()
                .filter(p -> !p.body().inside())
                .filter(p -> p.atBerth().state() == state && p.atBerth().severity() != Severity.FINE)
                .map(p -> "the " + p.body().name())
                .distinct()
                .toList();
    }

    private static String anodes(AnodeLife life, LocalDate today) {
        if (life.forecasts().isEmpty()) {
            return "The register knows no anode on this boat. Bare metal under water without one wastes.";
        }
        List<AnodeForecast> due = life.forecasts().stream()
                .filter(f -> f.halfGone() != null)
                .sorted(Comparator.comparing(f -> Objects.requireNonNull(f.halfGone())))
                .toList();
        long now = due.stream()
                .filter(f -> !Objects.requireNonNull(f.halfGone()).isAfter(today))
                .count();
        if (now > 0) {
            return (now == life.forecasts().size()
                            ? "All its anodes are"
                            : now == 1 ? "One anode is" : now + " anodes are")
                    + " half gone or more and to be renewed now.";
        }
        return due.isEmpty() ? "None of the anodes will be half gone within five years." : renewal(due.get(0));
    }

    private static String renewal(AnodeForecast f) {
        LocalDate half = Objects.requireNonNull(f.halfGone());
        LocalDate early = f.early80() == null ? half : f.early80();
        LocalDate late = f.late80();
        return "The first anode to renew is the " + f.body().name() + ", about " + PlainList.month(half) + " (between "
                + PlainList.month(early) + " and "
                + (late == null ? "later than five years ahead" : PlainList.month(late))
                + "); it is renewed when half gone, and it is "
                + (f.how().startsWith("measured")
                        ? "foretold from its own weight."
                        : "foretold by calculation until it has been weighed.");
    }
}
