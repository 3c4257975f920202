package sternwright.app.web.boat;

import java.util.Locale;
import java.util.stream.Collectors;
import sternwright.app.files.YardFiles;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;
import sternwright.boat.Side;

/**
 * A boat that an address names, and how pages call her and what she is made of.
 *
 * @param files the yard
 * @param boat the boat
 */
public record OneBoat(YardFiles files, Boat boat) {
    /**
     * The boat.
     *
     * @param files the yard
     * @param id as in the address
     * @return the boat
     * @throws Missing if there is none
     */
    public static OneBoat of(YardFiles files, String id) {
        Boat boat = files.boats().get(id);
        if (boat == null) {
            throw new Missing("boat.one");
        }
        return new OneBoat(files, boat);
    }

    /**
     * The head of her pages.
     *
     * @param page the page
     * @param at which of her pages is open
     * @return the head
     */
    public BoatSheet.Head head(Page page, String at) {
        return new BoatSheet.Head(
                boat.id(), boat.name(), page.say("boat.lead", owner(page), berth(), arrangements(page)), at);
    }

    private String owner(Page page) {
        String owner = boat.owner().name();
        return owner.equals("not known") ? page.say("boat.owner.unknown") : owner;
    }

    /**
     * Where she lies.
     *
     * @return the name of the berth
     */
    public String berth() {
        Berth berth = files.berths().get(boat.berthId());
        return berth == null ? boat.berthId() : berth.name();
    }

    private String arrangements(Page page) {
        return boat.installations().stream()
                .map(i -> page.say("boats.arrangement." + word(i.arrangement())))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    static String word(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * What an installation is called.
     *
     * @param page the page
     * @param installation the installation
     * @return such as Port engine
     */
    public String name(Page page, Installation installation) {
        String side =
                installation.side() == Side.CENTRELINE && boat.installations().size() == 1
                        ? "only"
                        : word(installation.side());
        return page.say("boat.engine." + side, installation.id());
    }

    /**
     * What a part is called; with its short name where the installation has several of the kind.
     *
     * @param installation where it is
     * @param part the part
     * @return such as raw-water pump
     */
    public String name(Installation installation, Part part) {
        String name = files.catalogue().find(part.kind()).map(PartKind::name).orElse(part.id());
        boolean several = installation.parts().stream()
                        .filter(p -> p.kind().equals(part.kind()))
                        .count()
                > 1;
        return several ? name + " (" + part.id() + ")" : name;
    }

    /**
     * What a part is called on the whole boat; with its installation where there are several.
     *
     * @param page the page
     * @param ref the part
     * @return such as Port engine, raw-water pump
     */
    public String name(Page page, PartRef ref) {
        return boat.installation(ref.installationId())
                .flatMap(i -> i.part(ref.partId()).map(p -> {
                    String part = name(i, p);
                    return boat.installations().size() == 1 ? part : page.say("boat.part.of", name(page, i), part);
                }))
                .orElse(ref.toString());
    }
}
