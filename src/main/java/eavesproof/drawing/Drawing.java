package eavesproof.drawing;

import java.util.List;

/**
 * A drawing at the size at which it is printed.
 *
 * @param alt what the drawing shows, for those who cannot see it
 */
public record Drawing(double widthMm, double heightMm, String alt, List<Mark> marks) {
    public Drawing {
        if (!(widthMm > 0) || !(heightMm > 0) || widthMm > 2000 || heightMm > 2000) {
            throw new IllegalArgumentException(
                    "a drawing is from 0 to 2000 mm on each side, not "
                            + widthMm
                            + " by "
                            + heightMm);
        }
        if (alt.isBlank()) {
            throw new IllegalArgumentException("a drawing must say in words what it shows");
        }
        marks = List.copyOf(marks);
    }
}
