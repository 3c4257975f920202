package sternwright.job;

import static sternwright.job.InventedVisits.supply;
import static sternwright.job.InventedVisits.work;

import java.util.List;
import sternwright.service.Interval;
import sternwright.service.Place;
import sternwright.service.Trigger;
import sternwright.visit.planned.PlannedWork;

/** The works of the invented lay-up. */
final class LayUpWorks {
    private LayUpWorks() {}

    static List<PlannedWork> all() {
        return List.of(
                oil(),
                coolantTest(),
                impeller(),
                isolation(),
                diaphragm(),
                mounts(),
                gearOil(),
                anodes(),
                propeller(),
                frost());
    }

    private static PlannedWork oil() {
        return work(
                RuleOf.rule("engine-oil", "change engine oil and filter")
                        .interval(Interval.of(12, 200.0))
                        .why(
                                "Used oil holds acid and soot that would eat bearings over the winter.",
                                "The engine wears faster and corrodes inside while it stands.")
                        .cautions("hot-oil", "waste")
                        .steps(
                                "Run the engine warm, then stop it and take the key out.",
                                "Suck the old oil out through the dipstick tube; note how much came out and how it looks.",
                                "Renew the filter, seal wetted with new oil.",
                                "Fill, run for two minutes, wait five, read the dipstick, top up; look for leaks.")
                        .asks("oil-out", "oil that came out", "L", null, null)
                        .build(),
                "engine",
                "engine",
                "engine",
                60,
                "Last changed on 10 October 2025; it is done every 12 months.",
                List.of(
                        supply("engine-oil-15w-40", 4.5, "L", 40.50, ""),
                        supply("engine-oil-filter", 1, "pcs", 14.20, "")));
    }

    private static PlannedWork coolantTest() {
        return work(
                RuleOf.rule("coolant-test", "test coolant")
                        .why(
                                "The coolant must not freeze and must still protect the metal inside.",
                                "A hard frost can burst the engine block.")
                        .cautions("hot-coolant", "antifreeze")
                        .steps("With the engine cold, take a sample at the header tank.", "Measure the freeze point.")
                        .asks("freeze-point", "freeze point of the coolant", "°C", null, -25.0)
                        .asks("inhibitor-good", "inhibitor strip in the good range", "1", 1.0, null)
                        .build(),
                "coolant",
                "closed coolant circuit",
                "engine",
                10,
                "Last tested on 10 October 2025; it is done every 12 months.",
                List.of(supply("coolant-test-strip", 1, "pcs", 1.80, "")));
    }

    private static PlannedWork impeller() {
        return work(
                RuleOf.rule("impeller", "renew raw-water impeller, inspect pump")
                        .interval(Interval.of(12, 300.0))
                        .why(
                                "The rubber wheel that pumps the cooling water hardens and breaks.",
                                "The engine overheats under way, often when it is needed most.")
                        .cautions("rotating-parts")
                        .steps(
                                "Shut the seacock and tie a notice to it.",
                                "Open the pump, count the vanes; find any that are missing before going on.",
                                "Look at cover, cam and shaft seal; renew the impeller and the gasket.")
                        .asks("vanes-missing", "vanes missing", "pcs", null, 0.0)
                        .build(),
                "raw-water-pump",
                "raw-water pump",
                "raw-water-pump",
                67.5,
                "Last renewed on 3 April 2025; it is done every 12 months.",
                List.of(supply("impeller-kit", 1, "pcs", null, "")));
    }

    private static PlannedWork isolation() {
        return work(
                RuleOf.rule("leg-isolation", "prove leg isolated from engine")
                        .interval(new Interval(12, null, null, null, null, List.of("tag:leg-work"), null))
                        .why(
                                "The drive leg must not be joined in metal to the engine.",
                                "If it is, the leg and its anode are eaten away within weeks, unseen.")
                        .steps("Engine stopped, batteries off.", "Measure the resistance between leg and engine block.")
                        .asks("leg-isolation", "resistance between leg and engine", "kΩ", 10.0, null)
                        .build(),
                "leg",
                "drive leg",
                "leg",
                10,
                "It is proved every 12 months and after work on the leg.",
                List.of());
    }

    private static PlannedWork diaphragm() {
        return work(
                RuleOf.rule("diaphragm-seal", "renew diaphragm seal")
                        .interval(InventedVisits.life(84))
                        .place(Place.ASHORE)
                        .safety()
                        .tags("leg-work")
                        .why(
                                "The rubber seal closes the hole in the hull through which the leg passes.",
                                "The seal can fail without warning, and the boat can sink.")
                        .cautions("rotating-parts")
                        .steps(
                                "Boat shored; engine moved forward as the maker's manual says.",
                                "Lower the leg, take off the old seal, clean and inspect the hull flange.",
                                "Fit the new seal dry, bolts to the maker's torque in the maker's order.",
                                "Refit, fill the leg, look for oil at the seal after an hour.")
                        .asks("flange-sound", "hull flange sound", "1", 1.0, null)
                        .build(),
                "diaphragm",
                "diaphragm seal",
                "diaphragm-seal",
                480,
                "Fitted on 12 May 2018; its life of 84 months ended on 12 May 2025.",
                List.of(supply("diaphragm-seal-kit", 1, "pcs", 412.00, "")));
    }

    private static PlannedWork mounts() {
        return work(
                RuleOf.rule("mounts-look", "inspect mounts")
                        .why(
                                "Worn mounts let the engine move and strain the seal.",
                                "A broken mount can tear hoses and the seal.")
                        .steps(
                                "Look for cracks, rust, settling and oil on the rubber.",
                                "Lever each mount and note play.")
                        .asks("mount-settling", "settling of the worst mount", "mm", null, 3.0)
                        .build(),
                "mounts",
                "engine mounts",
                "mounts",
                37.5,
                "The engine is out for the seal, so the mounts are looked at.",
                List.of());
    }

    private static PlannedWork gearOil() {
        return work(
                RuleOf.rule("leg-oil-drain", "drain saildrive oil at the bottom plug")
                        .place(Place.ASHORE)
                        .tags("leg-work")
                        .why(
                                "Water and dirt that settle at the bottom only come out there.",
                                "Water left in the oil ruins gears and bearings of the leg.")
                        .cautions("waste")
                        .steps(
                                "Open the bottom plug, catch the oil, look for water and swarf.",
                                "New plug washer, fill, check level.")
                        .asks("water-in-oil", "water in the oil", "1", null, 0.0)
                        .trigger(new Trigger("water-in-oil", null, 1.0, "oil that shows water is changed now"))
                        .build(),
                "leg",
                "drive leg",
                "stern-gear",
                40,
                "Every third oil change of the leg it is drained from below.",
                List.of(supply("gear-oil", 3.0, "L", 33.00, "capacity of the leg is not known; 3 L allowed")));
    }

    private static PlannedWork anodes() {
        return work(
                RuleOf.rule("underwater-anodes", "inspect and weigh or gauge underwater anodes")
                        .place(Place.ASHORE)
                        .why("The anode is eaten in place of the leg.", "The leg itself begins to dissolve.")
                        .steps(
                                "Clean, gauge or weigh; renew at half gone.",
                                "Bright metal under the anode; never paint it.")
                        .asks("anode-remaining", "anode remaining", "%", 50.0, null)
                        .trigger(new Trigger("anode-remaining", 50.0, null, "at half gone the anode is renewed"))
                        .build(),
                "leg-anode",
                "leg anode",
                "stern-gear",
                20,
                "Last seen on 10 October 2025 with 82 % left; it is looked at every 12 months.",
                List.of(supply("leg-anode-aluminium", 1, "pcs", 38.50, "")));
    }

    private static PlannedWork propeller() {
        return work(
                RuleOf.rule("folding-propeller", "grease and inspect folding propeller")
                        .place(Place.ASHORE)
                        .why("Dry or worn hinges make the blades shake.", "Vibration harms seal and gearbox.")
                        .steps("Clean, grease, feel the play of each blade, look at the locking of the bolts.")
                        .build(),
                "propeller",
                "folding propeller",
                "stern-gear",
                30,
                "Not known when it was last done, so it is due at the first visit ashore.",
                List.of());
    }

    private static PlannedWork frost() {
        return work(
                RuleOf.rule("freeze-protect", "flush and freeze-protect the raw-water side")
                        .safety()
                        .why(
                                "Water left in the cooling passages bursts them when it freezes.",
                                "Pump, heat exchanger or block can burst in the first frost.")
                        .cautions("antifreeze", "waste")
                        .steps(
                                "Flush with fresh water.",
                                "Draw in propylene glycol until it leaves the exhaust at full strength; catch it.",
                                "Measure what leaves the exhaust.")
                        .asks("raw-freeze-point", "freeze point of what leaves the exhaust", "°C", null, -15.0)
                        .build(),
                "raw-water",
                "raw-water side",
                "raw-water",
                60,
                "It freezes at this berth from 5 November; it is done at every lay-up before that.",
                List.of(supply(
                        "propylene-glycol", 8, "L", 52.00, "content of the raw-water side is not known; 8 L allowed")));
    }
}
