package eavesproof.survey;

import eavesproof.job.Said;
import eavesproof.job.WayPart.Discharge;
import eavesproof.job.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where the water finally goes, who approved it, and how that was traced. */
final class Discharges {
    static final List<Class<? extends Facts.Fact>> KINDS =
            List.of(
                    Facts.DischargeKind.class,
                    Facts.DischargeApproved.class,
                    Facts.ApprovalReference.class,
                    Facts.OutfallTraced.class);

    private Discharges() {}

    static void answer(String run, Discharge discharge, Answers answers) {
        String id = discharge.id();
        answers.said(
                Facts.DischargeKind.class,
                discharge.place(),
                word -> new Facts.DischargeKind(run, id, word),
                "the kind of discharge " + id,
                run,
                id);
        answers.said(
                Facts.DischargeApproved.class,
                discharge.approved(),
                word -> new Facts.DischargeApproved(run, id, word),
                "whether discharge " + id + " is approved",
                run,
                id);
        reference(run, id, discharge.approved(), answers);
        answers.said(
                Facts.OutfallTraced.class,
                discharge.traced(),
                word -> new Facts.OutfallTraced(run, id, word),
                "how the outfall of discharge " + id + " was traced",
                run,
                id);
    }

    /** Yes if both who approved it and where to find that are named; never a guessed no. */
    private static void reference(String run, String id, Said<String> approved, Answers answers) {
        if (Words.NO.equals(approved.is())) {
            String why = "discharge " + id + " is not approved, so nothing can be referred to";
            answers.none(Facts.ApprovalReference.class, why, run, id);
        } else if (!Words.YES.equals(approved.is())) {
            String why = Found.open("whether discharge " + id + " is approved", approved.is());
            answers.gap(Facts.ApprovalReference.class, why, run, id);
        } else if (isBlank(approved.by())) {
            String why = "who approved discharge " + id + " is not recorded";
            answers.gap(Facts.ApprovalReference.class, why, run, id);
        } else if (isBlank(approved.reference())) {
            String why = "the reference of the approval of discharge " + id + " is not recorded";
            answers.gap(Facts.ApprovalReference.class, why, run, id);
        } else {
            answers.said(
                    Facts.ApprovalReference.class,
                    approved,
                    word -> new Facts.ApprovalReference(run, id, word),
                    "who approved discharge " + id + " and under which reference",
                    run,
                    id);
        }
    }

    private static boolean isBlank(@Nullable String text) {
        return text == null || text.isBlank();
    }
}
