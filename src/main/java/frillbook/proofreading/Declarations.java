package frillbook.proofreading;

import frillbook.source.Mistakes;
import frillbook.source.Position;
import frillbook.template.CheckTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Every name a formula may use, and what it stands for. */
public final class Declarations {
  /** What a name stands for. */
  enum Kind {
    INPUT,
    LINE,
    CHECK,
    /** A column of a table, all its data cells. */
    COLUMN,
    /** Several columns of a table. */
    BLOCK,
    /** Results of all checks, of all inputs' checks, or of those of one part. */
    CHECKS
  }

  private final Map<String, Kind> kinds = new LinkedHashMap<>();
  private final Map<String, Position> places = new HashMap<>();
  private final Mistakes mistakes;

  /** Collects the names of {@code template} and tells of those used twice. */
  Declarations(WorkbookTemplate template, Mistakes mistakes) {
    this.mistakes = mistakes;
    template.sheets().forEach(sheet -> sheet.rows().forEach(this::declare));
    if (kinds.containsValue(Kind.CHECK) || kinds.containsKey("input_fault")) {
      kinds.put("check_fault", Kind.CHECKS);
      kinds.put("check_sentence", Kind.CHECKS);
    }
    tellSheetsTwice(template.sheets());
  }

  private void declare(RowTemplate row) {
    if (row instanceof InputTemplate input) {
      declare(input.name(), Kind.INPUT, input.position());
    } else if (row instanceof LineTemplate line) {
      declare(line.name(), Kind.LINE, line.position());
    } else if (row instanceof CheckTemplate check) {
      declare(check.name(), Kind.CHECK, check.position());
    } else if (row instanceof TableTemplate table) {
      table.columns().forEach(each -> declare(each.name(), Kind.COLUMN, each.position()));
      table.blocks().forEach(each -> declare(each.name(), Kind.BLOCK, each.position()));
    } else if (row instanceof RowTemplate.InputChecks checks) {
      kinds.put("input_fault", Kind.CHECKS);
      checks.parts().stream()
          .distinct()
          .map(RowTemplate.InputChecks::faults)
          .forEach(name -> declare(name, Kind.CHECKS, checks.position()));
    }
  }

  private void declare(String name, Kind kind, Position at) {
    Position first = places.putIfAbsent(name, at);
    if (name.isEmpty()) {
      return;
    }
    if (first == null) {
      kinds.put(name, kind);
    } else {
      tellTwice("the name " + name, first, at);
    }
  }

  private void tellSheetsTwice(List<SheetTemplate> sheets) {
    Map<String, Position> seen = new HashMap<>();
    for (SheetTemplate sheet : sheets) {
      String name = sheet.name().toLowerCase(Locale.ROOT);
      Position first = seen.putIfAbsent(name, sheet.position());
      if (first != null && !name.isEmpty()) {
        tellTwice("the sheet name " + sheet.name(), first, sheet.position());
      }
    }
  }

  private void tellTwice(String name, Position first, Position at) {
    mistakes.add(
        at, name + " a second time", "each name once", "rename one; the first is at " + first);
  }

  boolean has(String name) {
    return kinds.containsKey(name);
  }

  boolean is(String name, Kind kind) {
    return kinds.get(name) == kind;
  }

  /** Whether the name stands for a range and not for one cell. */
  boolean isSeveralCells(String name) {
    return is(name, Kind.COLUMN) || is(name, Kind.BLOCK) || is(name, Kind.CHECKS);
  }

  Set<String> names() {
    return kinds.keySet();
  }
}
