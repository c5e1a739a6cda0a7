package org.hibernacle.speed;

import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.hibernacle.planning.Question;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlanner;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The demo's plan, once the program is warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class Planning {
  private Question question;

  @Setup
  public void read() {
    question = new Question(Demo.inventory(), Demo.weather(), Map.of(), OptionalInt.empty());
  }

  /** From temperatures to dates and reasons, without looking for remedies. */
  @Benchmark
  public SeasonPlan plan() {
    return SeasonPlanner.planOnly(question).orElseThrow();
  }
}
