package growingon.report.fit;

import java.util.List;

/** How a fit comes about, for who wants to know. */
final class FitNotes {
  static final List<String> ALL =
      List.of(
          "Each lot is grown by the plan's own rules from its first list on, with the sales and"
              + " losses that were written down. A mean trunk is compared with the mean that the"
              + " rules give after the same sales; the difference of two means is never taken for"
              + " growth, since the thick ones are sold.",
          "A growth speed is one factor on the rate of a species in a growing condition. Your own"
              + " figure counts as much as it is sure (growth sure %, 80 unless you say otherwise);"
              + " counts count by how well they were measured, and by how seasons, lots and plants"
              + " differ.",
          "A measured mean is taken as right within 1.5 %, half a mm a reading, what a sample of the"
              + " lot leaves open, and the unit in which trunks are given.",
          "The 80 % range holds the true figure in eight of ten cases. Changed: your own figure"
              + " lies outside the range, and half or more of a growth speed or loss rests on your"
              + " records. Agrees: it lies inside. Only changed figures differ in the proposal.",
          "Losses: what a line dates falls in its month, what is gone without a line is spread as"
              + " expected. Where far more are gone than can be expected, and no line says how, the"
              + " count is left out: they may have been sold, and the thick ones with them.",
          "Not learnt: month shares, growth after root work and in small pots (sheet Seasons shows"
              + " how these compared), losses of steps, and another growth curve.",
          "Kept plans are scored by their P10 to P90: on average eight of ten figures lie inside,"
              + " in a bad season fewer, as lots have good and bad seasons together. A trunk is scored only while no more than a tenth of the lot was sold otherwise than"
              + " planned.");

  private FitNotes() {}
}
