package growingon;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * How long methods and files of the program are, as the compiler reads them, and how full folders.
 */
final class Sizes {
  private static final Path SOURCES = Path.of("src/main/java");

  /** Lines of each method from its first annotation or word on; of overloads the longest. */
  final Map<String, Integer> methods = new TreeMap<>();

  /** Lines of each file but imports, which say where things live and not how much there is. */
  final Map<String, Integer> files = new TreeMap<>();

  /** Types in each package, those within others not counted. */
  final Map<String, Integer> folders = new TreeMap<>();

  private Sizes() {}

  static Sizes ofTheProgram() throws IOException {
    Sizes sizes = new Sizes();
    List<Path> paths;
    try (Stream<Path> all = Files.walk(SOURCES)) {
      paths = all.filter(path -> path.toString().endsWith(".java")).sorted().toList();
    }
    for (Path path : paths) {
      sizes.files.put(nameOf(path), linesOf(path));
      if (!path.endsWith("package-info.java")) {
        sizes.folders.merge(nameOf(path).replaceAll("\\.[^.]*$", ""), 1, Integer::sum);
      }
    }
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager manager =
        compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, List.of(), null, manager.getJavaFileObjectsFromPaths(paths));
      SourcePositions positions = Trees.instance(task).getSourcePositions();
      for (CompilationUnitTree unit : task.parse()) {
        unit.accept(sizes.new Methods(unit, positions), Optional.empty());
      }
    }
    return sizes;
  }

  private static int linesOf(Path path) throws IOException {
    try (Stream<String> lines = Files.lines(path)) {
      return (int) lines.filter(line -> !line.startsWith("import ")).count();
    }
  }

  private static String nameOf(Path path) {
    String name = SOURCES.relativize(path).toString().replaceAll("[/\\\\]", ".");
    return name.substring(0, name.length() - ".java".length());
  }

  /** Those of more lines. */
  static Map<String, Integer> over(int lines, Map<String, Integer> of) {
    Map<String, Integer> over = new TreeMap<>(of);
    over.values().removeIf(each -> each <= lines);
    return over;
  }

  private final class Methods extends TreeScanner<Void, Optional<String>> {
    private final CompilationUnitTree unit;
    private final SourcePositions positions;

    private Methods(CompilationUnitTree unit, SourcePositions positions) {
      this.unit = unit;
      this.positions = positions;
    }

    @Override
    public Void visitClass(ClassTree tree, Optional<String> within) {
      String house = within.orElseGet(() -> unit.getPackageName().toString());
      String name = tree.getSimpleName().toString();
      return super.visitClass(tree, Optional.of(name.isEmpty() ? house : house + "." + name));
    }

    @Override
    public Void visitMethod(MethodTree tree, Optional<String> within) {
      long start = positions.getStartPosition(unit, tree);
      long end = positions.getEndPosition(unit, tree);
      int lines =
          (int) (unit.getLineMap().getLineNumber(end) - unit.getLineMap().getLineNumber(start) + 1);
      methods.merge(within.orElseThrow() + "." + tree.getName(), lines, Math::max);
      return super.visitMethod(tree, within);
    }
  }
}
