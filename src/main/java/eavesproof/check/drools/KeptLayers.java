package eavesproof.check.drools;

import eavesproof.check.drools.LayerCompiler.Compiled;
import eavesproof.rules.Sha256;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Layers that this user's runs have compiled, so that the next one need not. One file for each: the
 * text that the classes were made from, the classes, and before them the digest of both. Whatever
 * is wrong with a file or with the folder, the layer is compiled as if there were none.
 */
final class KeptLayers {
    private static final String FORM = "eavesproof compiled layer 1\n";
    private static final String ENDING = ".layer";
    private static final int DIGEST = 64;
    private static final int MOST_BYTES = 8 * 1024 * 1024;
    private static final int MOST_FILES = 40;

    private final Optional<PrivateFolder> folder;

    /**
     * @param named where to keep them; nothing is kept where none is named or it will not do
     */
    KeptLayers(Optional<PrivateFolder> named) {
        folder = named.flatMap(PrivateFolder::ready);
    }

    /** What was made from this very text, in just this state. */
    Optional<Compiled> find(LayerText text) {
        if (folder.isEmpty()) {
            return Optional.empty();
        }
        Path file = file(folder.get(), text);
        try {
            if (!folder.get().holds(file) || Files.size(file) > MOST_BYTES) {
                return Optional.empty();
            }
            return read(Files.readAllBytes(file), text);
        } catch (IOException | RuntimeException broken) {
            return Optional.empty();
        }
    }

    /** Whole or not at all. */
    void keep(LayerText text, Compiled compiled) {
        if (folder.isEmpty()) {
            return;
        }
        try {
            byte[] content = content(text, compiled);
            if (content.length > MOST_BYTES) {
                return;
            }
            makeRoom(folder.get().path());
            Path part = Files.createTempFile(folder.get().path(), "new", ".part");
            try {
                Files.write(part, content);
                Files.move(part, file(folder.get(), text), StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException | UncheckedIOException cannotBeKept) {
            // Then the next run compiles again.
        }
    }

    private static Path file(PrivateFolder folder, LayerText text) {
        String name = text.packageName();
        return folder.path().resolve(name.substring(name.lastIndexOf('.') + 1) + ENDING);
    }

    /** The oldest go first, and with them what a run left half written. */
    private static void makeRoom(Path folder) throws IOException {
        record Aged(Path file, FileTime written) {}
        List<Aged> files = new ArrayList<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.toList()) {
                files.add(new Aged(file, Files.getLastModifiedTime(file)));
            }
        }
        files.sort(Comparator.comparing(Aged::written));
        for (Aged one : files.subList(0, Math.max(0, files.size() - MOST_FILES + 1))) {
            Files.deleteIfExists(one.file());
        }
    }

    private static byte[] content(LayerText text, Compiled compiled) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(body);
        write(out, text.drl().getBytes(StandardCharsets.US_ASCII));
        write(out, compiled.modelClass().getBytes(StandardCharsets.US_ASCII));
        out.writeInt(compiled.classes().size());
        for (Map.Entry<String, byte[]> file : compiled.classes().entrySet()) {
            write(out, file.getKey().getBytes(StandardCharsets.US_ASCII));
            write(out, file.getValue());
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.write(FORM.getBytes(StandardCharsets.US_ASCII));
        whole.write(Sha256.of(body.toByteArray()).getBytes(StandardCharsets.US_ASCII));
        whole.write(body.toByteArray());
        return whole.toByteArray();
    }

    private static void write(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static Optional<Compiled> read(byte[] whole, LayerText text) throws IOException {
        int start = FORM.length() + DIGEST;
        if (whole.length < start || !ascii(Arrays.copyOf(whole, FORM.length())).equals(FORM)) {
            return Optional.empty();
        }
        byte[] body = Arrays.copyOfRange(whole, start, whole.length);
        String digest = ascii(Arrays.copyOfRange(whole, FORM.length(), start));
        if (!Sha256.of(body).equals(digest)) {
            return Optional.empty();
        }
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(body));
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
