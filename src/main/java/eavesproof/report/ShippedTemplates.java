package eavesproof.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Whether templates are those that came with the program, byte for byte. They are held against what
 * lies inside the program, since a folder beside it can be written to.
 */
public final class ShippedTemplates {
    private static final List<String> NAMES =
            List.of("installer-record", "care-sheet", "rule-sheet");
    private static final String INSIDE = "/eavesproof/report-templates/";

    private ShippedTemplates() {}

    public static boolean are(Path folder) throws LayoutTrouble {
        Map<String, byte[]> files = TemplateIdentity.files(folder);
        for (String name : NAMES) {
            if (!files.isEmpty() && allInside(name, files)) {
                return true;
            }
        }
        return false;
    }

    private static boolean allInside(String name, Map<String, byte[]> files) throws LayoutTrouble {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            String path = INSIDE + name + "/" + file.getKey();
            try (InputStream in = ShippedTemplates.class.getResourceAsStream(path)) {
                if (in == null || !Arrays.equals(in.readAllBytes(), file.getValue())) {
                    return false;
                }
            } catch (IOException e) {
                throw new LayoutTrouble(path, 0, 0, "cannot be read out of the program", e);
            }
        }
        return true;
    }
}
