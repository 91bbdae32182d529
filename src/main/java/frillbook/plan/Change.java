package frillbook.plan;

/** By how much another look differs from the brief's own, for the whole order; below 0 for less. */
record Change(Job job, Candidate.Made made, int stripCount, int joinCount) {

  int strips() {
    return stripCount - job.cut().stripCount();
  }

  int joins() {
    return joinCount - job.cut().joinCount();
  }

  int rings() {
    return (made.rings() - job.rings().ringCount()) * job.quantity();
  }

  double flatMetres() {
    return job.batchMetres(made.flat() - job.strip().flatLength());
  }

  double rowMetres() {
    return job.batchMetres(made.stitched() - job.rings().stitchedLength());
  }

  /** Of seam sewn in joins; a French join is sewn twice. */
  double joinMetres() {
    double length = joins() * job.sizes().strip().stripCutWidth();
    return job.brief().unit().metres(length * job.brief().joins().joinFinish().passes());
  }

  /** 1 where thread is sewn along the free edge, else 0. */
  int edge() {
    return job.brief().frill().edgeFinish().isSewn() ? 1 : 0;
  }
}
