package sternwright.app.files.shelf;

/** Keeps the texts of one yard and gives each person a shelf of them. */
@FunctionalInterface
public interface Keeper {
    /**
     * The yard's texts, for one person.
     *
     * @param by who asks; a store notes what is written under this name
     * @return a shelf for readers and deeds
     */
    Shelf shelf(String by);
}
