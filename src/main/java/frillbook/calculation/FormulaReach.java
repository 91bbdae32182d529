package frillbook.calculation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Pxg;
import org.apache.poi.ss.formula.ptg.RefPtgBase;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Which formulas hang on which cells, by what they speak of: what has to be calculated anew when
 * one of these changes.
 */
public final class FormulaReach {
  private final XSSFWorkbook workbook;
  private final ParsedWorkbook parsed;
  private final List<ParsedCell> formulas;

  /** Numbers of the formulas that speak of cells. */
  private final Map<Area, BitSet> readers = new HashMap<>();

  /** The areas that a cell is in, by its place. */
  private final Map<Long, List<Area>> areas = new HashMap<>();

  private final Map<String, BitSet> known = new HashMap<>();

  /** Neighbouring cells that formulas speak of together. */
  private record Area(int sheet, int firstRow, int lastRow, int firstColumn, int lastColumn) {
    LongStream places() {
      return IntStream.rangeClosed(firstRow, lastRow)
          .boxed()
          .flatMapToLong(
              row ->
                  IntStream.rangeClosed(firstColumn, lastColumn)
                      .mapToLong(column -> place(sheet, row, column)));
    }
  }

  /**
   * Reads formulas.
   *
   * @param formulas all those of {@code workbook}
   */
  FormulaReach(XSSFWorkbook workbook, ParsedWorkbook parsed, List<ParsedCell> formulas) {
    this.workbook = workbook;
    this.parsed = parsed;
    this.formulas = formulas;
    for (int number = 0; number < formulas.size(); number++) {
      read(number);
    }
    readers
        .keySet()
        .forEach(
            area ->
                area.places()
                    .forEach(
                        place -> areas.computeIfAbsent(place, at -> new ArrayList<>(1)).add(area)));
  }

  private void read(int number) {
    ParsedCell cell = formulas.get(number);
    int ownSheet = ((ParsedSheet) cell.getSheet()).index();
    for (Ptg token : cell.formula()) {
      area(token, ownSheet)
          .ifPresent(area -> readers.computeIfAbsent(area, cells -> new BitSet()).set(number));
    }
  }

  private Optional<Area> area(Ptg token, int ownSheet) {
    int sheet =
        token instanceof Pxg elsewhere ? parsed.getSheetIndex(elsewhere.getSheetName()) : ownSheet;
    if (token instanceof NamePtg name) {
      return Optional.of(area(parsed.getName(name).getNameText()));
    } else if (token instanceof RefPtgBase at) {
      return Optional.of(new Area(sheet, at.getRow(), at.getRow(), at.getColumn(), at.getColumn()));
    } else if (token instanceof AreaPtgBase at) {
      return Optional.of(
          new Area(
              sheet, at.getFirstRow(), at.getLastRow(), at.getFirstColumn(), at.getLastColumn()));
    }
    return Optional.empty();
  }

  private Area area(String name) {
    String reference = workbook.getName(name).getRefersToFormula();
    AreaReference area = new AreaReference(reference, SpreadsheetVersion.EXCEL2007);
    CellReference first = area.getFirstCell();
    CellReference last = area.getLastCell();
    int sheet = parsed.getSheetIndex(first.getSheetName());
    return new Area(sheet, first.getRow(), last.getRow(), first.getCol(), last.getCol());
  }

  /** Sheet, row and column in one number. */
  private static long place(int sheet, int row, int column) {
    return ((long) sheet << 40) | ((long) row << 16) | column;
  }

  private static long place(ParsedCell cell) {
    int sheet = ((ParsedSheet) cell.getSheet()).index();
    return place(sheet, cell.getRowIndex(), cell.getColumnIndex());
  }

  /** Numbers of all formulas that hang on the cells of {@code name}, directly or by others. */
  BitSet of(String name) {
    return known.computeIfAbsent(name, this::reached);
  }

  private BitSet reached(String name) {
    Deque<Long> open = new ArrayDeque<>(area(name).places().boxed().toList());
    Set<Area> spoken = new HashSet<>();
    BitSet reached = new BitSet();
    while (!open.isEmpty()) {
      for (Area area : areas.getOrDefault(open.pop(), List.of())) {
        if (spoken.add(area)) {
          BitSet more = (BitSet) readers.get(area).clone();
          more.andNot(reached);
          reached.or(more);
          more.stream().forEach(number -> open.push(place(formulas.get(number))));
        }
      }
    }
    return reached;
  }
}
