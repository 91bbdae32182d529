package frillbook.calculation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.formula.ptg.AttrPtg;
import org.apache.poi.ss.formula.ptg.FuncVarPtg;
import org.apache.poi.ss.formula.ptg.Ptg;

/**
 * Lets SUMPRODUCT take calculated ranges, such as {@code SUMPRODUCT((a>1)*b)}.
 *
 * <p>Every spreadsheet program compares and multiplies the ranges cell by cell there. The library
 * does so only where the next function of the formula is INDEX, and fails elsewhere. So an INDEX is
 * put in front of each SUMPRODUCT, and a jump over it, so that it is seen and never calculated. The
 * jumps of an IF around it are made longer by what was put in.
 *
 * <p>A function with a variable number of arguments within the SUMPRODUCT, such as MAX, is the next
 * one for what stands before it; there the library's limit remains.
 */
public final class CellByCell {
  private static final Ptg INDEX = FuncVarPtg.create("INDEX", 2);

  /** The evaluator adds 1 to the bytes that a jump is told. */
  private static final AttrPtg OVER_INDEX = AttrPtg.createSkip(INDEX.getSize() - 1);

  private static final int ADDED = OVER_INDEX.getSize() + INDEX.getSize();

  private final Ptg[] formula;

  private CellByCell(Ptg[] formula) {
    this.formula = formula;
  }

  /** The same formula for the evaluator, its pieces in reverse Polish order. */
  static Ptg[] sumproducts(Ptg[] formula) {
    return Arrays.stream(formula).anyMatch(CellByCell::isSumproduct)
        ? new CellByCell(formula).longer()
        : formula;
  }

  private static boolean isSumproduct(Ptg piece) {
    return piece instanceof FuncVarPtg function && function.getName().equals("SUMPRODUCT");
  }

  private Ptg[] longer() {
    List<Ptg> pieces = new ArrayList<>();
    for (int i = 0; i < formula.length; i++) {
      if (isSumproduct(formula[i])) {
        pieces.add(OVER_INDEX);
        pieces.add(INDEX);
      }
      pieces.add(formula[i] instanceof AttrPtg jump ? stretched(jump, i) : formula[i]);
    }
    return pieces.toArray(Ptg[]::new);
  }

  private AttrPtg stretched(AttrPtg jump, int index) {
    if (jump.isOptimizedIf()) {
      return AttrPtg.createIf(jump.getData() + added(index, jump.getData()));
    } else if (jump.isSkip()) {
      return AttrPtg.createSkip(jump.getData() + added(index, jump.getData() + 1));
    }
    return jump;
  }

  /** Bytes put in among the next {@code bytes} bytes behind piece {@code index}. */
  private int added(int index, int bytes) {
    int added = 0;
    int left = bytes;
    for (int i = index + 1; left > 0; i++) {
      left -= formula[i].getSize();
      added += isSumproduct(formula[i]) ? ADDED : 0;
    }
    return added;
  }
}
