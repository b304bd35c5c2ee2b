package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** jobs.ics of the demonstration, read back by its library and by hand (RFC 5545). */
class JobsCalendarTest {
  @TempDir Path folder;

  private String calendar() throws IOException {
    GrowingOn program =
        new GrowingOn(
            Clock.fixed(Instant.parse("2026-11-03T08:00:00Z"), ZoneOffset.UTC), stage -> {});
    StringWriter err = new StringWriter();
    int code =
        Main.run(
            program,
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true),
            "plan",
            "plans/with-the-field-lot.json",
            "--draws",
            "0",
            "--out",
            folder.resolve("report").toString());
    assertThat(code).as(err.toString()).isZero();
    return Files.readString(folder.resolve("report/jobs.ics"), StandardCharsets.UTF_8);
  }

  /** Unfolded lines: one that begins with a blank goes on from the one above. */
  private static List<String> lines(String text) {
    return Arrays.asList(text.replaceAll("\r\n[ \t]", "").split("\r\n"));
  }

  @Test
  void calendarOfTheDemonstration_isValid_andHasJobsOrdersAndArrivals() throws IOException {
    String text = calendar();
    ICalendar read = Biweekly.parse(text).first();
    assertThat(read.validate(ICalVersion.V2_0).isEmpty()).isTrue();
    List<String> uids = read.getEvents().stream().map(event -> event.getUid().getValue()).toList();
    assertThat(uids).doesNotHaveDuplicates().anyMatch(uid -> uid.startsWith("arrival-"));
    assertThat(uids)
        .anyMatch(uid -> uid.startsWith("order-"))
        .anyMatch(uid -> uid.startsWith("jobs-"));
    List<String> lines = lines(text);
    assertThat(lines.stream().filter("BEGIN:VEVENT"::equals)).hasSize(read.getEvents().size());
    for (VEvent event : read.getEvents()) {
      assertThat(lines).contains("UID:" + event.getUid().getValue());
    }
    assertThat(lines)
        .filteredOn(line -> line.startsWith("DTSTAMP"))
        .containsOnly("DTSTAMP:20261103T000000Z");
    assertThat(lines)
        .filteredOn(line -> line.startsWith("DTSTART"))
        .allMatch(line -> line.matches("DTSTART;VALUE=DATE:202[67][0-9]{4}"));
  }
}
