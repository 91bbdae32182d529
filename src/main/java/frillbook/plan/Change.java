package frillbook.plan;

import frillbook.brief.CushionSpec;

/** By how much another look differs from the brief's own, for the whole order; below 0 for less. */
record Change(PlannedOrder order, Candidate.Made made, int stripCount, int joinCount) {

  int strips() {
    return stripCount - order.cut().stripCount();
  }

  int joins() {
    return joinCount - order.cut().joinCount();
  }

  int rings() {
    return (made.rings() - order.rings().ringCount()) * order.quantity();
  }

  /** Of the frill, tucked in. */
  int ends() {
    CushionSpec cushion = order.brief().cushion();
    int frills = cushion.frills(made.rings()) - cushion.frills(order.rings().ringCount());
    return 2 * frills * order.quantity();
  }

  double flatMetres() {
    return order.batchMetres(made.flat() - order.strip().flatLength());
  }

  double rowMetres() {
    return order.batchMetres(made.stitched() - order.rings().stitchedLength());
  }

  /** Of seam sewn in joins; a French join is sewn twice. */
  double joinMetres() {
    double length = joins() * order.sizes().strip().stripCutWidth();
    return order.brief().unit().metres(length * order.brief().joins().joinFinish().passes());
  }

  /** 1 where thread is sewn along the free edge, else 0. */
  int edge() {
    return order.brief().frill().edgeFinish().isSewn() ? 1 : 0;
  }
}
