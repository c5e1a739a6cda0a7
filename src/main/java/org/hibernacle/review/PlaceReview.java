package org.hibernacle.review;

import java.time.LocalDate;
import java.util.Optional;
import org.hibernacle.model.Place;
import org.hibernacle.thermal.ModelError;

/**
 * One place in hindsight.
 *
 * @param place which
 * @param coldestC its lowest air, °C
 * @param coldestDay when
 * @param plants rows that spent midwinter there
 * @param harmed of these
 * @param modelError how far the model was from its logger, where it has one
 */
public record PlaceReview(
    Place place,
    double coldestC,
    LocalDate coldestDay,
    int plants,
    int harmed,
    Optional<ModelError> modelError) {}
