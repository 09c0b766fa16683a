package eavesproof.survey;

import java.util.List;

/** What the survey answers for one kind of fact at one place. There is no fourth answer. */
public sealed interface Answer {
    FactKind kind();

    Place place();

    /** It is known. */
    record Known(
            FactKind kind,
            Place place,
            Facts.Fact fact,
            Measure measure,
            Provenance provenance,
            List<Working> workings)
            implements Answer {
        public Known {
            workings = List.copyOf(workings);
        }
    }

    /** It is not known, because something was not recorded. */
    record Gap(FactKind kind, Place place, String why) implements Answer {}

    /** There is no such thing here, because the record says so. */
    record NoneHere(FactKind kind, Place place, String why) implements Answer {}
}
