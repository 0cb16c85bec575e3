import static org.objectweb.asm.Opcodes.ACC_PRIVATE;
import static org.objectweb.asm.Opcodes.ACC_STATIC;
import static org.objectweb.asm.Opcodes.ACC_SYNTHETIC;
import static org.objectweb.asm.Opcodes.ALOAD;
import static org.objectweb.asm.Opcodes.ASM9;
import static org.objectweb.asm.Opcodes.ASTORE;
import static org.objectweb.asm.Opcodes.BIPUSH;
import static org.objectweb.asm.Opcodes.CHECKCAST;
import static org.objectweb.asm.Opcodes.F_SAME;
import static org.objectweb.asm.Opcodes.GETFIELD;
import static org.objectweb.asm.Opcodes.IADD;
import static org.objectweb.asm.Opcodes.ICONST_0;
import static org.objectweb.asm.Opcodes.ICONST_1;
import static org.objectweb.asm.Opcodes.IFEQ;
import static org.objectweb.asm.Opcodes.IFNE;
import static org.objectweb.asm.Opcodes.IF_ACMPNE;
import static org.objectweb.asm.Opcodes.IF_ICMPNE;
import static org.objectweb.asm.Opcodes.IMUL;
import static org.objectweb.asm.Opcodes.INSTANCEOF;
import static org.objectweb.asm.Opcodes.INVOKESTATIC;
import static org.objectweb.asm.Opcodes.IRETURN;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Type;

/**
 * Writes out what compares the records of compiled classes, and what gives their hash. Java makes it
 * up at run time for each record that is compared, of method handles, twenty milliseconds for the
 * first. Run by the build on a copy of the compiled classes, which it changes in place.
 */
public final class RecordClasses {
  private static final String OBJECT_METHODS = "java/lang/runtime/ObjectMethods";

  /** By the sort of a primitive type. */
  private static final String[] BOXES = {
    "", "Boolean", "Character", "Byte", "Short", "Integer", "Float", "Long", "Double"
  };

  private RecordClasses() {}

  public static void main(String[] arguments) throws IOException {
    List<Path> classes;
    try (Stream<Path> files = Files.walk(Path.of(arguments[0]))) {
      classes = files.filter(path -> path.toString().endsWith(".class")).sorted().toList();
    }
    for (Path file : classes) {
      ClassReader from = new ClassReader(Files.readAllBytes(file));
      ClassWriter to = new ClassWriter(ClassWriter.COMPUTE_MAXS);
      Rewriting rewriting = new Rewriting(to, from.getClassName());
      from.accept(rewriting, 0);
      if (!rewriting.compared.isEmpty()) {
        Files.write(file, to.toByteArray());
      }
    }
  }

  /** Calls what is written out wherever the class asked for it to be made up. */
  private static final class Rewriting extends ClassVisitor {
    private final String name;
    private final List<Compared> compared = new ArrayList<>();

    Rewriting(ClassVisitor to, String name) {
      super(ASM9, to);
      this.name = name;
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String method, String descriptor, String signature, String[] thrown) {
      return new MethodVisitor(
          ASM9, super.visitMethod(access, method, descriptor, signature, thrown)) {
        @Override
        public void visitInvokeDynamicInsn(
            String call, String site, Handle bootstrap, Object... given) {
          if (!bootstrap.getOwner().equals(OBJECT_METHODS) || call.equals("toString")) {
            super.visitInvokeDynamicInsn(call, site, bootstrap, given);
            return;
          }
          compared.add(new Compared(name, "$" + call, site, given));
          super.visitMethodInsn(INVOKESTATIC, name, "$" + call, site, false);
        }
      };
    }

    @Override
    public void visitEnd() {
      compared.forEach(each -> each.write(cv));
      super.visitEnd();
    }
  }

  /**
   * What compares two records of a class, or gives one's hash, as {@code ObjectMethods} says:
   * component by component, in their order.
   *
   * @param site what it takes, and gives
   * @param given the class, the components' names, and a handle that reads each
   */
  private record Compared(String owner, String name, String site, Object[] given) {
    void write(ClassVisitor to) {
      MethodVisitor code =
          to.visitMethod(ACC_PRIVATE | ACC_STATIC | ACC_SYNTHETIC, name, site, null, null);
      code.visitCode();
      if (name.equals("$equals")) {
        equal(code);
      } else {
        hash(code);
      }
      code.visitMaxs(0, 0);
      code.visitEnd();
    }

    private List<Type> components() {
      return Arrays.stream(given)
          .skip(2)
          .map(read -> Type.getType(((Handle) read).getDesc()))
          .toList();
    }

    private void read(MethodVisitor code, int slot, int index) {
      Handle read = (Handle) given[index + 2];
      code.visitVarInsn(ALOAD, slot);
      code.visitFieldInsn(GETFIELD, owner, read.getName(), read.getDesc());
    }

    private void equal(MethodVisitor code) {
      Label other = new Label();
      Label differs = new Label();
      code.visitVarInsn(ALOAD, 0);
      code.visitVarInsn(ALOAD, 1);
      code.visitJumpInsn(IF_ACMPNE, other);
      code.visitInsn(ICONST_1);
      code.visitInsn(IRETURN);
      code.visitLabel(other);
      code.visitFrame(F_SAME, 0, null, 0, null);
      code.visitVarInsn(ALOAD, 1);
      code.visitTypeInsn(INSTANCEOF, owner);
      code.visitJumpInsn(IFEQ, differs);
      code.visitVarInsn(ALOAD, 1);
      code.visitTypeInsn(CHECKCAST, owner);
      code.visitVarInsn(ASTORE, 2);
      for (int i = 0; i < components().size(); i++) {
        read(code, 0, i);
        read(code, 2, i);
        unless(code, components().get(i), differs);
      }
      code.visitInsn(ICONST_1);
      code.visitInsn(IRETURN);
      code.visitLabel(differs);
      code.visitFrame(F_SAME, 0, null, 0, null);
      code.visitInsn(ICONST_0);
      code.visitInsn(IRETURN);
    }

    /** Goes on behind two equal values. */
    private static void unless(MethodVisitor code, Type type, Label differs) {
      if (!isPrimitive(type)) {
        code.visitMethodInsn(
            INVOKESTATIC,
            "java/util/Objects",
            "equals",
            "(Ljava/lang/Object;Ljava/lang/Object;)Z",
            false);
        code.visitJumpInsn(IFEQ, differs);
      } else if (type.getSort() > Type.INT) { // of long, float and double the box compares
        String two = type.getDescriptor() + type.getDescriptor();
        code.visitMethodInsn(INVOKESTATIC, box(type), "compare", "(" + two + ")I", false);
        code.visitJumpInsn(IFNE, differs);
      } else {
        code.visitJumpInsn(IF_ICMPNE, differs);
      }
    }

    private void hash(MethodVisitor code) {
      code.visitInsn(ICONST_0);
      for (int i = 0; i < components().size(); i++) {
        Type type = components().get(i);
        code.visitIntInsn(BIPUSH, 31);
        code.visitInsn(IMUL);
        read(code, 0, i);
        String of = isPrimitive(type) ? box(type) : "java/util/Objects";
        String taken = isPrimitive(type) ? type.getDescriptor() : "Ljava/lang/Object;";
        code.visitMethodInsn(INVOKESTATIC, of, "hashCode", "(" + taken + ")I", false);
        code.visitInsn(IADD);
      }
      code.visitInsn(IRETURN);
    }
  }

  private static boolean isPrimitive(Type type) {
    return type.getSort() < Type.ARRAY;
  }

  private static String box(Type primitive) {
    return "java/lang/" + BOXES[primitive.getSort()];
  }
}
