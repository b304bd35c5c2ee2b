package growingon.write;

import growingon.write.folder.FileList;
import growingon.write.folder.FolderGuard;
import growingon.write.folder.FolderSwap;
import growingon.write.folder.Placing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A report of a few small texts, for tests that are about its folder only. */
public final class LightReport {
  static final String PLAN = "light";

  private LightReport() {}

  public static List<String> write(Placing placing) throws IOException {
    return write(placing, PLAN, "");
  }

  /**
   * Writes it.
   *
   * @param reader for whom it is, if it is an edition
   */
  public static List<String> write(Placing placing, String plan, String reader) throws IOException {
    return new FolderSwap(placing, new FolderGuard(placing, plan, reader))
        .replaceWith(fresh -> fill(fresh, plan, reader));
  }

  private static void fill(Path fresh, String plan, String reader) throws IOException {
    Files.createDirectory(fresh.resolve("charts"));
    Files.createDirectory(fresh.resolve("tables"));
    Files.writeString(fresh.resolve("plan.xlsx"), "a workbook");
    Files.writeString(fresh.resolve("report.html"), "a page");
    Files.writeString(fresh.resolve("charts/cash.png"), "a chart");
    Files.writeString(fresh.resolve("tables/cash.csv"), "a table");
    Files.writeString(
        fresh.resolve(FileList.FIGURES),
        """
        {
          "made by" : "growing-on planner",
          "for" : "%s",
          "plan" : "%s",
          "files" : { },
          "tables" : { "cash" : { } }
        }
        """
            .formatted(reader, plan));
    FileList.seal(fresh);
  }
}
