package eavesproof.report;

import java.util.Optional;
import java.util.regex.Pattern;

/** What the paper can show of a photograph that the record names. */
public sealed interface Photo {
    Pattern SHA_256 = Pattern.compile("[0-9a-f]{64}");

    /**
     * A picture made anew from the pixels of the file, so that it holds nothing else that stood in
     * the file, such as where it was taken.
     *
     * @param fileSha256 of the file as it lies beside the record
     * @param jpeg upright and of a size for paper
     * @param place where it was taken, as the file says; only if somebody asked to print that, and
     *     then "" where the file does not say
     */
    @SuppressWarnings("ArrayRecordComponent") // a picture is bytes
    record Print(String fileSha256, byte[] jpeg, int widthPx, int heightPx, Optional<String> place)
            implements Photo {
        public Print(String fileSha256, byte[] jpeg, int widthPx, int heightPx) {
            this(fileSha256, jpeg, widthPx, heightPx, Optional.empty());
        }

        public Print {
            if (!SHA_256.matcher(fileSha256).matches()) {
                throw new IllegalArgumentException("not a SHA-256: " + PlainText.line(fileSha256));
            }
            if (widthPx < 1 || heightPx < 1) {
                throw new IllegalArgumentException(
                        "a picture of " + widthPx + " by " + heightPx + " pixels");
            }
            jpeg = jpeg.clone();
            place = place.map(PlainText::line);
        }

        /** The same with where it was taken. */
        public Print at(Optional<String> where) {
            return new Print(fileSha256, jpeg, widthPx, heightPx, where);
        }

        @Override
        public byte[] jpeg() {
            return jpeg.clone();
        }
    }

    /**
     * A photograph that cannot be shown.
     *
     * @param why as the end of a sentence that begins with its file
     * @param fileSha256 of the file, where it could be read at all
     */
    record Missing(String why, Optional<String> fileSha256) implements Photo {
        public Missing {
            why = PlainText.line(why);
        }
    }
}
