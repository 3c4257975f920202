package sternwright.season.dated.make;

import sternwright.season.dated.OwnerDate;

/** Works that cannot begin before a part is here. */
final class PartsWaitedFor {
    private PartsWaitedFor() {}

    /** Earliest quarter for a group of works of a boat. */
    static int earliest(OperationMaker make, String boatId, WorkGroup group) {
        return make.request
                .dates(boatId, OwnerDate.Kind.PART_IN)
                .filter(d -> group.has(d.work()))
                .mapToInt(d -> make.quarterFrom(d.date()))
                .max()
                .orElse(0);
    }
}
