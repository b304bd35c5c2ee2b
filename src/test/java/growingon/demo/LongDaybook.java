package growingon.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Lays out a nursery with a long daybook, to measure by: {@code java -cp target/test-classes
 * growingon.demo.LongDaybook FOLDER} from the project's folder, then {@code review
 * FOLDER/plan.json}. Its 500 lots have 200 lines each over four seasons: 190 sales and 10 counts.
 */
public final class LongDaybook {
  private static final int LOTS = 500;
  private static final int SALES = 190;
  private static final int COUNTS = 10;
  private static final int PLANTS = 400;
  private static final LocalDate FIRST = LocalDate.of(2022, 11, 1);
  private static final int DAYS = 4 * 365;

  private LongDaybook() {}

  /** Writes it into the folder that is named. */
  public static void main(String... folder) throws IOException {
    Path nursery = Files.createDirectories(Path.of(folder[0]));
    Path demonstration = Path.of("demo-data", "two-seasons-on");
    try (Stream<Path> files = Files.list(demonstration)) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString();
        if (!List.of("stock.csv", "offers.csv", "daybook.csv").contains(name)) {
          Files.write(nursery.resolve(name), Files.readAllBytes(file));
        }
      }
    }
    Files.writeString(nursery.resolve("stock.csv"), stock());
    Files.writeString(nursery.resolve("daybook.csv"), daybook());
    Files.writeString(
        nursery.resolve("plan.json"),
        "{\"name\": \"long daybook\", \"first month\": \"2022-11\", \"seasons\": 5, \"draws\": 0}\n");
  }

  private static String stock() {
    StringBuilder text =
        new StringBuilder(
            "lot,species,form,quantity,arrived,counted,trunk mm,pot,potted,place,route\n");
    for (int lot = 0; lot < LOTS; lot++) {
      text.append(
          "lot %d,Field maple,container,%d,2020-03,2022-11,%d,7.5 litre,2021-03,East ground,"
              .formatted(lot, PLANTS, 16 + lot % 7));
      text.append("liners in pots\n");
    }
    return text.toString();
  }

  private static String daybook() {
    Random random = new Random(1);
    StringBuilder text = new StringBuilder("date,lot,what,quantity,grade,trunk mm,amount\n");
    for (int lot = 0; lot < LOTS; lot++) {
      int sold = 0;
      for (int line = 0; line < SALES + COUNTS; line++) {
        LocalDate day = FIRST.plusDays((long) line * DAYS / (SALES + COUNTS) + random.nextInt(3));
        boolean isCount = line % (SALES / COUNTS + 1) == SALES / COUNTS;
        sold += isCount ? 0 : 1;
        text.append(
            isCount
                ? "%s,lot %d,counted,%d,,%d,\n".formatted(day, lot, PLANTS - sold, 18 + line / 20)
                : "%s,lot %d,sold,1,started,,%d\n".formatted(day, lot, 40 + random.nextInt(9)));
      }
    }
    return text.toString();
  }
}
