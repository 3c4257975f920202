package sternwright.app.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(name = "check")
final class CheckCommand implements Callable<Integer> {
    @Override
    public Integer call() {
        return 0;
    }
}
