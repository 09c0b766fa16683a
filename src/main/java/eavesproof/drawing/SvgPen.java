package eavesproof.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Writes a drawing as an SVG element that needs nothing from outside itself; one unit is one mm.
 */
public final class SvgPen {
    private final StringBuilder svg = new StringBuilder(4096);

    private SvgPen() {}

    public static String write(Drawing drawing) {
        SvgPen pen = new SvgPen();
        pen.open(drawing);
        drawing.marks().forEach(pen::mark);
        return pen.svg.append("</svg>").toString();
    }

    private void open(Drawing drawing) {
        String width = number(drawing.widthMm());
        String height = number(drawing.heightMm());
        String alt = escape(drawing.alt());
        svg.append(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\""
                        + alt
                        + "\" width=\""
                        + width
                        + "mm\" height=\""
                        + height
                        + "mm\" viewBox=\"0 0 "
                        + width
                        + " "
                        + height
                        + "\" font-family=\"'Source Sans 3', 'DejaVu Sans', sans-serif\"><title>"
                        + alt
                        + "</title>");
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            polyline(stroke.points(), stroke.line());
        } else if (mark instanceof Mark.Area area) {
            area(area);
        } else if (mark instanceof Mark.Circle circle) {
            svg.append(
                    "<circle cx=\""
                            + number(circle.centre().xMm())
                            + "\" cy=\""
                            + number(circle.centre().yMm())
                            + "\" r=\""
                            + number(circle.radiusMm())
                            + "\" "
                            + fill(circle.fill())
                            + " "
                            + line(circle.edge())
                            + "/>");
        } else if (mark instanceof Mark.Words words) {
            words(words);
        }
    }

    private void polyline(List<Point> points, Line line) {
        svg.append(
                "<polyline points=\"" + points(points) + "\" fill=\"none\" " + line(line) + "/>");
    }

    private void area(Mark.Area area) {
        String outline =
                "<polygon points=\"" + points(area.outline()) + "\" fill-rule=\"evenodd\" ";
        if (area.fill().isTone()) {
            svg.append(outline + fill(area.fill()) + " " + line(Line.NONE) + "/>");
        }
        if (area.fill().isRuled()) {
            Hatch.of(area).forEach(rule -> polyline(List.of(rule.from(), rule.to()), Line.FINE));
        }
        if (area.edge() != Line.NONE) {
            svg.append(outline + "fill=\"none\" " + line(area.edge()) + "/>");
        }
    }

    private void words(Mark.Words words) {
        String x = number(words.at().xMm());
        String y = number(words.at().yMm());
        svg.append(
                "<text x=\""
                        + x
                        + "\" y=\""
                        + y
                        + "\" font-size=\""
                        + number(words.sizePt() * Lettering.MM_PER_PT)
                        + "\"");
        if (words.weight() == Weight.STRONG) {
            svg.append(" font-weight=\"600\"");
        }
        switch (words.anchor()) {
            case START -> {}
            case MIDDLE -> svg.append(" text-anchor=\"middle\"");
            case END -> svg.append(" text-anchor=\"end\"");
        }
        if (words.turnDeg() != 0) {
            svg.append(
                    " transform=\"rotate(" + number(-words.turnDeg()) + " " + x + " " + y + ")\"");
        }
        if (!words.text().isBlank()) {
            // Whatever face the reader's machine has, the words keep the room that was reckoned
            // with.
            svg.append(
                    " textLength=\""
                            + number(words.widthMm())
                            + "\" lengthAdjust=\"spacingAndGlyphs\"");
        }
        svg.append(">" + escape(words.text()) + "</text>");
    }

    private static String points(List<Point> points) {
        return points.stream()
                .map(p -> number(p.xMm()) + "," + number(p.yMm()))
                .collect(Collectors.joining(" "));
    }

    private static String fill(Fill fill) {
        return fill.isTone()
                ? "fill=\"" + String.format(Locale.ROOT, "#%1$02x%1$02x%1$02x", fill.grey()) + "\""
                : "fill=\"none\"";
    }

    private static String line(Line line) {
        if (line == Line.NONE) {
            return "stroke=\"none\"";
        }
        String dashes =
                line.dashesMm().isEmpty()
                        ? ""
                        : " stroke-dasharray=\""
                                + line.dashesMm().stream()
                                        .map(SvgPen::number)
                                        .collect(Collectors.joining(" "))
                                + "\"";
        return "stroke=\"#000\" stroke-width=\"" + number(line.widthMm()) + "\"" + dashes;
    }

    /** Micrometres are enough, in plain notation. */
    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).setScale(3, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Also replaces what XML 1.0 cannot hold (section 2.2, Char). */
    private static String escape(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints()
                .forEach(
                        c -> {
                            switch (c) {
                                case '<' -> out.append("&lt;");
                                case '>' -> out.append("&gt;");
                                case '&' -> out.append("&amp;");
                                case '"' -> out.append("&quot;");
                                case '\'' -> out.append("&#39;");
                                default -> out.appendCodePoint(isXml(c) ? c : 0xFFFD);
                            }
                        });
        return out.toString();
    }

    private static boolean isXml(int c) {
        boolean space = c == '\t' || c == '\n' || c == '\r';
        boolean basic = (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD);
        return space || basic || c >= 0x10000;
    }
}
