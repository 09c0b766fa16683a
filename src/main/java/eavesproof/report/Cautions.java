package eavesproof.report;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.job.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What to beware of in this kind of work, each with where it comes from. A caution is left out only
 * where the record says that it cannot matter.
 */
final class Cautions {
    private static final Set<String> INTO_THE_GROUND =
            Set.of(
                    "soakaway",
                    "surface-water drain",
                    "pit or sump",
                    "combined sewer",
                    "foul sewer");

    private Cautions() {}

    static List<Report.Caution> of(Job job, String jurisdiction) {
        List<Report.Caution> cautions = new ArrayList<>();
        say(
                cautions,
                "Height",
                "Ask first whether a ladder is right for this work at all. If it is: one out for "
                        + "every four up, three points of contact, and move it rather than lean.",
                "HSE, employers' guide to ladders; BRANZ Level");
        say(
                cautions,
                "Ladder and gutter",
                "Never rest a ladder on a plastic gutter; use a stand-off against the wall.",
                "BRANZ Level");
        say(
                cautions,
                "Fragile roofs",
                "Take every roof for fragile until somebody competent has said that it is not.",
                "HSE, fragile roofs");
        say(
                cautions,
                "Power lines",
                "Keep away from lines and service cables and have the supply cut off before working "
                        + "near them. The distances are law and differ from country to country"
                        + (about(jurisdiction, "new zealand")
                                ? "; in New Zealand, for low voltage, 4 m, or 0.5 m with the "
                                        + "written consent of the line's owner."
                                : "."),
                "HSE GS6; WorkSafe New Zealand");
        say(
                cautions,
                "Asbestos",
                "Old gutters, downpipes, soffits and roof sheets may hold asbestos. If you are not "
                        + "sure, stop, and have it looked at before it is cut, drilled or broken.",
                "HSE HSG210");
        say(
                cautions,
                "Lead paint",
                "Expect lead in the paint of buildings of the 1980s and before: no dry sanding, no "
                        + "burning off.",
                "WorkSafe New Zealand");
        if (mayBeCemented(job)) {
            say(
                    cautions,
                    "Solvent cement",
                    "Very flammable, and its vapour travels: fresh air, gloves, eye protection, no "
                            + "flame or spark. Read the data sheet of the product.",
                    "Safety data sheets of the products; common practice");
        }
        if (mayDig(job)) {
            say(
                    cautions,
                    "Digging",
                    "Find out where services lie before opening the ground for a drain or soakaway.",
                    "811 before digging (USA); the service locating bodies elsewhere");
        }
        say(
                cautions,
                "Discharge",
                "Never lead roof water into a foul sewer or onto a neighbour unless the authority "
                        + "allows it in writing.",
                "E1 (New Zealand); local water utilities (Australia); Approved Document H3 "
                        + "(England); IPC 1101.3 (USA)");
        if (mayBeDrunk(job)) {
            say(
                    cautions,
                    "Drinking water",
                    "Nothing of lead, bitumen, asbestos or uncoated lead flashing upstream of a tank, "
                            + "and let the first rain of a new roof run away.",
                    "ABCB Housing Provisions 7.4.2; New Zealand roofing code of practice");
        }
        cautions.add(consent(jurisdiction));
        return cautions;
    }

    private static void say(
            List<Report.Caution> cautions, String topic, String text, String source) {
        cautions.add(new Report.Caution(topic, text, source));
    }

    /** What this paper is worth in law differs; the program asks and does not decide. */
    private static Report.Caution consent(String jurisdiction) {
        String topic = "Consent and licence";
        if (about(jurisdiction, "new zealand")) {
            return new Report.Caution(
                    topic,
                    "Whether a gutter needs a consent varies: repair like for like usually does "
                            + "not, and a new connection to a drain is drainlaying. A record of "
                            + "work is the licensed practitioner's own duty, and a producer "
                            + "statement has no particular standing in the Act.",
                    "Building Act 2004, section 88; building.govt.nz, producer statements");
        }
        if (about(jurisdiction, "england")) {
            return new Report.Caution(
                    topic,
                    "Gutters alone usually need no notice to building control; ask where a drain "
                            + "is altered. A record such as this is evidence, and not conclusive "
                            + "evidence, that the regulations were kept.",
                    "Building Regulations 2010, regulation 20 as amended");
        }
        if (about(jurisdiction, "australia")) {
            return new Report.Caution(
                    topic,
                    "Roof drainage is licensed plumbing in some states. In Victoria a plumber must "
                            + "lodge a document of their own above a value set by law, and the "
                            + "gutter part of the housing provisions cannot be used there.",
                    "State plumbing laws; ABCB Housing Provisions, Victorian variations");
        }
        if (about(jurisdiction, "united states") || about(jurisdiction, "usa")) {
            return new Report.Caution(
                    topic,
                    "A model code holds only where it was adopted: ask which edition, and with "
                            + "which local amendments.",
                    "Adopting ordinances of the place");
        }
        return new Report.Caution(
                topic,
                "Whether the work needs a consent, a notice or a licensed person is a matter of "
                        + "the place where it is done: ask there before beginning.",
                "Local building and plumbing law");
    }

    private static boolean about(String jurisdiction, String country) {
        return jurisdiction.toLowerCase(Locale.ROOT).contains(country);
    }

    private static boolean mayBeCemented(Job job) {
        Map<String, Gutter> gutters = Objects.requireNonNullElse(job.gutters(), Map.of());
        for (Run run : Objects.requireNonNullElse(job.runs(), List.<Run>of())) {
            Gutter gutter = run.gutter() == null ? null : gutters.get(run.gutter());
            String jointing = gutter == null ? null : gutter.jointing();
            if (jointing == null || jointing.equals("cemented")) {
                return true;
            }
        }
        return job.runs() == null;
    }

    private static boolean mayDig(Job job) {
        List<WayPart> way = job.way();
        return way == null || way.stream().anyMatch(Cautions::intoTheGround);
    }

    private static boolean intoTheGround(WayPart part) {
        if (part instanceof WayPart.Discharge discharge) {
            String place = discharge.place().is();
            return place == null || INTO_THE_GROUND.contains(place);
        }
        return part instanceof WayPart.Drain;
    }

    private static boolean mayBeDrunk(Job job) {
        List<WayPart> way = job.way();
        return way == null
                || way.stream()
                        .anyMatch(
                                part ->
                                        part instanceof WayPart.Tank tank
                                                && !Words.NO.equals(tank.drinkingWater()));
    }
}
