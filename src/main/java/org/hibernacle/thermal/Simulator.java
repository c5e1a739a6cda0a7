package org.hibernacle.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.jspecify.annotations.Nullable;

/**
 * One winter at the site with all its places; simulates any pot along any path through them. The
 * planner proposes, this disposes: plans, reasons and reviews all rest on {@link #simulate}.
 */
public final class Simulator {
  private final Winter winter;
  private final List<Place> places;
  private final PlaceClimate[] climates;
  private final List<Optional<ModelError>> modelErrors = new ArrayList<>();
  private final boolean[][] coverOn;
  private final BallGuess guess;

  /** A site without loggers. */
  public Simulator(Winter winter, List<Place> places, double latitudeDeg) {
    this(winter, places, latitudeDeg, Map.of());
  }

  /**
   * Works out the air and the base of every place.
   *
   * @param winter outside
   * @param places in the order that paths refer to
   * @param latitudeDeg of the site
   * @param loggers readings in places, by name of the place; on the days they have, they are the
   *     air of the place, and slab and soil below it follow
   */
  public Simulator(
      Winter winter, List<Place> places, double latitudeDeg, Map<String, HourlyAir> loggers) {
    this(winter, places, latitudeDeg, loggers, BallGuess.USUAL);
  }

  /** The same with another guess about root balls. */
  public Simulator(
      Winter winter,
      List<Place> places,
      double latitudeDeg,
      Map<String, HourlyAir> loggers,
      BallGuess guess) {
    this.guess = guess;
    this.winter = winter;
    this.places = List.copyOf(places);
    coverOn = new boolean[places.size()][winter.days()];
    climates = new PlaceClimate[places.size()];
    for (int p = 0; p < climates.length; p++) {
      Place place = places.get(p);
      for (int day = 0; day < winter.days(); day++) {
        coverOn[p][day] = PlaceBase.coverIsOn(place, winter.season(), winter.first().plusDays(day));
      }
      double[] air = PlaceAir.hours(place, winter, latitudeDeg);
      HourlyAir logger = loggers.get(place.wrapOf().orElse(place.name()));
      if (logger == null) {
        modelErrors.add(Optional.empty());
      } else {
        LoggedAir logged = LoggedAir.of(logger, winter);
        modelErrors.add(ModelError.of(air, logged, winter));
        air = PlaceAir.hours(place, winter, latitudeDeg, logged);
      }
      boolean bench = place.kind() == PlaceKind.BENCH;
      double[] base = bench ? air : PlaceBase.hours(place, winter, air, latitudeDeg);
      climates[p] = climate(place, coverOn[p], air, base);
    }
  }

  private PlaceClimate climate(Place place, boolean[] on, double[] airC, double[] baseC) {
    double[] skyK = SkyView.belowAirK(place, winter, airC);
    double lagHours = Exchange.mulchLagHours(place);
    double[] wrapC = lagHours == 0 ? airC : throughMulch(on, airC, skyK, lagHours);
    return new PlaceClimate(airC, wrapC, skyK, baseC);
  }

  /** The mulch's own surface lies open to the sky; what comes through it comes late. */
  private double[] throughMulch(boolean[] on, double[] airC, double[] skyK, double lagHours) {
    double[] wrapC = new double[airC.length];
    double rate = 1 - Math.exp(-1 / lagHours);
    double state = airC[0];
    for (int i = 0; i < airC.length; i++) {
      state += (airC[i] - skyK[i] - state) * rate;
      // Nights run from noon to noon, and so does the cover.
      wrapC[i] = on[Math.max(0, i - 12) / 24] ? state : airC[i];
    }
    return wrapC;
  }

  /** The winter outside. */
  public Winter winter() {
    return winter;
  }

  /** The places, in the order that paths refer to. */
  public List<Place> places() {
    return places;
  }

  /** Air and base of one place. */
  public PlaceClimate climate(int place) {
    return climates[place];
  }

  /** How far the model of a place was from its logger in this winter; empty without readings. */
  public Optional<ModelError> modelError(int place) {
    return modelErrors.get(place);
  }

  /**
   * Lives one pot through the winter.
   *
   * @param pot its class
   * @param placeByNight index of the place for each night of the winter
   * @return what root ball and air did, night by night
   */
  public BallTrace simulate(ThermalClass pot, int[] placeByNight) {
    return simulate(pot, placeByNight, new double[24 * winter.days()]);
  }

  /**
   * The same, with the hours.
   *
   * @param edgeC is filled with the temperature at the edge of the ball, °C, one value an hour of
   *     the winter, as long as {@code 24 * winter().days()}; hours before the first noon and after
   *     the last stay as they are
   */
  public BallTrace simulate(ThermalClass pot, int[] placeByNight, double[] edgeC) {
    Passage passage = new Passage(pot, placeByNight[0]);
    for (int night = 0; night < winter.nights(); night++) {
      passage.live(night, placeByNight[night]);
      System.arraycopy(passage.edgeC, 0, edgeC, 24 * night + 12, 24);
    }
    return passage.trace;
  }

  /** Lives one pot that stands in one place all winter. */
  public Standing standing(ThermalClass pot, int place) {
    Passage passage = new Passage(pot, place);
    double[] edgeJ = new double[winter.nights() + 1];
    double[] coreJ = new double[winter.nights() + 1];
    for (int night = 0; night < winter.nights(); night++) {
      edgeJ[night] = passage.ball.edgeJ();
      coreJ[night] = passage.ball.coreJ();
      passage.live(night, place);
    }
    edgeJ[winter.nights()] = passage.ball.edgeJ();
    coreJ[winter.nights()] = passage.ball.coreJ();
    return new Standing(passage.trace, edgeJ, coreJ);
  }

  /**
   * Lives one pot through the winter where it is not known what it does. From the noon on at which
   * its ball holds to the last bit the heat of one that always stood where it stands now, it does
   * the same, so this gives what {@link #simulate(ThermalClass, int[])} gives.
   *
   * @param standing pots of its class, by index of the place
   */
  public BallTrace simulate(ThermalClass pot, int[] placeByNight, IntFunction<Standing> standing) {
    Passage passage = new Passage(pot, placeByNight[0]);
    int night = 0;
    while (night < winter.nights()) {
      int place = placeByNight[night];
      Standing known = standing.apply(place);
      if (!passage.ball.holds(known.edgeJ()[night], known.coreJ()[night])) {
        passage.live(night++, place);
        continue;
      }
      int from = night;
      while (night < winter.nights() && placeByNight[night] == place) {
        night++;
      }
      passage.trace.copyNights(known.trace(), from, night);
      passage.ball.hold(known.edgeJ()[night], known.coreJ()[night]);
    }
    return passage.trace;
  }

  /** One pot on its way through the winter. */
  private final class Passage {
    private final ThermalClass pot;
    private final RootBall ball;
    private final BallTrace trace = BallTrace.ofNights(winter.nights());
    private final @Nullable Exchange[] bare = new Exchange[places.size()];
    private final @Nullable Exchange[] covered = new Exchange[places.size()];

    /** Temperature at the edge of the ball in each hour of the last night, °C. */
    private final double[] edgeC = new double[24];

    Passage(ThermalClass pot, int firstPlace) {
      this.pot = pot;
      double startC = Math.max(0.1, climates[firstPlace].airC()[12]);
      ball = new RootBall(pot, guess.waterFraction(), startC);
    }

    /** Exchange with a place on a night; without snow it is worked out once. */
    private Exchange exchange(int night, int place) {
      boolean cover = coverOn[place][night];
      double snowM = winter.snowCm()[night] / 100;
      if (snowM > 0 && places.get(place).kind() == PlaceKind.GROUND) {
        return guess.apply(Exchange.of(pot, places.get(place), cover, snowM));
      }
      @Nullable Exchange[] known = cover ? covered : bare;
      Exchange exchange = known[place];
      if (exchange == null) {
        exchange = guess.apply(Exchange.of(pot, places.get(place), cover));
        known[place] = exchange;
      }
      return exchange;
    }

    void live(int night, int place) {
      PlaceClimate climate = climates[place];
      Exchange exchange = exchange(night, place);
      double wattPerK = exchange.airWPerK() + exchange.baseWPerK();
      double ballMin = Double.POSITIVE_INFINITY;
      double airMin = Double.POSITIVE_INFINITY;
      int ballMinHour = 0;
      int airMinHour = 0;
      double ballSum = 0;
      double airSum = 0;
      double edgeIceMax = 0;
      double coreIceMin = 1;
      int from = 24 * night + 12;
      for (int hour = from; hour < from + 24; hour++) {
        double airC = climate.airC()[hour];
        double aroundC =
            (exchange.airWPerK() * climate.wrapC()[hour]
                    - exchange.skyWPerK() * climate.skyK()[hour]
                    + exchange.baseWPerK() * climate.baseC()[hour])
                / wattPerK;
        ball.hour(aroundC, wattPerK);
        edgeC[hour - from] = ball.edgeC();
        if (ball.edgeC() < ballMin) {
          ballMin = ball.edgeC();
          ballMinHour = hour;
        }
        if (airC < airMin) {
          airMin = airC;
          airMinHour = hour;
        }
        ballSum += RootBall.EDGE_SHARE * ball.edgeC() + (1 - RootBall.EDGE_SHARE) * ball.coreC();
        airSum += airC;
        edgeIceMax = Math.max(edgeIceMax, ball.edgeIce());
        coreIceMin = Math.min(coreIceMin, ball.coreIce());
      }
      trace.ballMinC()[night] = ballMin;
      trace.ballMinHour()[night] = ballMinHour;
      trace.ballMeanC()[night] = ballSum / 24;
      trace.edgeIceMax()[night] = edgeIceMax;
      trace.coreIceMin()[night] = coreIceMin;
      trace.airMinC()[night] = airMin;
      trace.airMinHour()[night] = airMinHour;
      trace.airMeanC()[night] = airSum / 24;
    }
  }
}
