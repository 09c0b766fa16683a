package eavesproof.report;

import java.util.List;

/**
 * All that a template may print, as finished words. Nothing here is left to be worked out: a
 * template arranges, and computes nothing.
 *
 * @param number of this report; another record, rule set or date gives another number
 * @param shortTitle the title in one line
 * @param issued date, YYYY-MM-DD
 * @param replaces the number of the report that it replaces; empty where it replaces none
 * @param head what this is and its outcome, for the head of each page; no words of the record
 * @param particulars number, title, place, day and people, each as recorded or not
 * @param signed who signed, or that nobody did, in sentences
 * @param rests what a reader must know beside the outcome, in sentences
 * @param urgent what does not comply or is too close to call, short; {@code alsoOpen} what else is
 *     open, in sentences
 * @param who issuer, client and others
 * @param where site, consent, dates, weather
 * @param lookedAt what was measured, in sentences; {@code leftOut} what was not
 * @param open what needs a decision, by verdict, numbered
 * @param silent what no rule speaks of
 * @param digital what a digital signature shows and what it does not; empty where there is none
 * @param care what the owner of the gutter should know of it
 * @param unprintable says which characters could not be printed; empty where all could
 */
public record Report(
        String number,
        String job,
        String title,
        String shortTitle,
        String issued,
        String replaces,
        String program,
        String head,
        List<Entry> particulars,
        String signed,
        String outcome,
        List<String> rests,
        List<Urgent> urgent,
        List<String> alsoOpen,
        Rules rules,
        List<Entry> who,
        List<Entry> where,
        List<String> lookedAt,
        List<String> leftOut,
        Markup key,
        List<Figure> figures,
        String openIntroduced,
        List<Open> open,
        List<Topic> complies,
        List<Apart> notApplicable,
        List<Silence> silent,
        List<Reckoning> workings,
        List<Grid> instruments,
        List<Record> records,
        Grid said,
        Grid way,
        Grid tests,
        Grid photographs,
        List<Picture> pictures,
        List<String> remarks,
        List<Signature> signatures,
        List<String> digital,
        List<String> limits,
        List<Entry> identity,
        List<Caution> cautions,
        Care care,
        String unprintable) {

    /**
     * One thing to do something about.
     *
     * @param mark the name of the style of its verdict
     * @param what the requirement by its name
     */
    public record Urgent(
            String number,
            String mark,
            String what,
            String place,
            String measured,
            String limit,
            String clause) {}

    /** A name and what belongs to it. */
    public record Entry(String name, String text) {}

    /**
     * What the job was held against.
     *
     * @param shipped whether the rules are as shipped, as a sentence
     * @param changes each change, with old and new limit
     */
    public record Rules(
            String title,
            String jurisdiction,
            String shipped,
            List<String> changes,
            Grid documents,
            List<String> notChecked) {}

    /**
     * A table.
     *
     * @param empty what to say where there is no row
     */
    public record Grid(
            String caption, List<Column> columns, List<List<String>> rows, String empty) {}

    /**
     * @param kind words, figures, or name: how the column is set
     * @param share of the width of the table, in per cent
     */
    public record Column(String head, String kind, String share) {}

    /** Stations and what was read there, side by side as in a level book. */
    public record Strip(String caption, List<Band> bands) {}

    /** As many stations as fit side by side. */
    public record Band(List<BandRow> rows) {}

    public record BandRow(String head, List<String> cells) {}

    /** One straight as recorded. */
    public record Record(String title, List<Entry> facts, List<Strip> strips) {}

    /**
     * @param drawing one, or none where nothing can be drawn
     */
    public record Figure(String title, List<Markup> drawing, List<String> notes) {}

    /**
     * What somebody must decide on or do something about, of one verdict.
     *
     * @param verdict in words; {@code mark} the name of its style
     */
    public record Open(String verdict, String mark, List<Action> actions) {}

    /**
     * One numbered entry.
     *
     * @param shared whether several requirements are in question for one reason
     * @param because what holds for all of it
     * @param remedy what would put all of it right
     */
    public record Action(
            String number,
            boolean shared,
            List<String> because,
            List<String> remedy,
            List<Need> needs) {}

    /**
     * One requirement with the places where it is in question.
     *
     * @param several whether it is in question at more than one place
     */
    public record Need(
            String says, String rule, String source, boolean several, List<Held> places) {}

    /**
     * A requirement held against one place.
     *
     * @param sure the expanded uncertainty, in the unit of the limit as all figures
     * @param limit with its unit
     * @param notes why, and what to do, where that is about this place alone
     */
    public record Held(
            String number,
            String place,
            String measured,
            String sure,
            String limit,
            String spare,
            List<String> notes) {}

    /** What complies under one topic. */
    public record Topic(String name, List<Met> met) {}

    /**
     * @param times how many places were checked
     * @param tightest the place with the least to spare
     */
    public record Met(String says, String rule, String source, String times, Held tightest) {}

    /** Requirements that do not apply, for one reason. */
    public record Apart(String because, String requirements, String places) {}

    public record Silence(String what, String place, String why) {}

    /** How one verdict came about. */
    public record Reckoning(
            String number, String rule, String place, String decision, List<Step> steps) {}

    public record Step(String name, String value, String from) {}

    /**
     * A photograph, or why it cannot be shown.
     *
     * @param shown one, or none
     * @param details where and when it was taken, its file and hash
     */
    public record Picture(List<Markup> shown, String caption, String details) {}

    /**
     * Somebody who signs, or an empty place for somebody who may.
     *
     * @param declares what is signed
     * @param place the id that the last line must have if a digital signature is to lie there;
     *     empty where none is
     * @param pictures of a handwritten signature, one or none
     */
    public record Signature(
            String heading,
            String declares,
            List<Entry> lines,
            String place,
            List<SignaturePicture> pictures) {}

    /**
     * The picture of a handwritten signature.
     *
     * @param says that it proves nothing, and the hash of its file
     */
    public record SignaturePicture(Markup shown, String says) {}

    public record Caution(String topic, String text, String source) {}

    /**
     * @param fitted what was fitted
     * @param never what not to do, in sentences
     * @param cautions for whoever climbs up to look
     */
    public record Care(
            List<Entry> fitted, List<Task> tasks, List<String> never, List<Caution> cautions) {}

    /** What to look at or to clean. */
    public record Task(String what, String when, String why) {}
}
