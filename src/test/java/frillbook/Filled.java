package frillbook;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Records of which a test cares for a few components; the others are 0 or empty. */
public final class Filled {
  private Filled() {}

  /**
   * A record with these components, by name.
   *
   * @param values numbers in the type of their component
   */
  public static <R extends Record> R of(Class<R> type, Map<String, ?> values) {
    RecordComponent[] components = type.getRecordComponents();
    List<String> names = Arrays.stream(components).map(RecordComponent::getName).toList();
    if (!names.containsAll(values.keySet())) {
      throw new IllegalArgumentException(type + " has not all of " + values.keySet());
    }
    Object[] arguments =
        Arrays.stream(components)
            .map(
                each ->
                    values.containsKey(each.getName()) ? values.get(each.getName()) : empty(each))
            .toArray();
    return made(type, components, arguments);
  }

  private static <R extends Record> R made(
      Class<R> type, RecordComponent[] components, Object[] arguments) {
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      Constructor<R> constructor = type.getDeclaredConstructor(types);
      return constructor.newInstance(arguments);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " cannot be made", e);
    }
  }

  private static Object empty(RecordComponent component) {
    Class<?> type = component.getType();
    if (type == double.class) {
      return 0.0;
    } else if (type == int.class) {
      return 0;
    } else if (type == boolean.class) {
      return false;
    } else if (type == List.class) {
      return List.of();
    } else if (type == Optional.class) {
      return Optional.empty();
    }
    throw new IllegalArgumentException("give a value for " + component);
  }
}
