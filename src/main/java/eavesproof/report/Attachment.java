package eavesproof.report;

import java.util.regex.Pattern;

/** A file that travels inside the document; compared by identity of its bytes, copied both ways. */
@SuppressWarnings("ArrayRecordComponent") // a file is bytes
public record Attachment(String name, String mediaType, String description, byte[] content) {
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,99}");
    private static final Pattern MEDIA_TYPE = Pattern.compile("[a-z]+/[a-z0-9.+-]+");

    public Attachment {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("not a plain file name: " + PlainText.line(name));
        }
        if (!MEDIA_TYPE.matcher(mediaType).matches()) {
            throw new IllegalArgumentException("not a media type: " + PlainText.line(mediaType));
        }
        description = PlainText.line(description);
        content = content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }
}
