package eavesproof.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SrgbProfileTest {
    private static final ICC_ColorSpace OURS =
            new ICC_ColorSpace(ICC_Profile.getInstance(SrgbProfile.bytes()));

    @Test
    void itIsADisplayProfileOfThreeComponents() {
        assertEquals(ICC_Profile.CLASS_DISPLAY, OURS.getProfile().getProfileClass());
        assertEquals(3, OURS.getNumComponents());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 0 0", "1 1 1", "1 0 0", "0 1 0", "0 0 1", ".5 .5 .5", ".02 .7 .3"})
    void coloursComeOutAsInThePlatformsOwnSrgb(String colour) {
        String[] parts = colour.split(" ");
        float[] rgb = {
            Float.parseFloat(parts[0]), Float.parseFloat(parts[1]), Float.parseFloat(parts[2])
        };
        float[] expected = ColorSpace.getInstance(ColorSpace.CS_sRGB).toCIEXYZ(rgb);
        assertArrayEquals(expected, OURS.toCIEXYZ(rgb), 0.002f);
    }
}
