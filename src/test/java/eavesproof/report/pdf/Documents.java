package eavesproof.report.pdf;

import eavesproof.drawing.Anchor;
import eavesproof.drawing.Drawing;
import eavesproof.drawing.Fill;
import eavesproof.drawing.Line;
import eavesproof.drawing.Mark;
import eavesproof.drawing.Point;
import eavesproof.drawing.Weight;
import eavesproof.report.About;
import eavesproof.report.Attachment;
import eavesproof.report.Manuscript;
import eavesproof.report.Markup;
import eavesproof.report.Paper;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** Documents for the tests of this package. */
final class Documents {
    static final byte[] RECORD = "{\"id\":\"verandah\"}".getBytes(StandardCharsets.UTF_8);

    private static final String STYLE =
            """
            @page { margin: 18mm;
              @bottom-left { content: element(foot); }
              @bottom-right { content: "Page " counter(page) " of " counter(pages);
                font-family: "Source Sans 3"; font-size: 8.5pt; } }
            body { font-family: "Source Sans 3", "DejaVu Sans"; font-size: 10pt; margin: 0; }
            #foot { position: running(foot); font-size: 8.5pt; }
            strong, th, h1, h2 { font-weight: 600; }
            h2 { page-break-inside: avoid; page-break-after: avoid; }
            table { border-collapse: collapse; width: 174mm; -fs-table-paginate: paginate; }
            tr { page-break-inside: avoid; }
            td, th { border-bottom: 0.8pt solid #000; text-align: left; }
            """;

    private Documents() {}

    static About about() {
        return new About(
                "Eaves gutter: a <record> & {title}",
                "A. Fitter",
                "North verandah {program}",
                "en-NZ",
                "Eavesproof test",
                Instant.parse("2026-11-25T08:00:00.123Z"));
    }

    /** Several pages with everything that a report is made of. */
    static Manuscript whole(Paper paper) {
        StringBuilder rows = new StringBuilder();
        for (int i = 1; i <= 90; i++) {
            rows.append(
                    "<tr><th scope=\"row\">b"
                            + i
                            + "</th><td>"
                            + 143 * i
                            + "</td><td>a remark</td></tr>");
        }
        String body =
                """
                <div id="foot">Record 17</div>
                <h1>Eaves gutter</h1>
                <p>The <strong>left fittings</strong> are <em>difficult</em>: Ōtaki, ≤ 500 mm, ± 2, ✓ → ⌀.</p>
                <p>See the <a href="#readings">readings</a>.</p>
                <h2>What was built</h2>
                """
                        + Markup.place("a")
                        + Markup.place("b")
                        + "<h2 id=\"readings\">Readings</h2><table><thead><tr><th>Bracket</th>"
                        + "<th>Station, mm</th><th>Remark</th></tr></thead><tbody>"
                        + rows
                        + "</tbody></table><ul><li>one</li><li>two</li></ul><p id=\"sign\">Signed</p>";
        return new Manuscript(
                page(body),
                Map.of("a", drawing("fall to the left"), "b", drawing("offset")),
                List.of(
                        new Attachment(
                                "record.json", "application/json", "The measurements", RECORD),
                        new Attachment(
                                "findings.json",
                                "application/json",
                                "The findings",
                                new byte[] {'[', ']'})),
                about(),
                paper);
    }

    static Manuscript of(String xhtml) {
        return new Manuscript(xhtml, Map.of(), List.of(), about(), Paper.A4);
    }

    static String page(String body) {
        return "<html><head><title>t</title><style>"
                + STYLE
                + "</style></head><body>"
                + body
                + "</body></html>";
    }

    private static Drawing drawing(String words) {
        return new Drawing(
                174,
                40,
                "Elevation: " + words,
                List.of(
                        Mark.Stroke.between(5, 5, 169, 5, Line.CHAIN),
                        Mark.Area.box(5, 10, 164, 10, Fill.HATCHED, Line.HEAVY),
                        Mark.Area.box(5, 22, 40, 10, Fill.TINT, Line.DASHED),
                        new Mark.Circle(new Point(60, 27), 3, Fill.WHITE, Line.DOTTED),
                        Mark.Words.level(80, 30, words + " ½ ✓", Anchor.MIDDLE, 9),
                        new Mark.Words(
                                new Point(120, 38),
                                "upright",
                                Anchor.START,
                                8,
                                Weight.STRONG,
                                90)));
    }
}
