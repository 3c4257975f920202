package sternwright.protection.report;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

    static List<String> of(List<PartLine> parts, AnodeLife life, @Nullable Diagnosis diagnosis) {
        List<String> words = new ArrayList<>();
        words.add(metal(parts));
        words.add(anodes(life));
        words.addAll(life.findings());
        if (diagnosis != null) {
            words.add("The readings taken: " + diagnosis.summary());
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
            s.append(list(under))
                    .append(under.size() == 1 ? " is" : " are")
                    .append(" not fully protected at the berth");
        }
        if (!over.isEmpty()) {
            s.append(under.isEmpty() ? "" : ", and ")
                    .append(list(over))
                    .append(over.size() == 1 ? " gets" : " get")
                    .append(" more protection than is good for the metal");
        }
        return s.append(". What that means and what to do stands below.").toString();
    }

    private static List<String> named(List<PartLine> parts, Protection state) {
        return parts.stream()
                .filter(p -> p.atBerth().state() == state && p.atBerth().severity() != Severity.FINE)
                .map(p -> "the " + p.body().name()
                        + (several(parts) ? " (" + p.body().id() + ")" : ""))
                .distinct()
                .toList();
    }

    private static boolean several(List<PartLine> parts) {
        return parts.stream()
                        .map(p -> p.body().id().replaceFirst("/.*", ""))
                        .distinct()
                        .count()
                > 1;
    }

    private static String list(List<String> names) {
        return names.size() == 1
                ? names.get(0)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    private static String anodes(AnodeLife life) {
        if (life.forecasts().isEmpty()) {
            return "The register knows no anode on this boat. Bare metal under water without one wastes.";
        }
        return ReportWriter.first(life)
                .map(OwnerWords::renewal)
                .orElse("None of the anodes will be half gone within five years.");
    }

    private static String renewal(AnodeForecast f) {
        LocalDate half = Objects.requireNonNull(f.halfGone());
        if (!half.isAfter(f.from())) {
            return "The " + f.body().name() + " is half gone or more and is to be renewed now.";
        }
        LocalDate early = f.early80() == null ? half : f.early80();
        LocalDate late = f.late80();
        return "The first anode to renew is the " + f.body().name() + ", about " + month(half) + " (between "
                + month(early) + " and "
                + (late == null ? "later than five years ahead" : month(late))
                + "); it is renewed when half gone, and it is "
                + (f.how().startsWith("measured")
                        ? "foretold from its own weight."
                        : "foretold by calculation until it has been weighed.");
    }

    private static String month(LocalDate day) {
        return Month.from(day).getDisplayName(TextStyle.FULL, Locale.UK) + " " + day.getYear();
    }
}
