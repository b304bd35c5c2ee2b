package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.CalendarComponent;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** jobs.ics of the demonstration, read back by its library, by another and by hand (RFC 5545). */
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

  @Test
  void order_saysHowManyOfWhichSize() throws IOException {
    assertThat(lines(calendar()))
        .filteredOn(line -> line.matches("SUMMARY:Order .*\\\\,.*"))
        .isNotEmpty()
        .allMatch(
            line ->
                line.matches(
                    "SUMMARY:Order (?:1 pack|(?!1 )[0-9]+ packs) of [0-9.]*[1-9]0* \\p{L}+\\\\, .+"
                        + "|SUMMARY:Order [0-9]+ \\p{L}+\\\\, .+"));
  }

  /** Another library's parser and its own check against RFC 5545, on the same text. */
  @Test
  void calendarOfTheDemonstration_readByAnotherParser_isValidAndSaysTheSame() throws Exception {
    String text = calendar();
    Calendar read = new CalendarBuilder().build(new StringReader(text));
    ValidationResult found = read.validate();
    assertThat(found.getEntries()).isEmpty();
    Map<String, String> events = new TreeMap<>();
    Biweekly.parse(text)
        .first()
        .getEvents()
        .forEach(
            event ->
                events.put(
                    event.getUid().getValue(),
                    "%tF %s %s"
                        .formatted(
                            event.getDateStart().getValue(),
                            event.getSummary().getValue(),
                            event.getDescription() == null
                                ? ""
                                : event.getDescription().getValue())));
    Map<String, String> others = new TreeMap<>();
    read.getComponents(Component.VEVENT)
        .forEach(
            event ->
                others.put(
                    value(event, Property.UID),
                    "%s %s %s"
                        .formatted(
                            LocalDate.parse(
                                value(event, Property.DTSTART), DateTimeFormatter.BASIC_ISO_DATE),
                            value(event, Property.SUMMARY),
                            value(event, Property.DESCRIPTION))));
    assertThat(others).isEqualTo(events).hasSizeGreaterThan(10);
  }

  private static String value(CalendarComponent event, String property) {
    return event.getProperty(property).map(Property::getValue).orElse("");
  }
}
