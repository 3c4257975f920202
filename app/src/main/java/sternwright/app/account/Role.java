package sternwright.app.account;

/** What a person of the yard may do in the pages. */
public enum Role {
    /** Everything, people and rates among it. */
    MANAGER,
    /** Boats, visits, estimates, season. */
    OFFICE,
    /** Job cards, hours, readings; sees everything else. */
    TECHNICIAN,
    /** Reads and inspects; changes nothing. */
    SURVEYOR;

    /**
     * The authority Spring Security knows it by.
     *
     * @return such as {@code ROLE_MANAGER}
     */
    public String authority() {
        return "ROLE_" + name();
    }
}
