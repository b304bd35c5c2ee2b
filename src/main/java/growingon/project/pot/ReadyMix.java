package growingon.project.pot;

import growingon.nursery.supply.Component;
import growingon.nursery.supply.Mix;
import java.util.List;
import java.util.Map;

/**
 * A mix as runs use it, worked out once.
 *
 * @param looseLitres loose litres of all components for one litre in the pot
 * @param wetKg wet weight of a litre as firmed in the pot, kg
 * @param parts its components
 */
public record ReadyMix(double looseLitres, double wetKg, List<Part> parts) {
  /**
   * A component of it.
   *
   * @param component its name
   * @param share its share in the loose volume, 0 to 1
   */
  public record Part(String component, double share) {}

  /** A mix with its components looked up by name. */
  public static ReadyMix of(Mix mix, Map<String, Component> components) {
    List<Part> parts =
        mix.parts().keySet().stream().map(each -> new Part(each, mix.share(each))).toList();
    double kg = 0;
    for (Part part : parts) {
      kg += part.share() * components.get(part.component()).wetKgPerLitre();
    }
    double loose = mix.looseLitresPerPottedLitre();
    return new ReadyMix(loose, kg * loose, parts);
  }
}
