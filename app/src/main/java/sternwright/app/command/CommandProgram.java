package sternwright.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import sternwright.app.command.demo.DemoCommand;
import sternwright.app.command.due.DueCommand;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.entry.Misread;
import sternwright.app.command.entry.Pages;
import sternwright.app.command.entry.Sternwright;
import sternwright.app.command.entry.TradeWords;
import sternwright.app.command.keeping.BackupCommand;
import sternwright.app.command.keeping.RestoreCommand;
import sternwright.app.command.keeping.VerifyCommand;
import sternwright.app.command.papers.CardCommand;
import sternwright.app.command.papers.EstimateCommand;
import sternwright.app.command.protect.CircuitCommand;
import sternwright.app.command.protect.ProtectCommand;
import sternwright.app.command.recording.HoursCommand;
import sternwright.app.command.recording.RecordCommand;
import sternwright.app.command.recording.StrikeCommand;
import sternwright.app.command.register.BoatsCommand;
import sternwright.app.command.register.CheckCommand;
import sternwright.app.command.register.NewCommand;
import sternwright.app.command.season.SeasonCommand;
import sternwright.app.command.serve.ServeCommand;
import sternwright.app.command.tables.ExportCommand;
import sternwright.app.command.tables.ImportCommand;
import sternwright.app.command.visits.VisitsCommand;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;

/** Runs one command line and answers with its exit status; never shows a stack trace. */
public final class CommandProgram {
    /** More problems than this are counted, not listed: nobody mends them by hand. */
    private static final int LISTED = 500;

    private final LocalDate clock;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Pages pages;

    /**
     * A program without pages that has not run yet.
     *
     * @param clock the day the clock shows
     * @param out where answers go
     * @param err where complaints go
     */
    public CommandProgram(LocalDate clock, PrintWriter out, PrintWriter err) {
        this(clock, out, err, Pages.NONE);
    }

    /**
     * A program that has not run yet.
     *
     * @param clock the day the clock shows
     * @param out where answers go
     * @param err where complaints go
     * @param pages opens the pages
     */
    public CommandProgram(LocalDate clock, PrintWriter out, PrintWriter err, Pages pages) {
        this.clock = clock;
        this.out = out;
        this.err = err;
        this.pages = pages;
    }

    /** The commands by their first word; only the one asked for is made, which saves time at the start. */
    private Map<String, Supplier<Object>> commands() {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("due", DueCommand::new);
        commands.put("visits", VisitsCommand::new);
        commands.put("protect", ProtectCommand::new);
        commands.put("circuit", CircuitCommand::new);
        commands.put("card", CardCommand::new);
        commands.put("estimate", EstimateCommand::new);
        commands.put("season", SeasonCommand::new);
        commands.put("boats", BoatsCommand::new);
        commands.put("check", CheckCommand::new);
        commands.put("demo", () -> new DemoCommand(pages));
        commands.put("serve", () -> new ServeCommand(pages));
        commands.put("new", NewCommand::new);
        commands.put("record", RecordCommand::new);
        commands.put("strike", StrikeCommand::new);
        commands.put("hours", HoursCommand::new);
        commands.put("import", ImportCommand::new);
        commands.put("export", ExportCommand::new);
        commands.put("backup", BackupCommand::new);
        commands.put("restore", RestoreCommand::new);
        commands.put("verify", VerifyCommand::new);
        return commands;
    }

    /**
     * Runs one command.
     *
     * @param args the command line
     * @return the exit status
     */
    public int run(String... args) {
        Sternwright program = new Sternwright(clock);
        CommandLine line = new CommandLine(program);
        Map<String, Supplier<Object>> commands = commands();
        String asked = first(args, commands);
        commands.forEach((name, make) -> {
            if (asked.isEmpty() || asked.equals(name)) {
                line.addSubcommand(name, make.get());
            }
        });
        TradeWords.teach(line);
        line.setOut(out);
        line.setErr(err);
        line.setExecutionExceptionHandler((e, at, parsed) -> told(e, at));
        line.setParameterExceptionHandler(this::told);
        int status = execute(line, args);
        program.close();
        out.flush();
        err.flush();
        return status;
    }

    /** The command asked for: the first word that is neither an option nor the value of one. */
    private static String first(String[] args, Map<String, Supplier<Object>> commands) {
        for (int i = 0; i < args.length; i++) {
            if (args[i].equals("--yard") || args[i].equals("--date")) {
                i++;
            } else if (!args[i].startsWith("-")) {
                return commands.containsKey(args[i]) ? args[i] : "";
            }
        }
        return "";
    }

    /** What the machine cannot do at all, such as run out of memory, is told like everything else. */
    private int execute(CommandLine line, String... args) {
        try {
            return line.execute(args);
        } catch (Error e) {
            err.println("The machine could not: " + e);
            return ExitStatus.COULD_NOT;
        }
    }

    private int told(CommandLine.ParameterException e, String[] args) {
        Misread.words(e).forEach(err::println);
        err.println("\"" + e.getCommandLine().getCommandSpec().qualifiedName() + " --help\" says how it is used.");
        return ExitStatus.BAD_INPUT;
    }

    private int told(Exception e, CommandLine at) {
        if (e instanceof BadInput bad) {
            bad.problems().stream().limit(LISTED).map(Problem::text).forEach(err::println);
            int listed = bad.problems().size();
            if (listed > LISTED) {
                err.println("... and " + (listed - LISTED) + " more.");
            }
            int count = bad.count();
            boolean writes = at.getCommandSpec().userObject() instanceof Deed deed && deed.writes();
            err.println((count == 1 ? "One problem" : count + " problems") + (writes ? "; nothing was written." : "."));
            return ExitStatus.BAD_INPUT;
        }
        if (e instanceof IOException || e instanceof UncheckedIOException) {
            err.println("The disk refused: " + e.getMessage());
        } else {
            err.println("The program made a mistake and stopped: " + e);
            err.println("Nothing was half written. Please report it with the command you gave.");
        }
        return ExitStatus.COULD_NOT;
    }
}
