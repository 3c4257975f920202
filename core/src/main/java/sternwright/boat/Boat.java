package sternwright.boat;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A boat as the register knows it.
 *
 * @param id short name, unique in the yard
 * @param name as painted on the stern
 * @param owner whose it is
 * @param berthId where it lies
 * @param use id of its kind of use in the yard's file; tells the hours to expect
 * @param winter where it spends the winter
 * @param hull what hoist and hard standing need
 * @param installations one or more
 * @param bonds joints in metal and forbidden joints, over all installations
 * @param programme id of the service programme, null for the generic one
 * @param note free text
 */
public record Boat(
        String id,
        String name,
        Owner owner,
        String berthId,
        String use,
        Winter winter,
        Hull hull,
        List<Installation> installations,
        List<Bond> bonds,
        @Nullable String programme,
        @Nullable String note) {
    /** Copies the lists. */
    public Boat {
        installations = List.copyOf(installations);
        bonds = List.copyOf(bonds);
    }

    /**
     * The installation of an id, if there is one.
     *
     * @param installationId short name
     * @return the installation
     */
    public Optional<Installation> installation(String installationId) {
        return installations.stream().filter(i -> i.id().equals(installationId)).findFirst();
    }
}
