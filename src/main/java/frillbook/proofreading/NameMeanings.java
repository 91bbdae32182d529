package frillbook.proofreading;

import frillbook.formula.Meaning;
import frillbook.formula.Sort;
import frillbook.template.BlockTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.ValueFormat;
import frillbook.template.WorkbookTemplate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What every name of a workbook stands for in a formula. */
final class NameMeanings {
  private final Map<String, Meaning> names = new HashMap<>();
  private final Map<String, Meaning> columns = new HashMap<>();

  NameMeanings(WorkbookTemplate template) {
    template.inputs().forEach(each -> one(each.name(), each.isWords() ? Sort.TEXT : Sort.NUMBER));
    template.lines().forEach(each -> one(each.name(), sort(each.format())));
    template.checks().forEach(each -> one(each.name(), Sort.NUMBER));
    template.tables().forEach(this::table);
    template
        .rows(RowTemplate.InputChecks.class)
        .forEach(
            each ->
                each.parts().stream()
                    .map(RowTemplate.InputChecks::faults)
                    .forEach(name -> several(name, Set.of(Sort.NUMBER))));
    several("input_fault", Set.of(Sort.NUMBER));
    several("check_fault", Set.of(Sort.NUMBER));
    several("check_sentence", Set.of(Sort.TEXT));
  }

  private void table(TableTemplate table) {
    for (ColumnTemplate column : table.columns()) {
      Sort sort = sort(column.format());
      several(column.name(), Set.of(sort));
      columns.putIfAbsent(column.name(), Meaning.one(sort));
      table.named().forEach(row -> one(row.cell(column), sort));
    }
    table.blocks().forEach(block -> several(block.name(), sorts(block)));
  }

  private Set<Sort> sorts(BlockTemplate block) {
    return block.columns().stream()
        .flatMap(column -> named(column).sorts().stream())
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Sort.class)));
  }

  /** What a cell of that format holds. */
  private static Sort sort(ValueFormat format) {
    return format.isWords() ? Sort.TEXT : Sort.NUMBER;
  }

  private void one(String name, Sort sort) {
    names.putIfAbsent(name, Meaning.one(sort));
  }

  private void several(String name, Set<Sort> sorts) {
    names.putIfAbsent(name, Meaning.column(sorts));
  }

  /** What a name stands for. */
  Meaning named(String name) {
    return names.getOrDefault(name, Meaning.UNKNOWN);
  }

  /** What the cell of a column stands for. */
  Meaning cell(String column) {
    return columns.getOrDefault(column, Meaning.UNKNOWN);
  }

  boolean isColumn(String name) {
    return columns.containsKey(name);
  }
}
