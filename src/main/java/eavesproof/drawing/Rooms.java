package eavesproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which places of a drawing are taken, so that no lettering comes to lie on anything. */
final class Rooms {
    /** An upright box on the paper, mm. */
    record Box(double left, double top, double right, double bottom) {
        boolean meets(Box other) {
            return left < other.right
                    && other.left < right
                    && top < other.bottom
                    && other.top < bottom;
        }
    }

    private final List<Box> taken = new ArrayList<>();
    private final double leftMm;
    private final double rightMm;

    Rooms(double leftMm, double rightMm) {
        this.leftMm = leftMm;
        this.rightMm = rightMm;
    }

    static Box of(Mark.Words words, double clearMm) {
        List<Point> room = words.room(clearMm);
        return new Box(
                room.stream().mapToDouble(Point::xMm).min().orElseThrow(),
                room.stream().mapToDouble(Point::yMm).min().orElseThrow(),
                room.stream().mapToDouble(Point::xMm).max().orElseThrow(),
                room.stream().mapToDouble(Point::yMm).max().orElseThrow());
    }

    void take(Box box) {
        taken.add(box);
    }

    void takeUpright(double xMm, double topMm, double bottomMm) {
        take(new Box(xMm - 0.3, topMm, xMm + 0.3, bottomMm));
    }

    private boolean free(Box box) {
        return box.left() >= leftMm
                && box.right() <= rightMm
                && taken.stream().noneMatch(box::meets);
    }

    /** The words at the first of the places that is free, which is taken by it. */
    Optional<Mark.Words> place(Mark.Words words, double clearMm, double... shiftsMm) {
        for (double shift : shiftsMm) {
            Mark.Words there =
                    new Mark.Words(
                            new Point(words.at().xMm() + shift, words.at().yMm()),
                            words.text(),
                            words.anchor(),
                            words.sizePt(),
                            words.weight(),
                            words.turnDeg());
            Box box = of(there, clearMm);
            if (free(box)) {
                take(box);
                return Optional.of(there);
            }
        }
        return Optional.empty();
    }
}
