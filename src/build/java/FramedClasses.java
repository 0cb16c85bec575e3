import static org.objectweb.asm.Opcodes.ASM9;
import static org.objectweb.asm.Opcodes.V1_6;
import static org.objectweb.asm.Opcodes.V1_8;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;

/**
 * Writes classes of a library that was compiled for Java 5 in the form of Java 8, with the frames
 * by which their bytes are verified (JVMS 4.7.4). Without frames Java puts them into an archive
 * neither verified nor linked and does both at every start, a twentieth of a short run. Run by the
 * build on a copy of the library's classes, which it changes in place; what they do stays the same.
 */
public final class FramedClasses {
  private FramedClasses() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    ClassLoader types = new URLClassLoader(new URL[] {folder.toUri().toURL()});
    List<Path> classes;
    try (Stream<Path> files = Files.walk(folder)) {
      classes = files.filter(path -> path.toString().endsWith(".class")).sorted().toList();
    }
    for (Path file : classes) {
      ClassReader from = new ClassReader(Files.readAllBytes(file));
      if (from.readShort(6) < V1_6) { // where the form's number stands
        Files.write(file, framed(from, types));
      }
    }
  }

  private static byte[] framed(ClassReader from, ClassLoader types) {
    ClassWriter to =
        new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
          @Override
          protected ClassLoader getClassLoader() {
            return types; // to find what two types have in common
          }
        };
    from.accept(new Raised(to), ClassReader.SKIP_FRAMES);
    return to.toByteArray();
  }

  /** The same class in the form of Java 8. */
  private static final class Raised extends ClassVisitor {
    Raised(ClassVisitor to) {
      super(ASM9, to);
    }

    @Override
    public void visit(
        int form, int access, String name, String signature, String above, String[] faces) {
      super.visit(V1_8, access, name, signature, above, faces);
    }
  }
}
