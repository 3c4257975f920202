package sternwright.app.api;

import java.util.List;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import sternwright.app.account.SignedIn;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.YardFiles;
import sternwright.app.files.shelf.Shelf;
import sternwright.boat.Boat;

/** What every answer begins with: who asks, and about which boat. */
@Component
final class Asked {
    private final OpenYard yard;

    Asked(OpenYard yard) {
        this.yard = yard;
    }

    OpenYard yard() {
        return yard;
    }

    /** What stands for the yard as it is now and the day, for what is made once. */
    String now() {
        return yard.state() + " " + yard.today();
    }

    Boat boat(String id) {
        YardFiles files = yard.files();
        Boat boat = files.boats().get(id);
        if (boat == null) {
            throw new NotThere("boat", id, List.copyOf(files.boats().keySet()));
        }
        return boat;
    }

    /** The yard's texts for a deed of whoever asks. */
    Shelf shelf() {
        return yard.shelf(person().fullName());
    }

    static SignedIn person() {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        if (authentication != null && authentication.getPrincipal() instanceof SignedIn person) {
            return person;
        }
        throw new IllegalStateException("the guard let somebody in whom nobody knows");
    }
}
