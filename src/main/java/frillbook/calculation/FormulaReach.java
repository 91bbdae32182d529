package frillbook.calculation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
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
 * one of these changes, and in which order.
 */
public final class FormulaReach {
  private final XSSFWorkbook workbook;
  private final ParsedWorkbook parsed;
  private final List<ParsedCell> formulas;
  private final Map<String, Area> named = new HashMap<>();
  private final Map<Area, Spoken> spoken = new HashMap<>();

  /** What formulas speak of a cell in, by the cell's place. */
  private final Map<Long, List<Spoken>> around = new HashMap<>();

  /** Numbers of formulas, each behind those of all that it speaks of. */
  private final List<Integer> order = new ArrayList<>();

  private final int[] rank;

  /** By area the ranks of its readers, and by formula the areas around it: asked without end. */
  private final int[][] readers;

  private final int[][] areas;

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
   * An area that formulas speak of.
   *
   * @param readers numbers of these formulas
   */
  private record Spoken(int number, BitSet readers) {}

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
    spoken.forEach(
        (area, of) ->
            area.places()
                .forEach(place -> around.computeIfAbsent(place, at -> new ArrayList<>(1)).add(of)));
    putInOrder();
    rank = new int[formulas.size()];
    for (int at = 0; at < rank.length; at++) {
      rank[order.get(at)] = at;
    }
    readers = new int[spoken.size()][];
    spoken.values().forEach(area -> readers[area.number()] = ranks(area));
    areas = new int[rank.length][];
    for (int number = 0; number < rank.length; number++) {
      areas[number] = numbers(around(number));
    }
  }

  private int[] ranks(Spoken area) {
    return area.readers().stream().map(reader -> rank[reader]).toArray();
  }

  private static int[] numbers(List<Spoken> areas) {
    return areas.stream().mapToInt(Spoken::number).toArray();
  }

  private void read(int number) {
    ParsedCell cell = formulas.get(number);
    int ownSheet = ((ParsedSheet) cell.getSheet()).index();
    for (Ptg token : cell.formula()) {
      area(token, ownSheet)
          .map(area -> spoken.computeIfAbsent(area, of -> new Spoken(spoken.size(), new BitSet())))
          .ifPresent(area -> area.readers().set(number));
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
    return named.computeIfAbsent(name, this::found);
  }

  private Area found(String name) {
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

  private List<Spoken> around(int formula) {
    return aroundPlace(place(formulas.get(formula)));
  }

  private List<Spoken> aroundPlace(long place) {
    return around.getOrDefault(place, List.of());
  }

  /** A formula's turn comes when those in every area that it speaks of have had theirs. */
  private void putInOrder() {
    int[] formulasAwaited = new int[spoken.size()];
    int[] areasAwaited = new int[formulas.size()];
    for (int number = 0; number < formulas.size(); number++) {
      around(number).forEach(area -> formulasAwaited[area.number()]++);
    }
    for (Spoken area : spoken.values()) {
      if (formulasAwaited[area.number()] > 0) {
        area.readers().stream().forEach(reader -> areasAwaited[reader]++);
      }
    }
    Deque<Integer> ready = new ArrayDeque<>();
    IntStream.range(0, formulas.size()).filter(each -> areasAwaited[each] == 0).forEach(ready::add);
    while (!ready.isEmpty()) {
      order.add(ready.peek());
      around(ready.poll()).stream()
          .filter(area -> --formulasAwaited[area.number()] == 0)
          .flatMapToInt(area -> area.readers().stream())
          .filter(reader -> --areasAwaited[reader] == 0)
          .forEach(ready::add);
    }
    if (order.size() < formulas.size()) {
      throw new IllegalArgumentException("formulas that speak of each other in a circle");
    }
  }

  /** Numbers of all formulas that hang on the cells of {@code name}, directly or by others. */
  BitSet of(String name) {
    BitSet reached = new BitSet();
    follow(
        Set.of(name),
        number -> {
          reached.set(number);
          return true;
        });
    return reached;
  }

  /**
   * Goes through the formulas that speak of cells that have changed, each behind all that it speaks
   * of.
   *
   * @param names of cells that have changed
   * @param changes is told a formula's number and says whether its value is another now
   */
  void follow(Collection<String> names, IntPredicate changes) {
    BitSet told = new BitSet();
    BitSet open = new BitSet();
    names.forEach(
        name ->
            area(name).places().forEach(place -> tell(numbers(aroundPlace(place)), told, open)));
    for (int next = open.nextSetBit(0); next >= 0; next = open.nextSetBit(next + 1)) {
      int number = order.get(next);
      if (changes.test(number)) {
        tell(areas[number], told, open);
      }
    }
  }

  /** Opens all that speak of these areas, unless they are told already by another in the same. */
  private void tell(int[] areas, BitSet told, BitSet open) {
    for (int area : areas) {
      if (!told.get(area)) {
        told.set(area);
        for (int reader : readers[area]) {
          open.set(reader);
        }
      }
    }
  }
}
