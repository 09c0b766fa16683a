package eavesproof.report;

import eavesproof.drawing.Drawing;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A report laid out by the templates of one folder: for paper as a manuscript with its drawings and
 * attachments, for the screen as one page that stands alone.
 */
public final class Typesetting {
    /** The template that every folder must have. */
    public static final String TEMPLATE = "report.ftlh";

    private static final double MARGIN_MM = 18;
    private static final double SCREEN_MM = 174;
    private static final String LANGUAGE = "en";

    private static final Pattern TITLE = Pattern.compile("(?s)<title>(.*?)</title>");

    private static final Pattern PICTURE =
            Pattern.compile("src=\"(" + Markup.PHOTOGRAPH + "[0-9]+)\"");

    private final Path folder;
    private final Templates templates;

    public Typesetting(Path folder, Allowance allowance) throws LayoutTrouble {
        this.folder = folder;
        templates = new Templates(folder, Set.of(Report.class.getPackageName()), allowance);
    }

    public Manuscript forPaper(Issue issue) throws LayoutTrouble {
        double width = issue.paper().widthMm() - 2 * MARGIN_MM;
        Composition composition = new Composition(issue, width, (id, drawing) -> Markup.place(id));
        String page = fill(composition, false);
        checkSigned(composition, page);
        List<String> band = StrangeTemplate.lines(folder, issue.findings());
        return new Manuscript(
                page,
                composition.drawings(),
                placed(page, composition.photographs()),
                issue.attachments(),
                about(issue, page, composition.number(), band),
                issue.paper(),
                band,
                issue.signedBy());
    }

    /** A template may leave photographs out; then they are no part of the document. */
    private static Map<String, Photo.Print> placed(
            String page, Map<String, Photo.Print> photographs) {
        Set<String> places =
                PICTURE.matcher(page)
                        .results()
                        .map(found -> found.group(1))
                        .collect(Collectors.toSet());
        Map<String, Photo.Print> placed = new TreeMap<>(photographs);
        placed.keySet().retainAll(places);
        return placed;
    }

    /** One HTML page; drawings and styles are in it, and it asks for nothing from outside. */
    public String forScreen(Issue issue) throws LayoutTrouble {
        BiFunction<String, Drawing, Markup> drawn = (id, drawing) -> Markup.draw(drawing);
        Composition composition = new Composition(issue, SCREEN_MM, drawn);
        String page = fill(composition, true);
        checkSigned(composition, page);
        String named =
                StrangeTemplate.onScreen(page, StrangeTemplate.lines(folder, issue.findings()));
        return "<!DOCTYPE html>\n" + pictured(named, composition.photographs());
    }

    /** Whoever asks for the picture of a signature must not get a paper without it. */
    private static void checkSigned(Composition composition, String page) throws LayoutTrouble {
        for (String address : composition.signatures()) {
            if (!page.contains("src=\"" + address + "\"")) {
                throw new LayoutTrouble(TEMPLATE, "has no place for the picture of a signature");
            }
        }
    }

    /** After the template is filled, so that its allowance is one of words and not of pictures. */
    private static String pictured(String page, Map<String, Photo.Print> photographs) {
        return PICTURE.matcher(page)
                .replaceAll(
                        found -> {
                            Photo.Print print = photographs.get(found.group(1));
                            return print == null
                                    ? Matcher.quoteReplacement(found.group())
                                    : "src=\"data:image/jpeg;base64,"
                                            + Base64.getEncoder().encodeToString(print.jpeg())
                                            + "\"";
                        });
    }

    /** Set twice where the first time shows letters that cannot be printed, so that it is said. */
    private String fill(Composition composition, boolean screen) throws LayoutTrouble {
        String once = fill(composition.report(""), screen);
        Unprintable unprintable = Unprintable.in(once);
        return screen || unprintable.isEmpty()
                ? once
                : fill(composition.report(said(unprintable)), screen);
    }

    private String fill(Report report, boolean screen) throws LayoutTrouble {
        return templates.fill(TEMPLATE, Map.of("report", report, "screen", screen));
    }

    private static String said(Unprintable unprintable) {
        String missing =
                unprintable.missing().isEmpty()
                        ? ""
                        : "The record holds characters that the fonts of this paper lack; a mark "
                                + "stands in their place: "
                                + unprintable.missingNames()
                                + ". ";
        String turned =
                unprintable.rightToLeft()
                        ? "The record holds words that are written from right to left; they are "
                                + "printed in the wrong order here. "
                        : "";
        return missing + turned + "The attached job.json has them as they were written.";
    }

    /** What the template calls it, as plain text again. */
    private static Optional<String> title(String page) {
        Matcher title = TITLE.matcher(page);
        return title.find()
                ? Optional.of(
                                title.group(1)
                                        .replace("&lt;", "<")
                                        .replace("&gt;", ">")
                                        .replace("&quot;", "\"")
                                        .replace("&#39;", "'")
                                        .replace("&amp;", "&"))
                        .filter(text -> !text.isBlank())
                : Optional.empty();
    }

    private static About about(Issue issue, String page, String number, List<String> band) {
        return new About(
                StrangeTemplate.title(title(page).orElse("Eaves gutter, " + number), band),
                new People(issue.job()).author(),
                "Report " + number,
                LANGUAGE,
                issue.program(),
                issue.issued().atStartOfDay(ZoneOffset.UTC).toInstant());
    }
}
