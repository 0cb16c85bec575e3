import static org.objectweb.asm.Opcodes.ACC_FINAL;
import static org.objectweb.asm.Opcodes.ACC_PRIVATE;
import static org.objectweb.asm.Opcodes.ACC_PUBLIC;
import static org.objectweb.asm.Opcodes.ACC_STATIC;
import static org.objectweb.asm.Opcodes.ACC_SUPER;
import static org.objectweb.asm.Opcodes.ACC_SYNTHETIC;
import static org.objectweb.asm.Opcodes.ALOAD;
import static org.objectweb.asm.Opcodes.ARETURN;
import static org.objectweb.asm.Opcodes.ASM9;
import static org.objectweb.asm.Opcodes.ASTORE;
import static org.objectweb.asm.Opcodes.BIPUSH;
import static org.objectweb.asm.Opcodes.CHECKCAST;
import static org.objectweb.asm.Opcodes.DUP;
import static org.objectweb.asm.Opcodes.F2D;
import static org.objectweb.asm.Opcodes.F_SAME;
import static org.objectweb.asm.Opcodes.GETFIELD;
import static org.objectweb.asm.Opcodes.GETSTATIC;
import static org.objectweb.asm.Opcodes.H_INVOKESTATIC;
import static org.objectweb.asm.Opcodes.H_NEWINVOKESPECIAL;
import static org.objectweb.asm.Opcodes.I2D;
import static org.objectweb.asm.Opcodes.I2F;
import static org.objectweb.asm.Opcodes.I2L;
import static org.objectweb.asm.Opcodes.IADD;
import static org.objectweb.asm.Opcodes.ICONST_0;
import static org.objectweb.asm.Opcodes.ICONST_1;
import static org.objectweb.asm.Opcodes.IFEQ;
import static org.objectweb.asm.Opcodes.IFNE;
import static org.objectweb.asm.Opcodes.IF_ACMPNE;
import static org.objectweb.asm.Opcodes.IF_ICMPNE;
import static org.objectweb.asm.Opcodes.ILOAD;
import static org.objectweb.asm.Opcodes.IMUL;
import static org.objectweb.asm.Opcodes.INSTANCEOF;
import static org.objectweb.asm.Opcodes.INVOKEINTERFACE;
import static org.objectweb.asm.Opcodes.INVOKESPECIAL;
import static org.objectweb.asm.Opcodes.INVOKESTATIC;
import static org.objectweb.asm.Opcodes.INVOKEVIRTUAL;
import static org.objectweb.asm.Opcodes.IRETURN;
import static org.objectweb.asm.Opcodes.L2D;
import static org.objectweb.asm.Opcodes.L2F;
import static org.objectweb.asm.Opcodes.NEW;
import static org.objectweb.asm.Opcodes.POP;
import static org.objectweb.asm.Opcodes.POP2;
import static org.objectweb.asm.Opcodes.PUTFIELD;
import static org.objectweb.asm.Opcodes.PUTSTATIC;
import static org.objectweb.asm.Opcodes.RETURN;
import static org.objectweb.asm.Opcodes.V17;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.RecordComponentVisitor;
import org.objectweb.asm.Type;

/**
 * Gives each lambda and method reference of compiled classes a small class of its own, as an inner
 * class written by hand would be. Java makes them up at run time, which costs a tenth of a
 * millisecond each at every start, also where an archive holds them; a class of the archive costs a
 * tenth of that. What compares records is written out too: Java makes it up for each record that is
 * compared, of method handles, twenty milliseconds for the first. Run by the build on a copy of the
 * compiled classes, which it changes in place.
 *
 * <p>A made class belongs to the nest of the class that the lambda stands in (JVMS 5.4.4), so that
 * it may call what is private there. Arguments and result are converted as LambdaMetafactory says:
 * cast, boxed, unboxed, widened.
 */
public final class LambdaClasses {
  private static final String METAFACTORY = "java/lang/invoke/LambdaMetafactory";
  private static final String OBJECT_METHODS = "java/lang/runtime/ObjectMethods";
  private static final String OBJECT = "java/lang/Object";

  /** By the sort of a primitive type. */
  private static final String[] BOXES = {
    "", "Boolean", "Character", "Byte", "Short", "Integer", "Float", "Long", "Double"
  };

  private LambdaClasses() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Map<String, byte[]> classes = new TreeMap<>();
    Map<String, List<String>> nests = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".class")).toList()) {
        rewrite(Files.readAllBytes(file), classes, nests);
      }
    }
    for (Map.Entry<String, List<String>> nest : nests.entrySet()) {
      classes.computeIfPresent(nest.getKey(), (host, bytes) -> enlarged(bytes, nest.getValue()));
    }
    for (Map.Entry<String, byte[]> each : classes.entrySet()) {
      Files.write(folder.resolve(each.getKey() + ".class"), each.getValue());
    }
  }

  /** Puts a class and those made of its lambdas beside the others. */
  private static void rewrite(
      byte[] bytes, Map<String, byte[]> classes, Map<String, List<String>> nests) {
    ClassReader from = new ClassReader(bytes);
    ClassWriter to = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    Rewriting rewriting = new Rewriting(to, from.getClassName());
    from.accept(rewriting, 0);
    if (rewriting.changed) {
      classes.put(from.getClassName(), to.toByteArray());
    } else {
      classes.putIfAbsent(from.getClassName(), bytes);
    }
    for (Lambda lambda : rewriting.made) {
      nests.computeIfAbsent(rewriting.host, host -> new ArrayList<>()).add(lambda.name);
      classes.put(lambda.name, lambda.compiled(rewriting.host));
    }
  }

  /** The host of a nest with more members. */
  private static byte[] enlarged(byte[] bytes, List<String> members) {
    ClassReader from = new ClassReader(bytes);
    ClassWriter to = new ClassWriter(0);
    from.accept(new Nest(to, members), 0);
    return to.toByteArray();
  }

  /** Calls a made class wherever the class asked for a lambda. */
  private static final class Rewriting extends ClassVisitor {
    private final String name;
    private String host;
    private boolean changed;
    private final List<Lambda> made = new ArrayList<>();
    private final List<Compared> compared = new ArrayList<>();

    Rewriting(ClassVisitor to, String name) {
      super(ASM9, to);
      this.name = name;
      host = name;
    }

    @Override
    public void visitNestHost(String named) {
      host = named;
      super.visitNestHost(named);
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String method, String descriptor, String signature, String[] thrown) {
      return new MethodVisitor(
          ASM9, super.visitMethod(access, method, descriptor, signature, thrown)) {
        @Override
        public void visitInvokeDynamicInsn(
            String call, String site, Handle bootstrap, Object... given) {
          if (bootstrap.getOwner().equals(OBJECT_METHODS) && !call.equals("toString")) {
            changed = true;
            compared.add(new Compared(name, "$" + call, site, given));
            super.visitMethodInsn(INVOKESTATIC, name, "$" + call, site, false);
            return;
          }
          // The other factory is for lambdas that are written to files or bear more than one type.
          if (!bootstrap.getOwner().equals(METAFACTORY)
              || !bootstrap.getName().equals("metafactory")) {
            super.visitInvokeDynamicInsn(call, site, bootstrap, given);
            return;
          }
          changed = true;
          String own = name + "$$" + (made.size() + 1);
          made.add(
              new Lambda(own, call, site, (Type) given[0], (Handle) given[1], (Type) given[2]));
          super.visitMethodInsn(INVOKESTATIC, own, "of", site, false);
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

  /**
   * Members stand before everything else of a class that {@code ClassVisitor} lists behind them.
   */
  private static final class Nest extends ClassVisitor {
    private List<String> members;

    Nest(ClassVisitor to, List<String> members) {
      super(ASM9, to);
      this.members = members;
    }

    private void tell() {
      members.forEach(super::visitNestMember);
      members = List.of();
    }

    @Override
    public void visitInnerClass(String name, String outer, String inner, int access) {
      tell();
      super.visitInnerClass(name, outer, inner, access);
    }

    @Override
    public RecordComponentVisitor visitRecordComponent(
        String name, String descriptor, String signature) {
      tell();
      return super.visitRecordComponent(name, descriptor, signature);
    }

    @Override
    public FieldVisitor visitField(
        int access, String name, String descriptor, String signature, Object value) {
      tell();
      return super.visitField(access, name, descriptor, signature, value);
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String name, String descriptor, String signature, String[] thrown) {
      tell();
      return super.visitMethod(access, name, descriptor, signature, thrown);
    }
  }

  /**
   * A lambda, as its call site describes it.
   *
   * @param name of the class made for it
   * @param method of the interface, and
   * @param erased its types
   * @param site what it catches, and the interface
   * @param body the method that is called
   * @param exact the types that the interface's arguments and result have here
   */
  private record Lambda(
      String name, String method, String site, Type erased, Handle body, Type exact) {

    byte[] compiled(String host) {
      ClassWriter to = new ClassWriter(ClassWriter.COMPUTE_MAXS);
      String face = Type.getReturnType(site).getInternalName();
      to.visit(V17, ACC_FINAL | ACC_SUPER | ACC_SYNTHETIC, name, null, OBJECT, new String[] {face});
      to.visitNestHost(host);
      constructor(to);
      factory(to);
      method(to);
      to.visitEnd();
      return to.toByteArray();
    }

    private Type[] caught() {
      return Type.getArgumentTypes(site);
    }

    private static String field(int index) {
      return "caught" + index;
    }

    private void constructor(ClassWriter to) {
      MethodVisitor code = begun(to, ACC_PRIVATE, "<init>", constructor());
      code.visitVarInsn(ALOAD, 0);
      code.visitMethodInsn(INVOKESPECIAL, OBJECT, "<init>", "()V", false);
      int slot = 1;
      for (int i = 0; i < caught().length; i++) {
        Type type = caught()[i];
        to.visitField(ACC_PRIVATE | ACC_FINAL, field(i), type.getDescriptor(), null, null);
        code.visitVarInsn(ALOAD, 0);
        code.visitVarInsn(type.getOpcode(ILOAD), slot);
        code.visitFieldInsn(PUTFIELD, name, field(i), type.getDescriptor());
        slot += type.getSize();
      }
      end(code, RETURN);
    }

    private String constructor() {
      return Type.getMethodDescriptor(Type.VOID_TYPE, caught());
    }

    /** One that catches nothing is there once. */
    private void factory(ClassWriter to) {
      MethodVisitor code = begun(to, ACC_STATIC, "of", site);
      if (caught().length == 0) {
        String self = "L" + name + ";";
        to.visitField(ACC_PRIVATE | ACC_STATIC | ACC_FINAL, "ONE", self, null, null);
        code.visitFieldInsn(GETSTATIC, name, "ONE", self);
        end(code, ARETURN);
        MethodVisitor first = begun(to, ACC_STATIC, "<clinit>", "()V");
        made(first);
        first.visitFieldInsn(PUTSTATIC, name, "ONE", self);
        end(first, RETURN);
      } else {
        made(code);
        end(code, ARETURN);
      }
    }

    /** Makes one of what was caught, which stands in the first slots. */
    private void made(MethodVisitor code) {
      code.visitTypeInsn(NEW, name);
      code.visitInsn(DUP);
      int slot = 0;
      for (Type type : caught()) {
        code.visitVarInsn(type.getOpcode(ILOAD), slot);
        slot += type.getSize();
      }
      code.visitMethodInsn(INVOKESPECIAL, name, "<init>", constructor(), false);
    }

    /** The interface's method: calls the body with what was caught and what is given. */
    private void method(ClassWriter to) {
      MethodVisitor code = begun(to, ACC_PUBLIC, method, erased.getDescriptor());
      boolean makes = body.getTag() == H_NEWINVOKESPECIAL;
      if (makes) {
        code.visitTypeInsn(NEW, body.getOwner());
        code.visitInsn(DUP);
      }
      List<Type> wanted = wanted();
      for (int i = 0; i < caught().length; i++) {
        code.visitVarInsn(ALOAD, 0);
        code.visitFieldInsn(GETFIELD, name, field(i), caught()[i].getDescriptor());
        convert(code, caught()[i], wanted.get(i));
      }
      Type[] given = erased.getArgumentTypes();
      int slot = 1;
      for (int i = 0; i < given.length; i++) {
        code.visitVarInsn(given[i].getOpcode(ILOAD), slot);
        slot += given[i].getSize();
        Type here = exact.getArgumentTypes()[i];
        convert(code, given[i], here);
        convert(code, here, wanted.get(caught().length + i));
      }
      code.visitMethodInsn(
          call(), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
      give(code, makes ? owner() : Type.getReturnType(body.getDesc()));
    }

    private Type owner() {
      return Type.getObjectType(body.getOwner());
    }

    /** The types that the body takes, its receiver first. */
    private List<Type> wanted() {
      List<Type> wanted = new ArrayList<>();
      if (body.getTag() != H_INVOKESTATIC && body.getTag() != H_NEWINVOKESPECIAL) {
        wanted.add(owner());
      }
      wanted.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
      return wanted;
    }

    private int call() {
      return switch (body.getTag()) {
        case H_INVOKESTATIC -> INVOKESTATIC;
        case H_NEWINVOKESPECIAL -> INVOKESPECIAL;
        default -> body.isInterface() ? INVOKEINTERFACE : INVOKEVIRTUAL;
      };
    }

    private void give(MethodVisitor code, Type result) {
      Type asked = erased.getReturnType();
      if (asked.getSort() != Type.VOID) {
        convert(code, result, exact.getReturnType());
      } else if (result.getSize() > 0) {
        code.visitInsn(result.getSize() == 1 ? POP : POP2);
      }
      end(code, asked.getOpcode(IRETURN));
    }

    private static MethodVisitor begun(ClassWriter to, int access, String name, String types) {
      MethodVisitor code = to.visitMethod(access, name, types, null, null);
      code.visitCode();
      return code;
    }

    private static void end(MethodVisitor code, int with) {
      code.visitInsn(with);
      code.visitMaxs(0, 0);
      code.visitEnd();
    }
  }

  private static boolean isPrimitive(Type type) {
    return type.getSort() < Type.ARRAY;
  }

  private static String box(Type primitive) {
    return "java/lang/" + BOXES[primitive.getSort()];
  }

  private static void convert(MethodVisitor code, Type from, Type to) {
    if (from.equals(to)) {
      return;
    }
    if (isPrimitive(from) && isPrimitive(to)) {
      widen(code, from, to);
    } else if (isPrimitive(from)) {
      String types = "(" + from.getDescriptor() + ")L" + box(from) + ";";
      code.visitMethodInsn(INVOKESTATIC, box(from), "valueOf", types, false);
    } else if (isPrimitive(to)) {
      Type own = unboxed(from, to);
      if (!from.getInternalName().equals(box(own))) {
        code.visitTypeInsn(CHECKCAST, box(own));
      }
      String call = own.getClassName() + "Value";
      code.visitMethodInsn(INVOKEVIRTUAL, box(own), call, "()" + own.getDescriptor(), false);
      widen(code, own, to);
    } else if (!to.getInternalName().equals(OBJECT)) {
      code.visitTypeInsn(CHECKCAST, to.getInternalName());
    }
  }

  /** What a box holds; of anything else, what is asked. */
  private static Type unboxed(Type from, Type asked) {
    for (Type each : PRIMITIVES) {
      if (from.getInternalName().equals(box(each))) {
        return each;
      }
    }
    return asked;
  }

  private static final List<Type> PRIMITIVES =
      List.of(
          Type.BOOLEAN_TYPE,
          Type.CHAR_TYPE,
          Type.BYTE_TYPE,
          Type.SHORT_TYPE,
          Type.INT_TYPE,
          Type.FLOAT_TYPE,
          Type.LONG_TYPE,
          Type.DOUBLE_TYPE);

  /** JLS 5.1.2; what is smaller than an int is one on the stack. */
  private static void widen(MethodVisitor code, Type from, Type to) {
    boolean isLong = from.getSort() == Type.LONG;
    boolean isFloat = from.getSort() == Type.FLOAT;
    if (from.equals(to)) {
      return;
    }
    switch (to.getSort()) {
      case Type.LONG -> code.visitInsn(I2L);
      case Type.FLOAT -> code.visitInsn(isLong ? L2F : I2F);
      case Type.DOUBLE -> code.visitInsn(isLong ? L2D : isFloat ? F2D : I2D);
      default -> {}
    }
  }
}
