package frillbook.naming;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Builds nested records from values under the names the workbook gives them. */
public final class NamedRecords {
  private NamedRecords() {}

  /**
   * A {@code type} whose components come from {@code given} (by component name) or else from {@code
   * values} (by workbook name).
   *
   * <p>A component with {@link Prefixed} passes its prefix on to the names within it. An {@code
   * Optional} record is empty where none of its names has a value.
   *
   * @throws IllegalArgumentException naming the first component without a usable value
   */
  public static <R extends Record> R build(
      Class<R> type, Map<String, ?> given, Map<String, ?> values) {
    return build("", type, given, values);
  }

  private static <R extends Record> R build(
      String prefix, Class<R> type, Map<String, ?> given, Map<String, ?> values) {
    RecordComponent[] components = type.getRecordComponents();
    Iterator<NamedComponent> names = NamedComponent.of(type).iterator();
    Object[] arguments =
        Arrays.stream(components)
            .map(c -> argument(prefix, c.getName(), names.next(), given, values))
            .toArray();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return type.getDeclaredConstructor(types).newInstance(arguments);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " cannot be made", e);
    }
  }

  private static Object argument(
      String prefix,
      String component,
      NamedComponent named,
      Map<String, ?> given,
      Map<String, ?> values) {
    if (given.containsKey(component)) {
      return given.get(component);
    }
    String inner = prefix + named.prefix();
    if (named.holds() == NamedComponent.Holds.RECORD) {
      return build(inner, named.within().asSubclass(Record.class), given, values);
    } else if (named.holds() == NamedComponent.Holds.OPTIONAL_RECORD) {
      return names(inner, named.within()).stream().allMatch(name -> isMissing(values.get(name)))
          ? Optional.empty()
          : Optional.of(build(inner, named.within().asSubclass(Record.class), given, values));
    }
    return convert(named.within(), prefix + named.name(), values);
  }

  private static boolean isMissing(Object value) {
    return value == null || value.equals(NamedValues.NOTHING);
  }

  /** Names of {@code type} that may all be without a value: those of its optional records. */
  public static Set<String> optional(Class<? extends Record> type) {
    return optional("", type);
  }

  private static Set<String> optional(String prefix, Class<?> type) {
    Set<String> found = new HashSet<>();
    for (NamedComponent component : NamedComponent.of(type)) {
      String inner = prefix + component.prefix();
      switch (component.holds()) {
        case RECORD -> found.addAll(optional(inner, component.within()));
        case OPTIONAL_RECORD -> found.addAll(names(inner, component.within()));
        default -> {
          // Must have a value.
        }
      }
    }
    return found;
  }

  /** Names of the values in a record of values. */
  private static List<String> names(String prefix, Class<?> type) {
    return NamedComponent.of(type).stream().map(each -> prefix + each.name()).toList();
  }

  private static Object convert(Class<?> type, String name, Map<String, ?> values) {
    Object value = values.get(name);
    if (type == String.class && value instanceof String) {
      return value;
    }
    if (type.isEnum() && value instanceof String code) {
      return choice(type, name, code);
    }
    if (value instanceof Number number && type == double.class) {
      return number.doubleValue();
    }
    if (value instanceof Number number
        && type == int.class
        && number.doubleValue() == number.intValue()) {
      return number.intValue();
    }
    throw new IllegalArgumentException(name + " has no usable value: " + value);
  }

  private static Object choice(Class<?> type, String name, String code) {
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> ((Coded) constant).code().equals(code))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(name + " has no usable value: " + code));
  }
}
