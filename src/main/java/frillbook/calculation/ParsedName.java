package frillbook.calculation;

import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.Ptg;

/** A defined name whose reference is parsed once; the library reads the file's XML again. */
public record ParsedName(
    EvaluationName name,
    Ptg[] definition,
    boolean isFunctionName,
    boolean hasFormula,
    boolean isRange)
    implements EvaluationName {
  static ParsedName of(EvaluationName name) {
    return new ParsedName(
        name,
        name.hasFormula() ? name.getNameDefinition() : new Ptg[0],
        name.isFunctionName(),
        name.hasFormula(),
        name.isRange());
  }

  @Override
  public Ptg[] getNameDefinition() {
    return definition;
  }

  @Override
  public String getNameText() {
    return name.getNameText();
  }

  @Override
  public NamePtg createPtg() {
    return name.createPtg();
  }
}
