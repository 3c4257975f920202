package sternwright.app;

/** Entry of the one program. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and ends the process with its status.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.out.println("sternwright");
    }
}
