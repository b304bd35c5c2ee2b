package growingon.write.folder;

import growingon.write.folder.FileList.Stamp;
import growingon.write.folder.Moves.Move;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Replaces a report: the new one is put together in a {@link SwapPlace} beside the folder, the
 * folder is laid aside there by a first rename, what is not the program's goes over to the new
 * report, and that gets the folder's name by a second rename. Of the report before only those files
 * are deleted that the program wrote and nobody has changed since.
 *
 * <p>What stops this before the second rename leaves all as it was, at once or, where the program
 * was killed, at its next start. After it the run is done.
 */
public final class FolderSwap {
  private static final String PUT_ASIDE = "put aside";

  private final Placing placing;
  private final FolderGuard guard;
  private final Path folder;

  /** Fills an empty folder. */
  public interface Filling {
    void fill(Path empty) throws IOException;
  }

  public FolderSwap(Placing placing, FolderGuard guard) throws IOException {
    guard.check();
    this.placing = placing;
    this.guard = guard;
    this.folder = FolderGuard.real(placing.folder());
  }

  /** Replaces it; gives what a user should know of it. */
  public List<String> replaceWith(Filling filling) throws IOException {
    FolderLock lock = lock();
    try {
      for (SwapPlace left : SwapPlace.of(folder)) {
        left.putBack();
      }
      guard.check();
      return swap(filling, SwapPlace.make(folder));
    } finally {
      lock.close();
    }
  }

  private FolderLock lock() throws IOException {
    try {
      Files.createDirectories(folder.getParent());
      return FolderLock.take(folder);
    } catch (FileSystemException denied) {
      String why = Objects.requireNonNullElse(denied.getReason(), "no permission");
      throw guard.no(
          "cannot be made or replaced (%s)".formatted(why), "name another folder with --out");
    }
  }

  private List<String> swap(Filling filling, SwapPlace place) throws IOException {
    FileList before = FileList.NONE;
    Map<Path, Stamp> ours = Map.of();
    List<Path> aside = List.of();
    try {
      filling.fill(Files.createDirectory(place.fresh()));
      placing.watch().accept(Stage.WRITTEN);
      if (Files.exists(folder)) {
        before = FileList.read(folder).orElse(FileList.NONE);
        ours = before.unchanged(folder);
        layAside(place);
        aside = carryOver(place, before, ours);
      }
      Files.move(place.fresh(), folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException | RuntimeException failed) {
      putBack(place, failed);
      throw failed;
    }
    placing.watch().accept(Stage.IN_PLACE);
    boolean gone = place.clear(ours);
    placing.watch().accept(Stage.CLEARED);
    return notices(aside, gone, place);
  }

  /** The first rename. From now on nobody can put anything into the report before. */
  private void layAside(SwapPlace place) throws IOException {
    try {
      Files.move(folder, place.old(), StandardCopyOption.ATOMIC_MOVE);
    } catch (FileSystemException held) {
      throw new FolderInUse(placing.folder(), held);
    }
    placing.watch().accept(Stage.LAID_ASIDE);
  }

  /** Gives what was put aside, seen from the folder. */
  private List<Path> carryOver(SwapPlace place, FileList before, Map<Path, Stamp> ours)
      throws IOException {
    List<Path> aside = new ArrayList<>();
    List<Move> moves = moves(place, before, ours, aside);
    place.moves().note(moves);
    for (Move move : moves) {
      move.make();
    }
    placing.watch().accept(Stage.CARRIED_OVER);
    return aside;
  }

  private void putBack(SwapPlace place, Exception failed) throws IOException {
    Optional<Path> back;
    try {
      back = place.putBack();
    } catch (IOException again) {
      failed.addSuppressed(again);
      throw new NotPutBack(placing.folder(), place.old(), failed);
    }
    if (back.isPresent() && !back.get().equals(folder)) { // Somebody has made the folder anew.
      throw new NotPutBack(placing.folder(), back.get(), failed);
    }
  }

  /** Where everything goes that is not the program's; what cannot keep its name is put aside. */
  private List<Move> moves(
      SwapPlace place, FileList before, Map<Path, Stamp> ours, List<Path> aside)
      throws IOException {
    Path box = box(place);
    List<Move> moves = new ArrayList<>();
    Predicate<Path> shared =
        name -> before.namesFolder(name) || isFolder(place.fresh().resolve(name));
    for (Path each : Strangers.in(place.old(), ours, shared)) {
      boolean keepsName = !before.names(each) && isFree(place.fresh().resolve(each));
      Path to = keepsName ? each : box.resolve(each);
      moves.add(new Move(place.old().resolve(each), place.fresh().resolve(to)));
      if (!keepsName) {
        aside.add(to);
      }
    }
    return moves;
  }

  /** A folder for what is put aside, of a name that neither report has yet. */
  private static Path box(SwapPlace place) {
    Path box = Path.of(PUT_ASIDE);
    for (int number = 2; !isFree(place.old().resolve(box)); number++) {
      box = Path.of(PUT_ASIDE + " " + number);
    }
    return box;
  }

  private static boolean isFree(Path path) {
    return !Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  private static boolean isFolder(Path path) {
    return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
  }

  private List<String> notices(List<Path> aside, boolean gone, SwapPlace place) {
    List<String> notices = new ArrayList<>();
    if (!aside.isEmpty()) {
      notices.add(
          "Put aside, because changed since the last run or in the way of the new report: %s."
              .formatted(
                  FolderGuard.some(
                      aside.stream()
                          .map(each -> placing.folder().resolve(each).toString())
                          .toList())));
    }
    if (!gone) {
      notices.add(
          "Part of the report before could not be deleted: it is in %s, in the way of nothing."
                  .formatted(place.path())
              + " Delete it when no other program uses it.");
    }
    return notices;
  }
}
