package eavesproof.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Paints a drawing on a Graphics2D whose unit is one mm, as vectors and as real text. */
public final class Java2DPen {
    private static final Map<Face, Font> FONTS = new EnumMap<>(Face.class);

    private final Graphics2D paper;

    private Java2DPen(Graphics2D paper) {
        this.paper = paper;
    }

    public static void paint(Drawing drawing, Graphics2D paper) {
        Java2DPen pen = new Java2DPen(paper);
        drawing.marks().forEach(pen::mark);
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            draw(path(stroke.points(), false), stroke.line());
        } else if (mark instanceof Mark.Area area) {
            Shape outline = path(area.outline(), true);
            fill(outline, area.fill());
            if (area.fill().isRuled()) {
                Hatch.of(area).forEach(this::rule);
            }
            draw(outline, area.edge());
        } else if (mark instanceof Mark.Circle circle) {
            double r = circle.radiusMm();
            Shape outline =
                    new Ellipse2D.Double(
                            circle.centre().xMm() - r, circle.centre().yMm() - r, 2 * r, 2 * r);
            fill(outline, circle.fill());
            draw(outline, circle.edge());
        } else if (mark instanceof Mark.Words words) {
            words(words);
        }
    }

    private void rule(Hatch.Rule rule) {
        draw(
                new Line2D.Double(
                        rule.from().xMm(), rule.from().yMm(), rule.to().xMm(), rule.to().yMm()),
                Line.FINE);
    }

    private void draw(Shape shape, Line line) {
        if (line == Line.NONE) {
            return;
        }
        paper.setColor(Color.BLACK);
        paper.setStroke(stroke(line));
        paper.draw(shape);
    }

    private void fill(Shape shape, Fill fill) {
        if (fill.isTone()) {
            paper.setColor(new Color(fill.grey(), fill.grey(), fill.grey()));
            paper.fill(shape);
        }
    }

    private void words(Mark.Words words) {
        AffineTransform before = paper.getTransform();
        paper.translate(words.at().xMm(), words.at().yMm());
        paper.rotate(StrictMath.toRadians(-words.turnDeg()));
        paper.setColor(Color.BLACK);
        double x = -words.anchor().share() * words.widthMm();
        for (Lettering.Piece piece :
                Lettering.pieces(words.text(), words.sizePt(), words.weight())) {
            paper.setFont(
                    font(piece.face()).deriveFont((float) (words.sizePt() * Lettering.MM_PER_PT)));
            paper.drawString(piece.text(), (float) x, 0f);
            x += piece.widthMm();
        }
        paper.setTransform(before);
    }

    private static Path2D path(List<Point> points, boolean closed) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        path.moveTo(points.get(0).xMm(), points.get(0).yMm());
        points.stream().skip(1).forEach(p -> path.lineTo(p.xMm(), p.yMm()));
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private static BasicStroke stroke(Line line) {
        float[] dashes = new float[line.dashesMm().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = line.dashesMm().get(i).floatValue();
        }
        float width = (float) line.widthMm();
        return dashes.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER)
                : new BasicStroke(
                        width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0);
    }

    private static Font font(Face face) {
        synchronized (FONTS) {
            return FONTS.computeIfAbsent(face, Java2DPen::load);
        }
    }

    private static Font load(Face face) {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(face.bytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("a bundled font cannot be read", e);
        }
    }
}
