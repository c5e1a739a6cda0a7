package org.hibernacle.speed;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.model.Container;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.thermal.BallTrace;
import org.hibernacle.thermal.Simulator;
import org.hibernacle.thermal.Standing;
import org.hibernacle.thermal.ThermalClass;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One winter of the demo: its hours, its places with their soil, one pot in it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class Kernels {
  /** Litres of the pot: its time at 0 °C is what takes time. */
  @Param({"0.5", "5", "60"})
  private double volumeL;

  private Inventory inventory;
  private HourlyAir air;
  private WinterSelection selection;
  private Simulator site;
  private ThermalClass pot;
  private int[] path;
  private List<Standing> standing;

  @Setup
  public void read() {
    inventory = Demo.inventory();
    TemperatureSeries weather = Demo.weather();
    selection = WinterSelection.of(weather, inventory.settings().southern());
    air = new HourlyAir(selection.series(), inventory.settings().latitudeDeg());
    site = site();
    double widthCm = 22 * Math.cbrt(volumeL / 5);
    pot =
        ThermalClass.of(
            new Container(
                Container.Shape.ROUND,
                widthCm,
                widthCm,
                widthCm * 13 / 22,
                volumeL,
                Container.Material.CERAMIC));
    path = new int[site.winter().nights()];
    LocalDate away = site.winter().season().coreStart().plusMonths(1);
    int from = site.winter().index(away);
    Arrays.fill(path, from, from + 120, site.places().size() - 1);
    standing =
        java.util.stream.IntStream.range(0, site.places().size())
            .mapToObj(place -> site.standing(pot, place))
            .toList();
  }

  private Winter winter() {
    return Winter.of(
        selection.winters().get(0).season(), air, inventory.settings().siteColderByK());
  }

  private Simulator site() {
    return new Simulator(winter(), inventory.places(), inventory.settings().latitudeDeg());
  }

  /** Hours of one winter from days. */
  @Benchmark
  public Winter hoursOfAWinter() {
    return winter();
  }

  /** Air, slab and soil of all places. */
  @Benchmark
  public Simulator placesOfAWinter() {
    return site();
  }

  /** A pot on the bench all winter. */
  @Benchmark
  public Standing standingOnTheBench() {
    return site.standing(pot, 0);
  }

  /** A pot that is away for four months, lived hour by hour. */
  @Benchmark
  public BallTrace carried() {
    return site.simulate(pot, path);
  }

  /** The same, with what is known of pots that stand still. */
  @Benchmark
  public BallTrace carriedKnowingOthers() {
    return site.simulate(pot, path, standing::get);
  }
}
