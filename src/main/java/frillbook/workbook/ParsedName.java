package frillbook.workbook;

import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.Ptg;

/** A defined name whose reference is parsed once. */
record ParsedName(EvaluationName name, Ptg[] definition) implements EvaluationName {
  static ParsedName of(EvaluationName name) {
    return new ParsedName(name, name.hasFormula() ? name.getNameDefinition() : new Ptg[0]);
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
  public boolean isFunctionName() {
    return name.isFunctionName();
  }

  @Override
  public boolean hasFormula() {
    return name.hasFormula();
  }

  @Override
  public boolean isRange() {
    return name.isRange();
  }

  @Override
  public NamePtg createPtg() {
    return name.createPtg();
  }
}
