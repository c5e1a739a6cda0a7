package org.hibernacle.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.planning.Violation;

/**
 * What one plant lived through along one row of stays in the weather that the season had.
 *
 * @param untilExclusive day up to which it is told: the season's end, the end of the file, or the
 *     day after harm was noticed
 * @param roots the closest that the root ball came to its limit
 * @param hardRoots the same over the nights on which roots were hardened for four fifths or more;
 *     empty if they never were
 * @param shoots the closest that the air came to the shoots' limit before buds broke; empty if they
 *     had broken from the first
 * @param hardShoots the same over the nights on which shoots were hardened for four fifths or more
 * @param unhardened root ball or shoots, whichever came closer, on nights on which they were not
 *     hardened for four fifths; empty if there was no such night
 * @param frozen the run of frozen days that dried it most; empty if the ball never froze through
 * @param store what warmth did under a roof; empty if it never was at rest there
 * @param growth frost after bud break; empty if its buds did not break
 * @param chill the worst week; empty for plants that harden and where no night was too cold
 * @param cutRootsFrozenOn first day on which freshly cut roots froze
 * @param broken limits and rules broken, the first of each rule; safety margins do not count
 */
public record Exposure(
    LocalDate untilExclusive,
    Cold roots,
    Optional<Cold> hardRoots,
    Optional<Cold> shoots,
    Optional<Cold> hardShoots,
    Optional<Cold> unhardened,
    Optional<FrozenSpell> frozen,
    Optional<StoreWarmth> store,
    Optional<NewGrowth> growth,
    Optional<Chill> chill,
    Optional<LocalDate> cutRootsFrozenOn,
    List<Violation> broken) {
  public Exposure {
    broken = List.copyOf(broken);
  }
}
