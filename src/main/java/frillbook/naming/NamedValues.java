package frillbook.naming;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A record's values under the names the workbook gives them.
 *
 * <p>{@code stitchedLength} of any record is {@code stitched_length}; records inside records are
 * laid flat; a list of records is a table whose columns are the components of its rows, a list
 * within a row that is {@link Indexed} so many records. An empty {@code Optional} still yields its
 * names, each with no value, so that names never depend on the brief. What is {@link Coded} stands
 * there by its code.
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
    values.walk("", plan.getClass(), plan);
    return values;
  }

  /**
   * @param record null where there is none
   */
  private void walk(String prefix, Class<?> type, Object record) {
    for (NamedComponent component : NamedComponent.of(type)) {
      Object value = component.of(record);
      String inner = prefix + component.prefix();
      switch (component.holds()) {
        case RECORD, OPTIONAL_RECORD -> walk(inner, component.within(), value);
        case ROWS -> table(inner, component.within(), value == null ? List.of() : (List<?>) value);
        case VALUE -> claim(prefix + component.name(), plain(value));
        case INDEXED -> throw new IllegalStateException(component.name() + " outside a row");
      }
    }
  }

  private void table(String prefix, Class<?> rowType, List<?> rows) {
    List<String> names = new ArrayList<>();
    nameCells(prefix, rowType, names);
    List<List<Object>> cells = names.stream().map(name -> newColumn(rows.size())).toList();
    for (Object row : rows) {
      var column = cells.iterator();
      readCells(rowType, row, cell -> column.next().add(cell));
    }
    for (int i = 0; i < names.size(); i++) {
      claimColumn(names.get(i), cells.get(i));
    }
  }

  private static List<Object> newColumn(int rows) {
    return new ArrayList<>(rows);
  }

  private static void nameCells(String prefix, Class<?> rowType, List<String> names) {
    for (NamedComponent component : NamedComponent.of(rowType)) {
      if (component.holds() == NamedComponent.Holds.VALUE) {
        names.add(prefix + component.name());
      } else {
        component.prefixes().forEach(inner -> nameCells(prefix + inner, component.within(), names));
      }
    }
  }

  /** The cells of {@code row} in the order in which {@link #nameCells} names them. */
  private static void readCells(Class<?> rowType, Object row, Consumer<Object> cells) {
    for (NamedComponent component : NamedComponent.of(rowType)) {
      if (component.holds() == NamedComponent.Holds.VALUE) {
        cells.accept(plain(component.of(row)));
      } else if (component.holds() == NamedComponent.Holds.INDEXED) {
        ((List<?>) component.of(row)).forEach(each -> readCells(component.within(), each, cells));
      } else {
        readCells(component.within(), component.of(row), cells);
      }
    }
  }

  private void claimColumn(String name, List<Object> cells) {
    if (lines.containsKey(name) || columns.put(name, cells) != null) {
      throw twice(name);
    }
  }

  private void claim(String name, Object value) {
    if (columns.containsKey(name) || lines.put(name, value) != null) {
      throw twice(name);
    }
  }

  private static IllegalStateException twice(String name) {
    return new IllegalStateException("two record components are named " + name);
  }

  private static Object plain(Object value) {
    if (value == null) {
      return NOTHING;
    } else if (value instanceof Boolean flag) {
      return flag ? 1.0 : 0.0;
    } else if (value instanceof Coded coded) {
      return coded.code();
    }
    return value instanceof Number number ? (Object) number.doubleValue() : value.toString();
  }
}
