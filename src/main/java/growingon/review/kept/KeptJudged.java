package growingon.review.kept;

/**
 * By what a lot of a kept plan is judged: figures that the grower's own sales do not change.
 *
 * @param deaths plants that died
 * @param trunkMm mean trunk of the living, mm
 * @param price money of all sales so far as a share of list price
 */
public record KeptJudged(KeptSpan deaths, KeptSpan trunkMm, KeptSpan price) {}
