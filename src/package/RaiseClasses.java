import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Writes class files that are older than Java 6 anew as those of Java 8, with the stack maps that
 * these have: older ones cannot stand in a class archive, so that every run would read and verify
 * them. The build calls it: {@code java -cp asm.jar RaiseClasses.java JAR FOLDER…}.
 */
final class RaiseClasses {
  private static final int JAVA_6 = 50;

  private RaiseClasses() {}

  public static void main(String[] args) throws IOException {
    Path jar = Path.of(args[0]);
    URL[] classes = {jar.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(classes, ClassLoader.getPlatformClassLoader());
        FileSystem inside = FileSystems.newFileSystem(jar)) {
      for (int folder = 1; folder < args.length; folder++) {
        for (Path each : classFiles(inside.getPath(args[folder]))) {
          raise(each, loader);
        }
      }
    }
  }

  private static List<Path> classFiles(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(each -> each.toString().endsWith(".class")).toList();
    }
  }

  private static void raise(Path file, ClassLoader loader) throws IOException {
    ClassReader old = new ClassReader(Files.readAllBytes(file));
    if (old.readShort(6) >= JAVA_6) {
      return;
    }
    ClassWriter raised = new MappedStack(loader);
    old.accept(new Raised(raised), ClassReader.SKIP_FRAMES);
    // The same sources give the same jar, so the file keeps its time.
    FileTime time = Files.getLastModifiedTime(file);
    Files.write(file, raised.toByteArray());
    Files.setLastModifiedTime(file, time);
  }

  /** Works out stack maps by the classes of the jar. */
  private static final class MappedStack extends ClassWriter {
    private final ClassLoader loader;

    MappedStack(ClassLoader loader) {
      super(ClassWriter.COMPUTE_FRAMES);
      this.loader = loader;
    }

    @Override
    protected ClassLoader getClassLoader() {
      return loader;
    }
  }

  /** The same class of Java 8. */
  private static final class Raised extends ClassVisitor {
    Raised(ClassVisitor to) {
      super(Opcodes.ASM9, to);
    }

    @Override
    public void visit(
        int version, int access, String name, String signature, String above, String[] interfaces) {
      super.visit(Opcodes.V1_8, access, name, signature, above, interfaces);
    }
  }
}
