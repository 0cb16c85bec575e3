package kitwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/** A ledger's text as maps, lists and words, of which some can be taken out or turned. */
final class YamlTree {
  private final Map<String, Object> root;

  private YamlTree(Map<String, Object> root) {
    this.root = root;
  }

  /** Words stay words: no number, day or yes is made of them. */
  private static final class Words extends Resolver {
    @Override
    protected void addImplicitResolvers() {
      // none
    }

    @Override
    public Tag resolve(org.yaml.snakeyaml.nodes.NodeId kind, String value, boolean implicit) {
      return kind == org.yaml.snakeyaml.nodes.NodeId.scalar
          ? Tag.STR
          : super.resolve(kind, value, implicit);
    }
  }

  private static Yaml yaml() {
    DumperOptions dump = new DumperOptions();
    dump.setDefaultFlowStyle(DumperOptions.FlowStyle.BLOCK);
    LoaderOptions load = new LoaderOptions();
    return new Yaml(new SafeConstructor(load), new Representer(dump), dump, load, new Words());
  }

  static YamlTree of(String text) {
    Map<String, Object> all = new LinkedHashMap<>();
    for (String part : text.split("(?m)^---$")) {
      Map<String, Object> read = yaml().load(part);
      if (read != null) {
        read.forEach((key, value) -> all.merge(key, value, YamlTree::joined));
      }
    }
    return new YamlTree(all);
  }

  private static Object joined(Object one, Object other) {
    List<Object> both = new ArrayList<>((List<?>) one);
    both.addAll((List<?>) other);
    return both;
  }

  /** Where a key of a mapping lies: keys and places in lists from the root. */
  record Path(List<Object> steps) {
    Path {
      steps = List.copyOf(steps);
    }

    Path with(Object step) {
      List<Object> longer = new ArrayList<>(steps);
      longer.add(step);
      return new Path(longer);
    }

    /** Kinds of record and keys without ids and numbers, such as {@code sections.layers.grain}. */
    String kind() {
      return String.join(
          ".", steps.stream().filter(String.class::isInstance).map(String.class::cast).toList());
    }

    @Override
    public String toString() {
      return String.join("/", steps.stream().map(String::valueOf).toList());
    }
  }

  /** Every key of every mapping below the kinds of record. */
  List<Path> keys() {
    List<Path> all = new ArrayList<>();
    root.forEach((kind, records) -> below(new Path(List.of(kind)), records, all));
    return all;
  }

  private static void below(Path at, Object value, List<Path> all) {
    if (value instanceof Map<?, ?> map) {
      map.forEach(
          (key, inner) -> {
            all.add(at.with(key));
            below(at.with(key), inner, all);
          });
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        below(at.with(i), list.get(i), all);
      }
    }
  }

  Object at(Path path) {
    Object here = root;
    for (Object step : path.steps()) {
      here =
          Objects.requireNonNull(
              step instanceof Integer i ? ((List<?>) here).get(i) : ((Map<?, ?>) here).get(step));
    }
    return here;
  }

  /** The text without a key. */
  String without(Path path) {
    return yaml().dump(changed(root, path.steps(), null));
  }

  /** The text with another value there. */
  String with(Path path, Object value) {
    return yaml().dump(changed(root, path.steps(), value));
  }

  YamlTree turned(Path path, Object value) {
    return of(with(path, value));
  }

  /** The same without sections and materials that nothing in it names. */
  YamlTree pruned() {
    Map<String, Object> less = new LinkedHashMap<>(root);
    for (String kind : List.of("sections", "materials")) {
      String text = yaml().dump(less);
      List<Object> named = new ArrayList<>();
      for (Object one : (List<?>) less.getOrDefault(kind, List.of())) {
        Object id = ((Map<?, ?>) one).get("id");
        if (text.split("[:-] " + id + "\n", -1).length > 2) {
          named.add(one);
        }
      }
      less.put(kind, named);
    }
    return new YamlTree(less);
  }

  private static @Nullable Object changed(
      @Nullable Object here, List<Object> steps, @Nullable Object value) {
    if (steps.isEmpty()) {
      return value;
    }
    List<Object> rest = steps.subList(1, steps.size());
    if (here instanceof List<?> list) {
      List<Object> copy = new ArrayList<>(list);
      int at = (Integer) steps.get(0);
      copy.set(at, changed(copy.get(at), rest, value));
      return copy;
    }
    Map<Object, Object> copy = new LinkedHashMap<>((Map<?, ?>) Objects.requireNonNull(here));
    if (rest.isEmpty() && value == null) {
      copy.remove(steps.get(0));
    } else {
      copy.put(steps.get(0), changed(copy.get(steps.get(0)), rest, value));
    }
    return copy;
  }

  @Override
  public String toString() {
    return yaml().dump(root);
  }
}
