package eavesproof.check.drools;

import eavesproof.check.drools.LayerCompiler.Compiled;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Layers that this user's runs have compiled, so that the next one need not. One file for each: the
 * text that the classes were made from, and the classes. Whatever is wrong with it, the layer is
 * compiled as if there were none.
 */
final class KeptLayers {
    private final KeptFiles files;

    /**
     * @param named where to keep them; nothing is kept where none is named or it will not do
     */
    KeptLayers(Optional<PrivateFolder> named) {
        files = new KeptFiles(named, ".layer");
    }

    /** What was made from this very text, in just this state. */
    Optional<Compiled> find(LayerText text) {
        try {
            Optional<byte[]> kept = files.find(name(text));
            return kept.isEmpty() ? Optional.empty() : read(kept.get(), text);
        } catch (IOException | RuntimeException broken) {
            return Optional.empty();
        }
    }

    void keep(LayerText text, Compiled compiled) {
        files.keep(name(text), content(text, compiled));
    }

    private static String name(LayerText text) {
        String name = text.packageName();
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static byte[] content(LayerText text, Compiled compiled) {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(content)) {
            write(out, text.drl().getBytes(StandardCharsets.US_ASCII));
            write(out, compiled.modelClass().getBytes(StandardCharsets.US_ASCII));
            out.writeInt(compiled.classes().size());
            for (Map.Entry<String, byte[]> file : compiled.classes().entrySet()) {
                write(out, file.getKey().getBytes(StandardCharsets.US_ASCII));
                write(out, file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("memory could not be written to", e);
        }
        return content.toByteArray();
    }

    private static void write(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static Optional<Compiled> read(byte[] content, LayerText text) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(content));
        if (!ascii(bytes(in)).equals(text.drl())) {
            return Optional.empty();
        }
        String modelClass = ascii(bytes(in));
        SortedMap<String, byte[]> classes = new TreeMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            classes.put(ascii(bytes(in)), bytes(in));
        }
        boolean itsOwn =
                classes.keySet().stream()
                        .allMatch(
                                path -> path.startsWith(text.folder()) && path.endsWith(".class"));
        return itsOwn && in.read() < 0
                ? Optional.of(new Compiled(modelClass, classes))
                : Optional.empty();
    }

    private static byte[] bytes(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > in.available()) {
            throw new IOException("cut off");
        }
        return in.readNBytes(length);
    }

    private static String ascii(byte[] bytes) {
        return new String(bytes, StandardCharsets.US_ASCII);
    }
}
