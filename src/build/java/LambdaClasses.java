import static org.objectweb.asm.Opcodes.ACC_FINAL;
import static org.objectweb.asm.Opcodes.ACC_PRIVATE;
import static org.objectweb.asm.Opcodes.ACC_PUBLIC;
import static org.objectweb.asm.Opcodes.ACC_STATIC;
import static org.objectweb.asm.Opcodes.ACC_SUPER;
import static org.objectweb.asm.Opcodes.ACC_SYNTHETIC;
import static org.objectweb.asm.Opcodes.ALOAD;
import static org.objectweb.asm.Opcodes.ARETURN;
import static org.objectweb.asm.Opcodes.ASM9;
import static org.objectweb.asm.Opcodes.CHECKCAST;
import static org.objectweb.asm.Opcodes.DUP;
import static org.objectweb.asm.Opcodes.F2D;
import static org.objectweb.asm.Opcodes.F_SAME;
import static org.objectweb.asm.Opcodes.GETFIELD;
import static org.objectweb.asm.Opcodes.H_INVOKESTATIC;
import static org.objectweb.asm.Opcodes.H_NEWINVOKESPECIAL;
import static org.objectweb.asm.Opcodes.I2D;
import static org.objectweb.asm.Opcodes.I2F;
import static org.objectweb.asm.Opcodes.I2L;
import static org.objectweb.asm.Opcodes.ILOAD;
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
import static org.objectweb.asm.Opcodes.RETURN;
import static org.objectweb.asm.Opcodes.SIPUSH;
import static org.objectweb.asm.Opcodes.V17;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
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
 * Makes classes of the lambdas and method references of compiled classes, as inner
 * classes written by hand would be: one for all that a source file makes of one interface, which
 * knows by a number which of them it is. Java makes them up at run time, a class each, which costs a
 * tenth of a millisecond each at every start, also where an archive holds them; a class of the
 * archive costs a tenth of that, and there are a third as many. Run by the build on a copy of the
 * compiled classes, which it changes in place.
 *
 * <p>A made class belongs to the nest of the classes that the lambdas stand in (JVMS 5.4.4), so that
 * it may call what is private there. Arguments and result are converted as LambdaMetafactory says:
 * cast, boxed, unboxed, widened.
 */
public final class LambdaClasses {
  private static final String METAFACTORY = "java/lang/invoke/LambdaMetafactory";
  private static final String OBJECT = "java/lang/Object";

  /** By the sort of a primitive type. */
  private static final String[] BOXES = {
    "", "Boolean", "Character", "Byte", "Short", "Integer", "Float", "Long", "Double"
  };

  private LambdaClasses() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Map<String, Map<String, Family>> nests = new TreeMap<>();
    List<Path> classes;
    try (Stream<Path> files = Files.walk(folder)) {
      classes = files.filter(path -> path.toString().endsWith(".class")).sorted().toList();
    }
    for (Path file : classes) {
      ClassReader from = new ClassReader(Files.readAllBytes(file));
      ClassWriter to = new ClassWriter(ClassWriter.COMPUTE_MAXS);
      Rewriting rewriting = new Rewriting(to, from.getClassName(), nests);
      from.accept(rewriting, 0);
      if (rewriting.changed) {
        Files.write(file, to.toByteArray());
      }
    }
    for (Map.Entry<String, Map<String, Family>> nest : nests.entrySet()) {
      List<String> members = new ArrayList<>();
      for (Family family : nest.getValue().values()) {
        members.add(family.name);
        Files.write(folder.resolve(family.name + ".class"), family.compiled(nest.getKey()));
      }
      Path host = folder.resolve(nest.getKey() + ".class");
      Files.write(host, enlarged(Files.readAllBytes(host), members));
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
    private String host;
    private boolean changed;
    private final Map<String, Map<String, Family>> nests;

    Rewriting(ClassVisitor to, String name, Map<String, Map<String, Family>> nests) {
      super(ASM9, to);
      host = name;
      this.nests = nests;
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
          // The other factory is for lambdas that are written to files or bear more than one type.
          if (!bootstrap.getOwner().equals(METAFACTORY)
              || !bootstrap.getName().equals("metafactory")) {
            super.visitInvokeDynamicInsn(call, site, bootstrap, given);
            return;
          }
          changed = true;
          Family family = family(Type.getReturnType(site).getInternalName());
          Lambda lambda =
              new Lambda(site, call, (Type) given[0], (Handle) given[1], (Type) given[2]);
          family.lambdas.add(lambda);
          String factory = "of" + family.lambdas.size();
          super.visitMethodInsn(INVOKESTATIC, family.name, factory, site, false);
        }
      };
    }

    private Family family(String face) {
      Map<String, Family> families = nests.computeIfAbsent(host, each -> new LinkedHashMap<>());
      return families.computeIfAbsent(
          face, each -> new Family(host + "$$" + (families.size() + 1), face));
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

  /** All that a nest makes of one interface, in the order of their numbers. */
  private static final class Family {
    private final String name;
    private final String face;
    private final List<Lambda> lambdas = new ArrayList<>();

    Family(String name, String face) {
      this.name = name;
      this.face = face;
    }

    byte[] compiled(String host) {
      ClassWriter to = new ClassWriter(ClassWriter.COMPUTE_MAXS);
      to.visit(V17, ACC_FINAL | ACC_SUPER | ACC_SYNTHETIC, name, null, OBJECT, new String[] {face});
      to.visitNestHost(host);
      to.visitField(ACC_PRIVATE | ACC_FINAL, "which", "I", null, null);
      fields(to);
      lambdas.stream().map(Lambda::constructor).distinct().forEach(each -> constructor(to, each));
      for (int i = 0; i < lambdas.size(); i++) {
        factory(to, i);
      }
      method(to);
      to.visitEnd();
      return to.toByteArray();
    }

    private void fields(ClassWriter to) {
      Map<String, Type> fields = new TreeMap<>();
      for (Lambda lambda : lambdas) {
        for (Kept kept : lambda.kept()) {
          fields.put(kept.name, kept.type);
        }
      }
      fields.forEach(
          (field, type) ->
              to.visitField(ACC_PRIVATE | ACC_FINAL, field, type.getDescriptor(), null, null));
    }

    private void constructor(ClassWriter to, String types) {
      MethodVisitor code = begun(to, ACC_PRIVATE, "<init>", types);
      code.visitVarInsn(ALOAD, 0);
      code.visitMethodInsn(INVOKESPECIAL, OBJECT, "<init>", "()V", false);
      code.visitVarInsn(ALOAD, 0);
      code.visitVarInsn(ILOAD, 1);
      code.visitFieldInsn(PUTFIELD, name, "which", "I");
      int slot = 2;
      List<Type> all = List.of(Type.getArgumentTypes(types));
      for (Kept kept : kept(all.subList(1, all.size()))) {
        code.visitVarInsn(ALOAD, 0);
        code.visitVarInsn(kept.type.getOpcode(ILOAD), slot);
        code.visitFieldInsn(PUTFIELD, name, kept.name, kept.type.getDescriptor());
        slot += kept.type.getSize();
      }
      end(code, RETURN);
    }

    private void factory(ClassWriter to, int which) {
      Lambda lambda = lambdas.get(which);
      MethodVisitor code = begun(to, ACC_STATIC, "of" + (which + 1), lambda.site);
      code.visitTypeInsn(NEW, name);
      code.visitInsn(DUP);
      code.visitIntInsn(SIPUSH, which);
      int slot = 0;
      for (Type type : lambda.caught()) {
        code.visitVarInsn(type.getOpcode(ILOAD), slot);
        slot += type.getSize();
      }
      code.visitMethodInsn(INVOKESPECIAL, name, "<init>", lambda.constructor(), false);
      end(code, ARETURN);
    }

    /** The interface's method: what it does goes by the number. */
    private void method(ClassWriter to) {
      MethodVisitor code =
          begun(to, ACC_PUBLIC, lambdas.get(0).method, lambdas.get(0).erased.getDescriptor());
      if (lambdas.size() == 1) {
        lambdas.get(0).called(code, name);
      } else {
        Label[] each = Stream.generate(Label::new).limit(lambdas.size()).toArray(Label[]::new);
        code.visitVarInsn(ALOAD, 0);
        code.visitFieldInsn(GETFIELD, name, "which", "I");
        code.visitTableSwitchInsn(0, each.length - 1, each[0], each);
        for (int i = 0; i < each.length; i++) {
          code.visitLabel(each[i]);
          code.visitFrame(F_SAME, 0, null, 0, null);
          lambdas.get(i).called(code, name);
        }
      }
      code.visitMaxs(0, 0);
      code.visitEnd();
    }
  }

  /** A field that keeps what is caught; those of one kind serve all lambdas of a family. */
  private record Kept(String name, Type type) {}

  private static List<Kept> kept(List<Type> caught) {
    Map<Type, Integer> counts = new HashMap<>();
    List<Kept> all = new ArrayList<>();
    for (Type each : caught) {
      Type kind = kind(each);
      all.add(new Kept(kind.getClassName().replaceAll(".*\\.", "") + counts.merge(kind, 1, Integer::sum), kind));
    }
    return all;
  }

  /** As it lies on the stack. */
  private static Type kind(Type type) {
    return switch (type.getSort()) {
      case Type.LONG, Type.FLOAT, Type.DOUBLE -> type;
      case Type.OBJECT, Type.ARRAY -> Type.getObjectType(OBJECT);
      default -> Type.INT_TYPE;
    };
  }

  /**
   * A lambda, as its call site describes it.
   *
   * @param site what it catches, and the interface
   * @param method of the interface, and
   * @param erased its types
   * @param body the method that is called
   * @param exact the types that the interface's arguments and result have here
   */
  private record Lambda(String site, String method, Type erased, Handle body, Type exact) {

    List<Type> caught() {
      return List.of(Type.getArgumentTypes(site));
    }

    List<Kept> kept() {
      return LambdaClasses.kept(caught());
    }

    /** The types of the constructor that keeps what it catches behind its number. */
    String constructor() {
      Type[] types =
          Stream.concat(Stream.of(Type.INT_TYPE), caught().stream().map(LambdaClasses::kind))
              .toArray(Type[]::new);
      return Type.getMethodDescriptor(Type.VOID_TYPE, types);
    }

    /** Calls the body with what was caught, kept in an object of the class, and what is given. */
    void called(MethodVisitor code, String keeper) {
      boolean makes = body.getTag() == H_NEWINVOKESPECIAL;
      if (makes) {
        code.visitTypeInsn(NEW, body.getOwner());
        code.visitInsn(DUP);
      }
      List<Type> wanted = wanted();
      List<Kept> kept = kept();
      for (int i = 0; i < kept.size(); i++) {
        code.visitVarInsn(ALOAD, 0);
        code.visitFieldInsn(GETFIELD, keeper, kept.get(i).name, kept.get(i).type.getDescriptor());
        Type own = caught().get(i);
        if (!isPrimitive(own)) {
          convert(code, kept.get(i).type, own);
        }
        convert(code, own, wanted.get(i));
      }
      Type[] given = erased.getArgumentTypes();
      int slot = 1;
      for (int i = 0; i < given.length; i++) {
        code.visitVarInsn(given[i].getOpcode(ILOAD), slot);
        slot += given[i].getSize();
        Type here = exact.getArgumentTypes()[i];
        convert(code, given[i], here);
        convert(code, here, wanted.get(kept.size() + i));
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
      code.visitInsn(asked.getOpcode(IRETURN));
    }
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
