package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Facts;
import java.util.LinkedHashSet;
import java.util.Set;

/** Advice where no change of the record can mend anything: what to record, ask or find out. */
final class Asking {
    private static final String IS_NOT = " is not recorded";
    private static final String ARE_NOT = " are not recorded";

    private Asking() {}

    /** What to record, each thing once. */
    static String missing(Ruling ruling) {
        Set<String> things = new LinkedHashSet<>();
        for (String why : ruling.because()) {
            if (why.endsWith(IS_NOT)) {
                things.add(why.substring(0, why.length() - IS_NOT.length()));
            } else if (why.endsWith(ARE_NOT)) {
                things.add(why.substring(0, why.length() - ARE_NOT.length()));
            }
        }
        return things.isEmpty()
                ? "find out and record what is missing: " + String.join("; ", ruling.because())
                : "find out and record " + Grid.listed(things.stream().toList());
    }

    static String about(Job job, Ruling ruling) {
        Class<?> kind = ruling.subject().kind().type();
        String discharge = Case.key(ruling, "discharge");
        if (kind == Facts.DischargeKind.class) {
            return "lead the water of discharge "
                    + discharge
                    + " elsewhere ("
                    + demanded(ruling)
                    + "), and ask whoever answers for that place before joining it";
        } else if (kind == Facts.DischargeApproved.class) {
            return "ask whoever answers for discharge "
                    + discharge
                    + " to approve it in writing, or lead the water elsewhere";
        } else if (kind == Facts.ApprovalReference.class) {
            return "record who approved discharge " + discharge + " and under which reference";
        } else if (kind == Facts.OutfallTraced.class) {
            return "have the outfall of discharge "
                    + discharge
                    + " traced ("
                    + demanded(ruling)
                    + ") and record what came of it";
        } else if (kind == Facts.OutletCount.class) {
            return "give run "
                    + Case.run(ruling)
                    + " an outlet, and record it on the way of the water";
        }
        if (kind == Facts.BlockedFreeboard.class) {
            return "hang run "
                    + Case.run(ruling)
                    + " so that its front is the lower lip, or give it outlets that take the water"
                    + " while one of them is blocked";
        } else if (kind == Facts.LowestOpening.class) {
            return "let drain "
                    + Case.key(ruling, "drain")
                    + " open outside, lower than the gutter by "
                    + demanded(ruling)
                    + ", or hang the gutter so that its front is the lower lip";
        }
        double measured = Case.measured(ruling);
        if (kind == Facts.TimberSound.class) {
            String bracket = Parts.named(job, Case.straight(ruling), Case.key(ruling, "bracket"));
            return "replace the timber behind "
                    + bracket
                    + ", or move it to where the timber was looked at and is sound; what"
                    + " else is screwed to that fascia needs a look too";
        } else if (kind == Facts.SnowHeld.class) {
            return "have snow guards fixed to the roof above straight "
                    + Case.key(ruling, "straight")
                    + ", of a strength that whoever answers for the roof has reckoned";
        } else if (LoadProposals.isLoad(ruling)) {
            return "put in brackets that carry at least "
                    + Decimals.with(StrictMath.ceil(measured + Case.kept(ruling)), Unit.NEWTON)
                    + " each, as their maker states it, or more of them";
        } else if (ruling.demanded() instanceof Demanded.AtMost most
                && most.unit() == Unit.RATIO
                && most.limit() > 0) {
            return "make it carry "
                    + Decimals.plain(StrictMath.ceil(measured / most.limit() * 100) / 100, 2)
                    + " times what it does (a larger section, more fall or one outlet more), or"
                    + " lead as much of the water elsewhere";
        } else if (kind == Facts.GutterFreeboard.class
                && ruling.demanded() instanceof Demanded.AtLeast least) {
            return "get the water in the gutter down by "
                    + Grid.mm(StrictMath.ceil(least.limit() + Case.kept(ruling) - measured))
                    + " (a larger gutter, one outlet more or more fall)";
        }
        return "see to it that " + ruling.subject().kind().says() + " is " + demanded(ruling);
    }

    /** What the measure must read, its uncertainty taken off. */
    static String demanded(Ruling ruling) {
        double kept = Case.kept(ruling);
        if (ruling.demanded() instanceof Demanded.AtMost most) {
            return "at most " + number(most.limit(), -kept, most.unit());
        } else if (ruling.demanded() instanceof Demanded.AtLeast least) {
            return "at least " + number(least.limit(), kept, least.unit());
        } else if (ruling.demanded() instanceof Demanded.OneOf words) {
            return String.join(", ", words.words());
        }
        return "as its rule asks";
    }

    private static String number(double limit, double guard, Unit unit) {
        double value = limit + guard;
        String number = Decimals.with(value, unit);
        return guard == 0 ? number : number + " as read";
    }
}
