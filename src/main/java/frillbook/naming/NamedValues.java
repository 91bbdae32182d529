package frillbook.naming;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A record's values under the names the workbook gives them.
 *
 * <p>{@code stitchedLength} of any record is {@code stitched_length}; records inside records are
 * laid flat; a list of records is a table whose columns are the components of its rows. An empty
 * {@code Optional} still yields its names, each with no value, so that names never depend on the
 * brief.
 *
 * @param lines every single value by name; {@code ""} where there is none
 * @param columns every table column by name, one entry for each row the plan has
 */
public record NamedValues(Map<String, Object> lines, Map<String, List<Object>> columns) {
  /** What a cell shows when the plan has no value for it. */
  public static final Object NOTHING = "";

  /** Walks {@code plan}. A name that two components claim is a mistake of ours and is refused. */
  public static NamedValues of(Record plan) {
    var values = new NamedValues(new LinkedHashMap<>(), new LinkedHashMap<>());
    values.walk("", plan.getClass(), Optional.of(plan));
    return values;
  }

  /** {@code ringSpacing} becomes {@code ring_spacing}. */
  public static String nameOf(String component) {
    return component.replaceAll("([A-Z])", "_$1").toLowerCase(java.util.Locale.ROOT);
  }

  private void walk(String prefix, Class<?> type, Optional<?> record) {
    for (RecordComponent component : type.getRecordComponents()) {
      place(prefix, component, record.map(r -> read(component, r)));
    }
  }

  private void place(String prefix, RecordComponent component, Optional<?> value) {
    Class<?> type = component.getType();
    String inner = prefix + prefixOf(component);
    if (type.isRecord()) {
      walk(inner, type, value);
    } else if (type == Optional.class) {
      walk(inner, argumentOf(component), value.flatMap(v -> (Optional<?>) v));
    } else if (type == List.class) {
      table(inner, argumentOf(component), value.map(v -> (List<?>) v).orElse(List.of()));
    } else {
      claim(lines, prefix + nameOf(component.getName()), value.map(NamedValues::plain));
    }
  }

  private void table(String prefix, Class<?> rowType, List<?> rows) {
    Map<String, List<Object>> table = new LinkedHashMap<>();
    emptyRow(prefix, rowType).keySet().forEach(name -> table.put(name, new ArrayList<>()));
    for (Object row : rows) {
      row(prefix, rowType, Optional.of(row)).forEach((name, v) -> table.get(name).add(v));
    }
    table.forEach((name, cells) -> claimColumn(name, cells));
  }

  private static Map<String, Object> emptyRow(String prefix, Class<?> rowType) {
    return row(prefix, rowType, Optional.empty());
  }

  private static Map<String, Object> row(String prefix, Class<?> rowType, Optional<?> row) {
    var cells = new NamedValues(new LinkedHashMap<>(), new LinkedHashMap<>());
    cells.walk(prefix, rowType, row);
    return cells.lines;
  }

  private void claimColumn(String name, List<Object> cells) {
    if (lines.containsKey(name) || columns.put(name, cells) != null) {
      throw new IllegalStateException("two record components are named " + name);
    }
  }

  private void claim(Map<String, Object> target, String name, Optional<Object> value) {
    if (columns.containsKey(name) || target.put(name, value.orElse(NOTHING)) != null) {
      throw new IllegalStateException("two record components are named " + name);
    }
  }

  static String prefixOf(RecordComponent component) {
    Prefixed prefixed = component.getAnnotation(Prefixed.class);
    return prefixed == null ? "" : prefixed.value() + "_";
  }

  private static Class<?> argumentOf(RecordComponent component) {
    Type argument = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
    return (Class<?>) argument;
  }

  private static Object read(RecordComponent component, Object record) {
    try {
      var accessor = component.getAccessor();
      accessor.setAccessible(true);
      return accessor.invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(component + " cannot be read", e);
    }
  }

  private static Object plain(Object value) {
    if (value instanceof Boolean flag) {
      return flag ? 1.0 : 0.0;
    }
    return value instanceof Number number ? (Object) number.doubleValue() : value.toString();
  }
}
