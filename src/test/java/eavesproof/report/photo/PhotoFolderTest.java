package eavesproof.report.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.report.Photo;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhotoFolderTest {
    private static final String WHERE = "GPS 40.1S 175.1E";

    @TempDir private Path outside;

    private Path job() throws IOException {
        return Files.createDirectories(outside.resolve("job"));
    }

    /** First the corner where the first pixel goes, then that of the last one of the first row. */
    @ParameterizedTest
    @CsvSource({
        "1,left top,right top",
        "2,right top,left top",
        "3,right bottom,left bottom",
        "4,left bottom,right bottom",
        "5,left top,left bottom",
        "6,right top,right bottom",
        "7,right bottom,right top",
        "8,left bottom,left top"
    })
    void aPhotographIsTurnedAsTheCameraWasHeld(int orientation, String red, String blue)
            throws Exception {
        byte[] file = exif(jpeg(corners(64, 32)), orientation, true);
        BufferedImage print = image(print("p.jpg", file));
        assertEquals(orientation < 5 ? 64 : 32, print.getWidth());
        assertEquals(Color.RED, corner(print, red), "first pixel");
        assertEquals(Color.BLUE, corner(print, blue), "end of the first row");
    }

    @Test
    void aFileThatIsNamedIsReadWhereverALinkLeadsAndAnythingElseIsToldByItsReason()
            throws Exception {
        Path file = Files.write(outside.resolve("hand.jpg"), exif(jpeg(corners(64, 32)), 6, true));
        Path link = Files.createSymbolicLink(job().resolve("link.jpg"), file);
        Photo.Print print = (Photo.Print) PhotoFolder.readFile(link);
        assertEquals(32, print.widthPx(), "upright");
        assertFalse(latin(print.jpeg()).contains(WHERE));
        Photo.Missing text =
                (Photo.Missing)
                        PhotoFolder.readFile(Files.writeString(outside.resolve("x.png"), "hand"));
        assertEquals("is neither JPEG nor PNG", text.why());
        assertEquals("is no file", ((Photo.Missing) PhotoFolder.readFile(job())).why());
    }

    @Test
    void eitherOrderOfBytesIsUnderstood() throws Exception {
        BufferedImage print = image(print("p.jpg", exif(jpeg(corners(64, 32)), 6, false)));
        assertEquals(Color.RED, corner(print, "right top"));
    }

    @Test
    void whereItWasTakenDoesNotReachThePaper() throws Exception {
        byte[] file = exif(jpeg(corners(64, 32)), 1, true);
        assertTrue(latin(file).contains(WHERE));
        Photo.Print print = print("p.jpg", file);
        assertFalse(latin(print.jpeg()).contains(WHERE));
        assertFalse(latin(print.jpeg()).contains("Exif"));
    }

    @Test
    void whereItWasTakenIsReadOnlyIfAskedFor() throws Exception {
        byte[] jpeg = jpeg(corners(64, 32));
        // 41 degrees 17 minutes 11.4 seconds are 41.286500; 174 and 46 and 34.2 are 174.776167.
        byte[] file = located(jpeg, 'S', new int[] {41, 17, 114}, 'E', new int[] {174, 46, 342});
        Files.write(job().resolve("g.jpg"), file);
        Files.write(job().resolve("n.jpg"), jpeg);
        assertEquals(
                Optional.of("41.28650° S, 174.77617° E"),
                ((Photo.Print) new PhotoFolder(job(), true).read("g.jpg")).place());
        assertEquals(
                Optional.of(""),
                ((Photo.Print) new PhotoFolder(job(), true).read("n.jpg")).place());
        assertEquals(
                Optional.empty(),
                ((Photo.Print) new PhotoFolder(job(), false).read("g.jpg")).place());
    }

    @Test
    void aPlaceThatCannotBeIsNone() throws Exception {
        byte[] jpeg = jpeg(corners(64, 32));
        int[] here = {41, 17, 114};
        assertEquals(Optional.empty(), Whereabouts.of(located(jpeg, 'X', here, 'E', here)));
        assertEquals(
                Optional.empty(),
                Whereabouts.of(located(jpeg, 'S', new int[] {91, 0, 0}, 'E', here)));
        byte[] whole = located(jpeg, 'S', here, 'E', here);
        for (int cut = 0; cut < 140; cut++) {
            byte[] broken = Arrays.copyOf(whole, cut);
            assertEquals(Optional.empty(), Whereabouts.of(broken), "cut at " + cut);
        }
    }

    /** Degrees, minutes and tenths of seconds, in a directory of their own. */
    private static byte[] located(byte[] jpeg, char ns, int[] north, char ew, int[] east) {
        ByteBuffer segment = ByteBuffer.allocate(2 + 2 + 6 + 8 + 18 + 54 + 48);
        segment.putShort((short) 0xFFE1).putShort((short) (segment.capacity() - 2));
        segment.put("Exif\0\0MM".getBytes(StandardCharsets.US_ASCII));
        segment.putShort((short) 42).putInt(8);
        segment.putShort((short) 1);
        segment.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(26).putInt(0);
        segment.putShort((short) 4);
        segment.putShort((short) 1).putShort((short) 2).putInt(2).putInt(ns << 24);
        segment.putShort((short) 2).putShort((short) 5).putInt(3).putInt(80);
        segment.putShort((short) 3).putShort((short) 2).putInt(2).putInt(ew << 24);
        segment.putShort((short) 4).putShort((short) 5).putInt(3).putInt(104);
        segment.putInt(0);
        for (int[] angle : List.of(north, east)) {
            segment.putInt(angle[0]).putInt(1).putInt(angle[1]).putInt(1);
            segment.putInt(angle[2]).putInt(10);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.writeBytes(segment.array());
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    @Test
    void theHashIsThatOfTheFileAsItLiesThere() throws Exception {
        byte[] file = exif(jpeg(corners(64, 32)), 1, true);
        assertEquals(
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file)),
                print("p.jpg", file).fileSha256());
    }

    @Test
    void aLargePhotographIsScaledAndASmallOneLeftAsItIs() throws Exception {
        Photo.Print large = print("l.jpg", jpeg(corners(4000, 3000)));
        assertEquals(1600, large.widthPx());
        assertEquals(1200, large.heightPx());
        assertEquals(64, print("s.jpg", jpeg(corners(64, 32))).widthPx());
    }

    @Test
    void aPngIsReadAndItsTransparencyIsWhite() throws Exception {
        BufferedImage clear = new BufferedImage(16, 16, BufferedImage.TYPE_INT_ARGB);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(clear, "png", out);
        assertEquals(Color.WHITE, corner(image(print("p.png", out.toByteArray())), "left top"));
    }

    @Test
    void theSameFileGivesTheSamePicture() throws Exception {
        byte[] file = jpeg(corners(3000, 2000));
        assertArrayEquals(print("a.jpg", file).jpeg(), print("b.jpg", file).jpeg());
    }

    @Test
    void nothingOutsideTheFolderIsRead() throws Exception {
        Files.write(outside.resolve("secret.jpg"), jpeg(corners(64, 32)));
        Files.createSymbolicLink(job().resolve("link.jpg"), outside.resolve("secret.jpg"));
        Files.createSymbolicLink(job().resolve("folder"), outside);
        assertEquals("lies outside the folder of the job record", missing("../secret.jpg"));
        assertEquals(
                "lies outside the folder of the job record",
                missing(outside.resolve("secret.jpg").toString()));
        assertEquals("leads out of the folder of the job record", missing("link.jpg"));
        assertEquals("leads out of the folder of the job record", missing("folder/secret.jpg"));
        assertEquals("is no file", missing("."));
    }

    @Test
    void aFileInAFolderBelowIsRead() throws Exception {
        Files.createDirectories(job().resolve("photos"));
        Files.write(job().resolve("photos/p.jpg"), jpeg(corners(64, 32)));
        assertTrue(
                new PhotoFolder(job(), false).read("photos/../photos/p.jpg")
                        instanceof Photo.Print);
    }

    @Test
    void whatCannotBeShownSaysWhy() throws Exception {
        assertEquals("is not there", missing("none.jpg"));
        assertEquals("is no name of a file", missing("a\0b.jpg"));
        assertEquals("is not named in the record", missing(null));
        Files.write(job().resolve("t.jpg"), "GIF89a".getBytes(StandardCharsets.US_ASCII));
        assertEquals("is neither JPEG nor PNG", missing("t.jpg"));
        byte[] jpeg = jpeg(corners(64, 32));
        Files.write(job().resolve("half.jpg"), Arrays.copyOf(jpeg, 100));
        assertEquals("is broken, or of a kind of JPEG that cannot be read", missing("half.jpg"));
        Files.write(job().resolve("empty.jpg"), new byte[0]);
        assertEquals("is neither JPEG nor PNG", missing("empty.jpg"));
    }

    @Test
    void aPictureThatWouldFillTheMemoryIsRefusedBeforeItIsDecoded() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(corners(16, 16), "png", out);
        byte[] png = out.toByteArray();
        // Width and height in the header, with the checksum that belongs to them.
        ByteBuffer header = ByteBuffer.wrap(png);
        header.putInt(16, 25_000).putInt(20, 25_000);
        java.util.zip.CRC32 crc = new java.util.zip.CRC32();
        crc.update(png, 12, 17);
        header.putInt(29, (int) crc.getValue());
        Files.write(job().resolve("wide.png"), png);
        assertTrue(missing("wide.png").startsWith("has 25000 by 25000 pixels, more than"));
    }

    @Test
    void aFileThatIsTooLargeIsRefused() throws Exception {
        try (RandomAccessFile file =
                new RandomAccessFile(job().resolve("large.jpg").toFile(), "rw")) {
            file.setLength(PhotoFolder.LARGEST_BYTES + 1L);
        }
        assertEquals("is larger than 40 MB", missing("large.jpg"));
    }

    private Photo.Print print(String name, byte[] file) throws IOException {
        Files.write(job().resolve(name), file);
        return (Photo.Print) new PhotoFolder(job(), false).read(name);
    }

    private String missing(String name) throws IOException {
        return ((Photo.Missing) new PhotoFolder(job(), false).read(name)).why();
    }

    private static BufferedImage corners(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setColor(Color.RED);
        graphics.fillRect(0, 0, width / 4, height / 2);
        graphics.setColor(Color.BLUE);
        graphics.fillRect(width - width / 4, 0, width / 4, height / 2);
        graphics.dispose();
        return image;
    }

    private static Color corner(BufferedImage image, String which) {
        int x = which.startsWith("left") ? 2 : image.getWidth() - 3;
        int y = which.endsWith("top") ? 2 : image.getHeight() - 3;
        Color colour = new Color(image.getRGB(x, y));
        // A JPEG keeps a colour to some units only.
        return new Color(
                colour.getRed() > 127 ? 255 : 0,
                colour.getGreen() > 127 ? 255 : 0,
                colour.getBlue() > 127 ? 255 : 0);
    }

    private static BufferedImage image(Photo.Print print) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(print.jpeg()));
    }

    private static byte[] jpeg(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", out);
        return out.toByteArray();
    }

    /** The segment that a camera writes, with an orientation and some words behind it. */
    private static byte[] exif(byte[] jpeg, int orientation, boolean little) {
        byte[] words = WHERE.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer segment = ByteBuffer.allocate(2 + 2 + 6 + 8 + 2 + 12 + 4 + words.length);
        segment.putShort((short) 0xFFE1).putShort((short) (segment.capacity() - 2));
        segment.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        segment.order(little ? java.nio.ByteOrder.LITTLE_ENDIAN : java.nio.ByteOrder.BIG_ENDIAN);
        segment.put((little ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
        segment.putShort((short) 42).putInt(8);
        segment.putShort((short) 1);
        segment.putShort((short) 274).putShort((short) 3).putInt(1);
        segment.putShort((short) orientation).putShort((short) 0);
        segment.putInt(0).put(words);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.writeBytes(segment.array());
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static String latin(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
