package sternwright.app.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(name = "boats")
final class BoatsCommand implements Callable<Integer> {
    @Override
    public Integer call() {
        return 0;
    }
}
