package growingon.write.folder;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What a run moves within its {@link SwapPlace}, written down in the file {@code moves} before the
 * first is made, so that they can be undone after a run was killed in the midst of them. A line for
 * each: from and to, seen from the place and spelt as in a URI, in which any name can be written.
 */
final class Moves {
  private final Path place;
  private final Path note;

  Moves(Path place) {
    this.place = place;
    this.note = place.resolve("moves");
  }

  /** Something that is to be moved, nothing being at the place it goes to. */
  record Move(Path from, Path to) {
    void make() throws IOException {
      Files.createDirectories(to.getParent());
      Files.move(from, to);
    }

    Move back() {
      return new Move(to, from);
    }

    boolean canBeMade() {
      return Files.exists(from, LinkOption.NOFOLLOW_LINKS);
    }
  }

  boolean areNoted() {
    return Files.exists(note);
  }

  void note(List<Move> moves) throws IOException {
    List<String> lines =
        moves.stream().map(move -> text(move.from()) + " " + text(move.to())).toList();
    Files.write(note, lines);
  }

  /** Makes all back again that were made. */
  void undo() throws IOException {
    if (areNoted()) {
      List<Move> moves = new ArrayList<>();
      for (String line : Files.readAllLines(note)) {
        String[] texts = line.split(" ");
        moves.add(new Move(path(texts[0]), path(texts[1])));
      }
      Collections.reverse(moves);
      for (Move move : moves) {
        if (move.back().canBeMade()) {
          move.back().make();
        }
      }
    }
  }

  private String text(Path path) {
    return place.toUri().relativize(path.toUri()).getRawPath();
  }

  private Path path(String text) {
    return Path.of(place.toUri().resolve(URI.create(text)));
  }

  /** Deletes the note; whether it is gone. */
  boolean forget() {
    try {
      Files.deleteIfExists(note);
      return true;
    } catch (IOException left) {
      return false; // The caller says so, and where.
    }
  }
}
