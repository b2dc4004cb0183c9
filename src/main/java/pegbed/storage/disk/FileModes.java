package pegbed.storage.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;

/** Who may read and write a file, on disks that know of it (POSIX); on others nothing is done. */
final class FileModes {
    private FileModes() {}

    /**
     * With which a file is made that nobody may look into whom another file keeps out; none if there is no such file.
     */
    static FileAttribute<?>[] of(Path other) throws IOException {
        return Files.exists(other) && view(other) != null
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(Files.getPosixFilePermissions(other))}
                : new FileAttribute<?>[0];
    }

    /**
     * Gives a file the permissions of another, its access control list, and its owner and group where this program may.
     * Nothing if there is no other.
     *
     * @throws IOException if the permissions can't be set
     */
    static void copy(Path from, Path to) throws IOException {
        if (!Files.exists(from)) {
            return;
        }
        copyList(from, to);
        if (view(from) == null) {
            return;
        }
        PosixFileAttributes wanted = view(from).readAttributes();
        PosixFileAttributeView view = view(to);
        PosixFileAttributes now = view.readAttributes();
        try {
            if (!now.group().equals(wanted.group())) {
                view.setGroup(wanted.group());
            }
            if (!now.owner().equals(wanted.owner())) {
                view.setOwner(wanted.owner());
            }
        } catch (IOException notOurs) {
            // Only the system's own account may give files away.
        }
        view.setPermissions(wanted.permissions());
        PosixLists.copy(from, to);
    }

    /** Gives a file the access control list of another, where the Java runtime knows of one (NTFS, NFSv4 on some). */
    private static void copyList(Path from, Path to) throws IOException {
        AclFileAttributeView wanted = Files.getFileAttributeView(from, AclFileAttributeView.class);
        if (wanted != null) {
            Files.getFileAttributeView(to, AclFileAttributeView.class).setAcl(wanted.getAcl());
        }
    }

    private static PosixFileAttributeView view(Path path) {
        return Files.getFileAttributeView(path, PosixFileAttributeView.class);
    }
}
