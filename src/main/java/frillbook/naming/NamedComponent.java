package frillbook.naming;

import java.lang.reflect.Field;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A component of a record as the workbook names it. Looked up once for every type: reflection takes
 * longer than all the sums of a plan.
 *
 * @param name under which its own value stands
 * @param prefix of every name within it; empty without {@link Prefixed}
 * @param count of an indexed list; 0 for anything else
 * @param within the record or row it holds; the component's own type where it holds a value
 */
record NamedComponent(
    String name, String prefix, Holds holds, int count, Class<?> within, Field field) {
  enum Holds {
    VALUE,
    RECORD,
    OPTIONAL_RECORD,
    ROWS,
    /** A list of fixed length within a row. */
    INDEXED
  }

  private static final ClassValue<List<NamedComponent>> KNOWN =
      new ClassValue<>() {
        @Override
        protected List<NamedComponent> computeValue(Class<?> type) {
          return read(type);
        }
      };

  /** The components of a record {@code type}, in their order. */
  static List<NamedComponent> of(Class<?> type) {
    return KNOWN.get(type);
  }

  /** The same, read anew. */
  static List<NamedComponent> read(Class<?> type) {
    return Arrays.stream(type.getRecordComponents()).map(NamedComponent::of).toList();
  }

  private static NamedComponent of(RecordComponent component) {
    Indexed indexed = component.getAnnotation(Indexed.class);
    Holds holds = indexed == null ? holds(component.getType()) : Holds.INDEXED;
    boolean wrapped = holds != Holds.VALUE && holds != Holds.RECORD;
    return new NamedComponent(
        nameOf(component.getName()),
        prefixOf(component),
        holds,
        indexed == null ? 0 : indexed.value(),
        wrapped ? argumentOf(component) : component.getType(),
        field(component));
  }

  /** Neither a method nor a handle, for each of which the machine makes classes. */
  private static Field field(RecordComponent component) {
    try {
      Field field = component.getDeclaringRecord().getDeclaredField(component.getName());
      field.setAccessible(true);
      return field;
    } catch (NoSuchFieldException e) {
      throw new IllegalStateException(component + " cannot be read", e);
    }
  }

  private static Holds holds(Class<?> type) {
    if (type.isRecord()) {
      return Holds.RECORD;
    } else if (type == Optional.class) {
      return Holds.OPTIONAL_RECORD;
    }
    return type == List.class ? Holds.ROWS : Holds.VALUE;
  }

  /** {@code ringSpacing} becomes {@code ring_spacing}. */
  static String nameOf(String component) {
    StringBuilder name = new StringBuilder();
    for (char letter : component.toCharArray()) {
      name.append(Character.isUpperCase(letter) ? "_" : "").append(Character.toLowerCase(letter));
    }
    return name.toString();
  }

  private static String prefixOf(RecordComponent component) {
    Prefixed prefixed = component.getAnnotation(Prefixed.class);
    return prefixed == null ? "" : prefixed.value() + "_";
  }

  private static Class<?> argumentOf(RecordComponent component) {
    ParameterizedType generic = (ParameterizedType) component.getGenericType();
    return (Class<?>) generic.getActualTypeArguments()[0];
  }

  /** The prefixes of what it holds, in their order; one but for an indexed list. */
  List<String> prefixes() {
    return holds == Holds.INDEXED
        ? IntStream.rangeClosed(1, count).mapToObj(number -> prefix + number + "_").toList()
        : List.of(prefix);
  }

  private static Object number(Object value) {
    return value instanceof OptionalDouble known
        ? known.isPresent() ? known.getAsDouble() : null
        : value;
  }

  /** What {@code record} holds in it; null where there is no record, or nothing in it. */
  Object of(Object record) {
    if (record == null) {
      return null;
    }
    try {
      Object value = field.get(record);
      return value instanceof Optional<?> optional ? optional.orElse(null) : number(value);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(name + " cannot be read", e);
    }
  }
}
