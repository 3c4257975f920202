package sternwright.app.command.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import sternwright.app.files.problem.KnownNames;

/** What was typed and cannot be used, told in the words of this program: what, what was expected, the nearest known name. */
public final class Misread {
    private Misread() {}

    /**
     * Tells what is wrong with a command line.
     *
     * @param e what the reader of the command line met
     * @return one line for each thing
     */
    public static List<String> words(ParameterException e) {
        if (e instanceof UnmatchedArgumentException unmatched) {
            CommandSpec spec = e.getCommandLine().getCommandSpec();
            return unmatched.getUnmatched().stream()
                    .map(word -> unknown(word, spec))
                    .toList();
        }
        if (e instanceof MissingParameterException missing && missing.getMissing() != null) {
            boolean value = String.valueOf(e.getMessage()).contains("parameter for option");
            return missing.getMissing().stream().map(a -> missing(a, value)).toList();
        }
        ArgSpec arg = e.getArgSpec();
        if (e instanceof OverwrittenOptionException && arg != null) {
            return List.of(name(arg) + ": given twice. Keep one of the two.");
        }
        if (e.getCause() instanceof TypeConversionException wrong && arg != null) {
            return List.of(name(arg) + ": " + wrong.getMessage() + " " + name(arg) + " is: " + meaning(arg));
        }
        return List.of(String.valueOf(e.getMessage()));
    }

    private static String unknown(String word, CommandSpec spec) {
        String command = spec.qualifiedName();
        if (word.startsWith("-")) {
            String option = word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
            List<String> known = spec.options().stream()
                    .flatMap(o -> Stream.of(o.names()))
                    .filter(n -> n.startsWith("--"))
                    .toList();
            return option + ": \"" + command + "\" has no such option. " + KnownNames.advice(option, known);
        }
        if (!spec.subcommands().isEmpty()) {
            return word + ": there is no such command. "
                    + KnownNames.advice(word, spec.subcommands().keySet());
        }
        List<String> taken = new ArrayList<>();
        spec.positionalParameters().forEach(p -> taken.add(p.paramLabel()));
        return word + ": one word too many; \"" + command + "\" takes "
                + (taken.isEmpty() ? "options only." : String.join(" ", taken) + " and options.");
    }

    private static String missing(ArgSpec arg, boolean value) {
        return name(arg) + (value ? ": its value is missing; it is: " : " is missing; it is: ") + meaning(arg);
    }

    private static String name(ArgSpec arg) {
        return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
    }

    private static String meaning(ArgSpec arg) {
        return String.join(" ", arg.description());
    }
}
