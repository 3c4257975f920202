package sternwright.app.desk.season.run;

import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;

/** A program that takes runs of the season from a shared store until it is killed. */
public final class OneNode {
    /** Quick, so that a death is noticed within the patience of a test. */
    static final SeasonJobs.Pace QUICK =
            new SeasonJobs.Pace(Duration.ofMillis(200), Duration.ofMillis(500), Duration.ofMillis(1500));

    private OneNode() {}

    /** Arguments: url, user and password of the database. */
    public static void main(String[] args) throws Exception {
        Store store = Store.open(new StoreAddress(args[0], args[1], args.length > 2 ? args[2] : ""), Clock.systemUTC());
        new SeasonJobs(store, QUICK, System::nanoTime).start();
        TimeUnit.MINUTES.sleep(5);
    }
}
