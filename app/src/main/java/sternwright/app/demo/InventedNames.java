package sternwright.app.demo;

import java.util.List;
import java.util.Locale;

/** Names made up for invented boats and owners. */
final class InventedNames {
    private static final List<String> BOATS = List.of(
            "Tern",
            "Petrel",
            "Dunlin",
            "Avocet",
            "Whimbrel",
            "Sanderling",
            "Fulmar",
            "Gannet",
            "Kittiwake",
            "Puffin",
            "Razorbill",
            "Shearwater",
            "Skua",
            "Turnstone",
            "Curlew",
            "Redshank",
            "Godwit",
            "Lapwing",
            "Plover",
            "Knot",
            "Eider",
            "Goldeneye",
            "Merganser",
            "Pintail",
            "Pochard",
            "Shoveler",
            "Teal",
            "Wigeon",
            "Brent",
            "Bittern",
            "Heron",
            "Egret",
            "Crake",
            "Moorhen",
            "Dipper",
            "Wagtail",
            "Wheatear",
            "Bluethroat",
            "Nightjar",
            "Hoopoe",
            "Sea Thrift",
            "Samphire",
            "Marram",
            "Bladderwrack",
            "Dulse",
            "Eelgrass",
            "Cockle",
            "Limpet",
            "Whelk",
            "Urchin",
            "Slack Water",
            "Neap Tide",
            "Lee Shore",
            "Fair Lead",
            "Long Splice",
            "Small Hours",
            "Grey Dawn",
            "Second Wind",
            "Plain Sailing",
            "Low Pressure");
    private static final List<String> FIRST =
            List.of("Ida", "Orrin", "Maud", "Tobin", "Greta", "Caspar", "Nell", "Ivo", "Petra", "Alwin");
    private static final List<String> LAST = List.of(
            "Quillfeather",
            "Brackenholm",
            "Fenwater",
            "Saltmarshe-Low",
            "Underhedge",
            "Rookstone",
            "Tarnwick",
            "Mirefield",
            "Lanternby",
            "Gorsehill",
            "Driftmoor",
            "Pebbleworth");

    private InventedNames() {}

    static String boat(int index) {
        String name = BOATS.get(index % BOATS.size());
        return index < BOATS.size() ? name : name + " " + (index / BOATS.size() + 1);
    }

    static String id(String boatName) {
        return boatName.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    static String owner(int index) {
        return FIRST.get((index * 7) % FIRST.size()) + " " + LAST.get((index * 5) % LAST.size());
    }
}
