package eavesproof.app;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A file that is to be written: whole or not at all, and over an existing one only when asked.
 *
 * @param replace whether an existing file may go
 */
public record WholeFile(Path target, boolean replace) {

    /**
     * Refuses early what could not be written later, before any work is done for it.
     *
     * @throws IOException if the target exists and may not go, or is no plain file
     */
    public void check() throws IOException {
        if (!Files.exists(target)) {
            return;
        }
        // Moving a file over a folder or a device would take that away from others.
        if (!Files.isRegularFile(target)) {
            throw new FileSystemException(
                    target.toString(), null, "is no file that can be replaced");
        }
        if (!replace) {
            throw new FileAlreadyExistsException(target.toString());
        }
    }

    /**
     * Writes beside the target first, and moves that into place when it is complete.
     *
     * @throws IOException if it could not be written; the target is then what it was before
     */
    public void write(byte[] content) throws IOException {
        check();
        // What a link points at is replaced, and not the link.
        Path place = (Files.isSymbolicLink(target) ? target.toRealPath() : target).toAbsolutePath();
        Path part =
                place.resolveSibling(
                        "." + place.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try (FileChannel channel =
                    FileChannel.open(
                            part, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
                ByteBuffer left = ByteBuffer.wrap(content);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            move(part, place);
        } catch (FileSystemException e) {
            throw called(e, part, place);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Nobody has heard of the file beside it. */
    private FileSystemException called(FileSystemException e, Path part, Path place) {
        if (!part.toString().equals(e.getFile())) {
            return e;
        }
        if (e instanceof NoSuchFileException) {
            return new NoSuchFileException(String.valueOf(place.getParent()));
        }
        return e instanceof AccessDeniedException
                ? new AccessDeniedException(target.toString())
                : new FileSystemException(target.toString(), null, e.getReason());
    }

    private void move(Path part, Path place) throws IOException {
        if (!replace) {
            Files.move(part, place);
            return;
        }
        try {
            Files.move(part, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException other) {
            Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
