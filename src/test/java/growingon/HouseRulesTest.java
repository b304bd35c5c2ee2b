package growingon;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Which package may use which, and why; how long a method and a file, how full a folder may be. */
class HouseRulesTest {
  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("growingon");

  private record Room(String name, List<String> mayUse, String reason) {}

  private static final List<Room> ROOMS =
      List.of(
          new Room("problem", List.of(), "every package speaks of problems, so it knows none"),
          new Room("nursery", List.of(), "the domain is the ground floor"),
          new Room(
              "nursery.library",
              List.of("nursery"),
              "what is known of species is part of the domain, but a species knows no library:"
                  + " only who reads, lays out or explains species does"),
          new Room(
              "load.own",
              List.of("nursery", "nursery.library"),
              "a list of the grower's own is read before anything of a nursery is known"),
          new Room(
              "load",
              List.of("nursery", "nursery.library", "load.own"),
              "reading knows the domain, not what becomes of it"),
          new Room("growth", List.of("nursery"), "growth laws are mathematics over their data"),
          new Room("project", List.of("nursery", "growth"), "the projection knows no money"),
          new Room(
              "whole",
              List.of("nursery", "project"),
              "plants are made whole in one place, of which money and chance know nothing"),
          new Room("money", List.of("nursery", "project"), "accounts book what was projected"),
          new Room(
              "chance",
              List.of("nursery", "project", "money"),
              "chances run the projection and its accounts many times"),
          new Room(
              "review",
              List.of("nursery", "project", "whole", "money", "chance"),
              "a review runs the projection from what is there and weighs it by accounts and draws"),
          new Room(
              "buying",
              List.of("nursery", "project", "money", "chance"),
              "what to buy is found by running the plan's own engine"),
          new Room(
              "fit",
              List.of(
                  "nursery",
                  "nursery.library",
                  "growth",
                  "project",
                  "whole",
                  "money",
                  "chance",
                  "review"),
              "assumptions are learnt from the projection of what the books say, and held against the"
                  + " library"),
          new Room(
              "plan",
              List.of("nursery", "project", "money", "chance"),
              "a plan is worked out once for all who tell of it"),
          new Room(
              "report",
              List.of(
                  "nursery",
                  "nursery.library",
                  "growth",
                  "project",
                  "whole",
                  "money",
                  "chance",
                  "plan",
                  "buying",
                  "review",
                  "fit"),
              "a report describes results and knows no file format"),
          new Room("write", List.of("report"), "writing formats a report and reckons nothing"),
          new Room(
              "start",
              List.of("nursery", "nursery.library", "load", "report"),
              "a folder to type over has the headings that are read, and is described, not written"));

  @TestFactory
  Stream<DynamicTest> package_usesOnlyItsNeighbours() {
    return ROOMS.stream().map(room -> DynamicTest.dynamicTest(room.name(), () -> check(room)));
  }

  private static void check(Room room) {
    List<String> allowed = new ArrayList<>();
    allowed.add("growingon." + room.name());
    allowed.add("growingon.problem");
    room.mayUse().forEach(name -> allowed.add("growingon." + name));
    noClasses()
        .that(
            com.tngtech.archunit.base.DescribedPredicate.describe(
                "live in " + room.name(),
                (JavaClass user) -> roomOf(user).equals("growingon." + room.name())))
        .should()
        .dependOnClassesThat(
            com.tngtech.archunit.base.DescribedPredicate.describe(
                "live in another room of the house",
                (JavaClass used) ->
                    used.getPackageName().startsWith("growingon.")
                        && !isHowToWrite(used)
                        && !allowed.contains(roomOf(used))))
        .because(room.reason())
        .check(HOUSE);
  }

  /** How a nursery wants its numbers written is an argument of all who write some. */
  private static boolean isHowToWrite(JavaClass used) {
    return used.getName().startsWith("growingon.nursery.number.Writing");
  }

  /** The room that a class lives in, whatever its sub-package: write of write.chart. */
  private static String roomOf(JavaClass used) {
    return ROOMS.stream()
        .map(room -> "growingon." + room.name())
        .filter(
            room ->
                used.getPackageName().equals(room) || used.getPackageName().startsWith(room + "."))
        .max(Comparator.comparingInt(String::length))
        .orElse(used.getPackageName());
  }

  /** A house of several rooms, the sub-packages, and those that others may go into. */
  private record Inside(String house, List<String> doors, String reason) {}

  private static final List<Inside> HOUSES =
      List.of(
          new Inside(
              "write",
              List.of("", "folder", "text"),
              "a report is handed over at ReportFolder; how it is drawn and laid out is its own"),
          new Inside(
              "problem",
              List.of("", "advice"),
              "a problem is data; what is said of it is put together in advice, by its own words"),
          new Inside(
              "report",
              List.of(
                  "model",
                  "text",
                  "plan",
                  "plan.space",
                  "plan.supply",
                  "edition",
                  "review",
                  "compare",
                  "quick",
                  "buying",
                  "fit"),
              "who makes a report takes the room of a command, who writes one its model;"
                  + " how tables, sentences and charts of a plan come about is its own"),
          new Inside(
              "load",
              List.of("", "quick"),
              "a path goes in at Loader and inputs or problems come out, and the lines of a quick"
                  + " sheet are the same where one is started; cells and rows are its own"),
          new Inside(
              "load.own",
              List.of("", "sheet", "heading", "lot", "row", "usual", "question", "account"),
              "a sheet goes in and lots, questions and an account come out; how words and sizes are"
                  + " understood is its own"),
          new Inside(
              "project",
              List.of("", "history", "known", "need", "pot", "slice", "lot"),
              "what is known goes in and histories come out; when a step is due is its own"),
          new Inside(
              "fit",
              List.of("", "past", "evidence", "value", "score"),
              "records go in and values come out; how they are learnt is its own"),
          new Inside(
              "money",
              List.of("", "bought"),
              "accounts of a plan, and of what it is with and without a bought lot"),
          new Inside(
              "review",
              List.of("", "kept", "book", "written", "bought"),
              "a review is told by its parts; which of them knows which is a rule of its own"));

  @TestFactory
  Stream<DynamicTest> house_isEnteredByItsDoors() {
    return HOUSES.stream().map(each -> DynamicTest.dynamicTest(each.house(), () -> check(each)));
  }

  private static void check(Inside inside) {
    String house = "growingon." + inside.house();
    List<String> doors =
        inside.doors().stream().map(door -> door.isEmpty() ? house : house + "." + door).toList();
    noClasses()
        .that()
        .resideOutsideOfPackage(house + "..")
        .should()
        .dependOnClassesThat(
            com.tngtech.archunit.base.DescribedPredicate.describe(
                "live behind its doors",
                (JavaClass used) ->
                    roomOf(used).equals(house) && !doors.contains(used.getPackageName())))
        .because(inside.reason())
        .check(HOUSE);
  }

  @Test
  void rooms_haveNoCycles() {
    slices()
        .matching("growingon.(**)")
        .should()
        .beFreeOfCycles()
        .because("a room that needs another is not needed by it, however deep they lie")
        .check(HOUSE);
  }

  @Test
  void packages_haveNoCycles() {
    slices()
        .matching("growingon.(*)..")
        .should()
        .beFreeOfCycles()
        .because("data flows one way: read, check, project, account, describe, write")
        .check(HOUSE);
  }

  @Test
  void workbookLibrary_isTouchedByLoadAndWriteOnly() {
    onlyIn("org.apache.poi..", "files are read in load and written in write", "load", "write");
  }

  @Test
  void chartLibrary_isTouchedByWriteOnly() {
    onlyIn("org.jfree..", "charts are drawn in write", "write");
  }

  @Test
  void calendarLibrary_isTouchedByWriteOnly() {
    onlyIn("biweekly..", "a calendar is a file format", "write");
  }

  @Test
  void jsonLibrary_isTouchedByLoadAndWriteOnly() {
    onlyIn("com.fasterxml.jackson..", "JSON is a file format", "load", "write");
  }

  private static void onlyIn(String library, String reason, String... rooms) {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            Stream.of(rooms).map(room -> "growingon." + room + "..").toArray(String[]::new))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .because(reason)
        .check(HOUSE);
  }

  @Test
  void printing_andEnding_isTheCommandsBusiness() {
    ArchRule rule =
        noClasses()
            .that()
            .resideOutsideOfPackage("growingon.command..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "exit", int.class)
            .because("what a user reads comes from one place");
    rule.check(HOUSE);
  }

  @Test
  void chance_hasNoStaticGenerator() {
    noClasses()
        .should()
        .callMethod(Math.class, "random")
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(Random.class)
        .because("every random number is keyed by what it is for, never by call order")
        .check(HOUSE);
  }

  @Test
  void clocks_areArguments() {
    noClasses()
        .that()
        .resideOutsideOfPackage("growingon.command..")
        .should()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(java.time.YearMonth.class, "now")
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .orShould()
        .callMethod(java.time.Instant.class, "now")
        .because("the same inputs give the same bytes")
        .check(HOUSE);
  }

  /**
   * What takes the language of the computer where no locale is given. {@code String.formatted} has
   * no way to give one, so {@code Main} sets the program's own before anything else is done.
   */
  @Test
  void numbersAndNames_areWrittenInNoLanguageOfTheComputer() {
    noClasses()
        .should()
        .callMethod(String.class, "toLowerCase")
        .orShould()
        .callMethod(String.class, "toUpperCase")
        .orShould()
        .callMethod(String.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(String.class, "format", java.util.Locale.class, String.class, Object[].class)
        .orShould()
        .callMethod(java.io.PrintWriter.class, "printf", String.class, Object[].class)
        .orShould()
        .callMethod(java.io.PrintWriter.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(java.time.format.DateTimeFormatter.class, "ofPattern", String.class)
        .orShould()
        .callMethod(java.util.Locale.class, "getDefault")
        .orShould()
        .callMethod(java.text.NumberFormat.class, "getInstance")
        .orShould()
        .callMethod(java.text.NumberFormat.class, "getIntegerInstance")
        .orShould()
        .callMethod(java.text.Collator.class, "getInstance")
        .orShould()
        .callConstructor(java.text.DecimalFormat.class, String.class)
        .orShould()
        .callConstructor(java.text.SimpleDateFormat.class, String.class)
        .because("the same inputs give the same bytes on every computer")
        .check(HOUSE);
  }

  @Test
  void locale_isSetOnceByTheProgram() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("growingon.command.Main")
        .should()
        .callMethod(java.util.Locale.class, "setDefault", java.util.Locale.class)
        .because("a run has one locale from its beginning to its end")
        .check(HOUSE);
    classes()
        .that()
        .haveFullyQualifiedName("growingon.command.Main")
        .should(
            com.tngtech.archunit.lang.ArchCondition.from(
                com.tngtech.archunit.base.DescribedPredicate.describe(
                    "set the locale",
                    (JavaClass main) ->
                        main.getMethodCallsFromSelf().stream()
                            .anyMatch(call -> call.getTarget().getName().equals("setDefault")))))
        .because("String.formatted goes by it")
        .check(HOUSE);
  }

  @Test
  void tablesOfReports_areMadeOfColumnsThatKnowWhatTheyShow() {
    noClasses()
        .that()
        .resideOutsideOfPackage("growingon.report.build")
        .and()
        .doNotHaveFullyQualifiedName("growingon.report.model.Table")
        .and()
        .doNotHaveFullyQualifiedName("growingon.write.WarmUp")
        .should(
            com.tngtech.archunit.lang.ArchCondition.from(
                com.tngtech.archunit.base.DescribedPredicate.describe(
                    "make a table",
                    (JavaClass user) ->
                        user.getConstructorCallsFromSelf().stream()
                            .anyMatch(
                                call ->
                                    call.getTargetOwner()
                                        .getName()
                                        .equals("growingon.report.model.Table")))))
        .because("a heading and its cells that stand apart go wrong by one: see TableOf")
        .check(HOUSE);
  }

  @Test
  void publicTypes_areOnlyThoseThatAnotherPackageNeeds() {
    // A type that only its own package uses stays package-private (Main is used by the launcher,
    // and the template engine makes its classes public).
    Map<String, Boolean> exempt = Map.of("growingon.command.Main", true);
    classes()
        .that()
        .arePublic()
        .and()
        .areTopLevelClasses()
        .and(
            com.tngtech.archunit.base.DescribedPredicate.describe(
                "are no doors by design",
                (JavaClass type) ->
                    !exempt.containsKey(type.getName())
                        && !type.getSimpleName().matches("Jte.*Generated")
                        && !isBuilderOfARecord(type)
                        && !type.getSimpleName().equals("package-info")))
        .should(
            com.tngtech.archunit.lang.ArchCondition.from(
                com.tngtech.archunit.base.DescribedPredicate.describe(
                    "be used by another package",
                    (JavaClass type) -> withNested(type).anyMatch(HouseRulesTest::isUsedAbroad))))
        .because("every package has a door, and the rest is its own business")
        .check(HOUSE);
  }

  private static final int LONGEST_METHOD = 45;
  private static final int LONGEST_FILE = 400;

  private static final Pattern SOURCE_FILE =
      Pattern.compile("(?<=`)[a-z]+(/[a-z]+)*/\\w+\\.(java|csv|css|jte)(?=`)");

  private static final int FULLEST_FOLDER = 25;

  /** Who looks for the place of a change reads names, and no more than fit on a screen. */
  @Test
  void folders_holdFewTypes() throws IOException {
    checkSizes(FULLEST_FOLDER, Sizes.ofTheProgram().folders);
  }

  /** A room that the map does not name is found by nobody who does not know it already. */
  @Test
  void rooms_standOnTheMapOfDevelopers() throws IOException {
    String map = Files.readString(Path.of("DEVELOPERS.md"));
    assertThat(Sizes.ofTheProgram().folders.keySet())
        .allSatisfy(room -> assertThat(map).contains(room.replaceFirst("growingon\\.", "`") + "`"));
  }

  /** Who reads the map believes what it says that a package may use. */
  @TestFactory
  Stream<DynamicTest> mayUse_isAsTheMapOfDevelopersSays() throws IOException {
    List<String> map = Files.readAllLines(Path.of("DEVELOPERS.md"));
    return ROOMS.stream()
        .map(
            room ->
                DynamicTest.dynamicTest(
                    room.name(),
                    () ->
                        assertThat(mayUse(map, room.name()))
                            .containsExactlyInAnyOrderElementsOf(room.mayUse())));
  }

  /** The last cell of a package's row of the map. */
  private static List<String> mayUse(List<String> map, String name) {
    String row =
        map.stream()
            .filter(line -> line.startsWith("| `" + name + "` |"))
            .findFirst()
            .orElseThrow();
    String[] cells = row.split(" *\\| *");
    String last = cells[cells.length - 1];
    return last.equals("–") ? List.of() : List.of(last.split(", "));
  }

  /** A file that the map or a how-to names is there. */
  @Test
  void files_namedForDevelopers_areThere() throws IOException {
    Matcher named = SOURCE_FILE.matcher(Files.readString(Path.of("DEVELOPERS.md")));
    assertThat(named.results().map(MatchResult::group).toList())
        .hasSizeGreaterThan(10)
        .allMatch(HouseRulesTest::isThere);
  }

  @Test
  void methods_areShort() throws IOException {
    checkSizes(LONGEST_METHOD, Sizes.ofTheProgram().methods);
  }

  @Test
  void files_areShort() throws IOException {
    checkSizes(LONGEST_FILE, Sizes.ofTheProgram().files);
  }

  private static boolean isThere(String file) {
    return Stream.of("", "src/main/java/growingon", "src/main/resources/growingon")
        .anyMatch(root -> Files.exists(Path.of(root, file)));
  }

  private static void checkSizes(int most, Map<String, Integer> found) {
    assertThat(found).as("what there is").isNotEmpty();
    assertThat(Sizes.over(most, found)).as("over %d", most).isEmpty();
  }

  /** A type and those within it, which cannot be used where it may not be named. */
  private static Stream<JavaClass> withNested(JavaClass type) {
    return Stream.concat(
        Stream.of(type),
        HOUSE.stream().filter(each -> each.getName().startsWith(type.getName() + "$")));
  }

  /** Made by the compiler, and as public as its record. */
  private static boolean isBuilderOfARecord(JavaClass type) {
    return HOUSE.stream()
        .filter(JavaClass::isRecord)
        .anyMatch(each -> type.getName().equals(each.getName().replace("$", "") + "Builder"));
  }

  private static boolean isUsedAbroad(JavaClass type) {
    return type.getDirectDependenciesToSelf().stream()
        .anyMatch(use -> !use.getOriginClass().getPackageName().equals(type.getPackageName()));
  }
}
