package sternwright.app.desk.derived;

import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;

/** What an open yard says of its season, read once as long as it stays as it is. */
public final class SeasonOfYard {
    private final OfYard<SeasonFiles> files;

    /**
     * Ready to be asked; nothing is read yet.
     *
     * @param yard the yard
     */
    public SeasonOfYard(OpenYard yard) {
        files = new OfYard<>(yard, y -> SeasonFolder.read(y.shelf(""), y.today()));
    }

    /**
     * What it says.
     *
     * @return resources, tides, dates, promises, the published plan
     * @throws BadInput with every problem of every text
     */
    public SeasonFiles files() {
        return files.get();
    }
}
