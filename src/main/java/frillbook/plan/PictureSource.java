package frillbook.plan;

import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import frillbook.discs.BaseCloth;
import frillbook.discs.BasePlaces;
import frillbook.materials.Material;
import frillbook.picture.CutBase;
import frillbook.picture.Guide.GuideJoin;
import frillbook.picture.Leanings;
import frillbook.picture.Pictures;
import frillbook.time.Task;
import java.util.List;
import java.util.stream.IntStream;

/** Hands the worked-out plan to the pictures. */
record PictureSource(
    Job job,
    FrillLayouts layouts,
    GrainPlan plan,
    Costing costing,
    List<JoinPlace> joins,
    List<JoinWorking> workings) {

  Pictures draw() {
    Sizes sizes = job.sizes();
    return Pictures.of(
        new Pictures.Cushion(
            job.brief(), sizes.rows(), job.rings(), job.strip().flatLength(), costing.filling()),
        new Pictures.Cutting(
            layouts,
            plan,
            sizes.discs(),
            sizes.usableWidth(),
            sizes.strip().stripCutWidth(),
            sizes.cutLineStep()),
        baseCloth(),
        firstJoins(),
        new Pictures.Account(
            costing.materials().materialsTotal(), costing.costs(), costing.price(), base()));
  }

  private CutBase baseCloth() {
    Sizes sizes = job.sizes();
    BaseCloth rows = job.base();
    return new CutBase(
        new BasePlaces(job.quantity(), sizes.discs(), rows),
        rows.baseBuyLength() * sizes.usableShare(),
        sizes.baseUsableWidth());
  }

  private List<GuideJoin> firstJoins() {
    return IntStream.range(0, joins.size())
        .filter(i -> joins.get(i).joinCushion() == 1)
        .mapToObj(i -> new GuideJoin(workings.get(i).joinTurns(), joins.get(i).joinMark()))
        .toList();
  }

  private Leanings.Base base() {
    double diameter = job.sizes().discs().baseCutDiameter();
    double discs =
        job.sizes().discs().overlayCount()
            * Math.PI
            * diameter
            * diameter
            / 4
            / job.sizes().usableWidth();
    return new Leanings.Base(
        job.rings().stitchedLength(),
        job.strip().flatLength(),
        discs,
        job.frillUsedLength(),
        costing.materials().charged(Material.FRILL_CLOTH),
        wages(0, 2, 3, 4) + costing.materials().charged(Material.THREAD),
        wages(5, 6),
        costing.costs().costTotal());
  }

  /** Wages of these tasks, in working order, what they take to set up left out. */
  private double wages(int... tasks) {
    List<Task> all = costing.hours().tasks();
    double minutes =
        IntStream.of(tasks)
            .mapToObj(all::get)
            .mapToDouble(t -> t.taskAmount() * t.taskRate())
            .sum();
    return minutes / 60 * job.brief().money().hourlyRate();
  }
}
