package eavesproof.report.photo;

import eavesproof.report.Photo;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** The pixels of a photograph, upright and of a size for paper. */
final class Picture {
    static final int LONG_SIDE_PX = 1600;

    /** Within this a decoder needs no more than some hundred megabytes. */
    static final long MOST_PIXELS = 64_000_000;

    private static final int LONGEST_SIDE_PX = 30_000;
    private static final float QUALITY = 0.8f;

    private final BufferedImage pixels;

    private Picture(BufferedImage pixels) {
        this.pixels = pixels;
    }

    static Picture of(byte[] file) throws Unreadable {
        String format = format(file);
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try {
            BufferedImage decoded = decode(reader, file);
            return new Picture(Orientation.of(file).upright(scaled(flat(decoded))));
        } catch (IOException | RuntimeException e) {
            // Decoders meet a broken file with whatever exception comes first.
            throw new Unreadable("is broken, or of a kind of " + format + " that cannot be read");
        } finally {
            reader.dispose();
        }
    }

    /** By its first bytes; the ending of a name says nothing. */
    private static String format(byte[] file) throws Unreadable {
        if (startsWith(file, 0xFF, 0xD8, 0xFF)) {
            return "JPEG";
        }
        if (startsWith(file, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            return "PNG";
        }
        throw new Unreadable("is neither JPEG nor PNG");
    }

    private static boolean startsWith(byte[] file, int... first) {
        for (int i = 0; i < first.length; i++) {
            if (i >= file.length || (file[i] & 0xFF) != first[i]) {
                return false;
            }
        }
        return true;
    }

    private static BufferedImage decode(ImageReader reader, byte[] file)
            throws IOException, Unreadable {
        // What else stands in the file is not even looked at.
        reader.setInput(
                new MemoryCacheImageInputStream(new ByteArrayInputStream(file)), true, true);
        long width = reader.getWidth(0);
        long height = reader.getHeight(0);
        if (width * height > MOST_PIXELS || Math.max(width, height) > LONGEST_SIDE_PX) {
            throw new Unreadable(
                    "has "
                            + width
                            + " by "
                            + height
                            + " pixels, more than "
                            + MOST_PIXELS / 1_000_000
                            + " million or too long a side");
        }
        int every = (int) Math.max(1, Math.max(width, height) / (2 * LONG_SIDE_PX));
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(every, every, 0, 0);
        return reader.read(0, param);
    }

    /** On white, without transparency, in the colours of the screen. */
    private static BufferedImage flat(BufferedImage decoded) {
        return drawn(decoded, decoded.getWidth(), decoded.getHeight());
    }

    /** By halves first, since one step over more than half would leave pixels out. */
    private static BufferedImage scaled(BufferedImage from) {
        BufferedImage image = from;
        int side = Math.max(image.getWidth(), image.getHeight());
        while (side > 2 * LONG_SIDE_PX) {
            image = drawn(image, half(image.getWidth()), half(image.getHeight()));
            side = Math.max(image.getWidth(), image.getHeight());
        }
        return side <= LONG_SIDE_PX
                ? image
                : drawn(image, share(image.getWidth(), side), share(image.getHeight(), side));
    }

    private static int half(int px) {
        return Math.max(1, px / 2);
    }

    private static int share(int px, int side) {
        return Math.max(1, (px * LONG_SIDE_PX + side / 2) / side);
    }

    private static BufferedImage drawn(BufferedImage from, int width, int height) {
        BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = to.createGraphics();
        graphics.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(from, 0, 0, width, height, Color.WHITE, null);
        graphics.dispose();
        return to;
    }

    Photo.Print print(String fileSha256) {
        return new Photo.Print(fileSha256, jpeg(), pixels.getWidth(), pixels.getHeight());
    }

    private byte[] jpeg() {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("JPEG").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(pixels, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException("memory could not be written to", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
