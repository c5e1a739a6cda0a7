package org.hibernacle.sense;

/** The words between the tables of {@code docs/sensitivity.md}. */
final class SensitivityPage {
  static final String HEAD =
      """
      # How much hangs on what

      Nothing that a plan rests on is known exactly. Here ten plants of the demo are planned again and again, each time with one
      thing supposed to be otherwise, over the demo's ten invented winters. <!-- for developers -->Written by `org.hibernacle.sense.SensitivityTable`;
      `mvn -Pproof test -Dtest=SensitivityTableTest -Dgolden.update=true` writes it anew.<!-- for all -->

      Each plant is planned as if it were alone, with every day a moving day and nobody ever away, so that dates move by days
      and not by weekends. No risk is accepted. As things are taken to be:
      """;

  static final String DATES =
      """
      The smallest margin is that between root ball and root limit, over all nights that are judged in all winters. It can be
      below the 2 K asked for where the ball rests on its 0 °C plateau, which breaks nothing.

      What is supposed:

      - **air**: every hour of the file 1 K colder or warmer, summer and soil included; about what a bench can differ from its
        station beyond the setting (own round figure);
      - **transfer**: all that ball and air exchange, and what the night sky takes, 30 % more or less: wind and wall at this very
        pot (own round figure; 1 m/s more of wind at an open bench is a good quarter more);
      - **ball**: 10 % of water instead of 27 %, a pot left dry in the frost, or 45 %, peat after rain (own round figures);
      - **limits**: root limits 2 K higher or lower, unhardened and midwinter alike, as most are estimates; of plants that do
        not harden it is the shoots' limit as well;
      - **margin**: another safety margin than 2 K, the rest as it is.

      ## What would have been planned

      Days later (+) or earlier (-) than above; a date where there was none before, "never" where there is none any more.
      """;

  static final String MARGINS =
      """
      ## What would happen to the plan as it is

      The plan made above is carried out to the day while the world is otherwise. By how much the smallest margin changes, K:
      """;

  static final String TOGETHER =
      """
      Warmer air can cost margin too: plants harden less by then. Less transfer and more water hardly gain anything, because
      the smallest margin soon falls in another night.

      ## Is a safety margin of 2 K enough?

      Air, transfer and water know nothing of each other, so what they cost is added in quadrature: the larger loss of each
      pair, once for a ball as moist as it is taken to be, once with the loss of the dry ball. In **bold** what 2 K do not cover:
      """;

  static final String WHAT_FOLLOWS =
      """
      ## What follows

      - **2 K follow for moist balls in pots of two litres and more**: air and transfer together cost them less at their decisive
        nights. So the default stays 2 K, and it asks for something: pots that are watered before a frost.
      - **A dry ball is a different plant.** Without water to freeze, the rest at 0 °C is gone, and the first hard night in
        November goes straight through. That alone costs hardy plants one to three kelvin. No margin is as cheap as a can of
        water.
      - **Pots of half a litre want more**: they follow the air within the hour. 4 K would cover the thumb cotoneaster while it
        is moist; it would go down three days earlier for that and come home six weeks later.
      - **Plants from warmer countries lose what the air loses**: they leave before their balls have anything to freeze.
      - **Dates of leaving are steady.** Air, transfer and water move hardy plants by three days at most, those from warmer
        countries by nine; the exception is the large tub, which is not in danger before December if it is wet or sheltered.
        Moves in late winter and dates of return hang on one frost of ten years and jump by weeks: read them as the first day
        that was safe, and look at the forecast.
      - **A root limit that is wrong by 2 K** takes 2 K, all of the margin. The limits, mostly estimates, are worth more
        care than anything in the heat model: 2 K do not cover a wrong limit *and* a cold site.
      - To cover dry balls as well, the last line above says what it takes. 4 K would bring the larch home two months later for
        the sake of a pot that nobody watered; that is why it is not the default.

      Ten plants of one garden and one invented decade show the size of things, not a law. The three errors were taken to be of
      a size that is seldom passed; a margin is not a probability, and the smallest margin on file is that of one night.
      """;

  private SensitivityPage() {}
}
