package growingon.load.list;

import java.nio.file.Path;
import java.util.List;

/**
 * Lists that a nursery is planned from.
 *
 * @param stock of the grower's own
 * @param offers of suppliers
 */
public record OwnLists(List<Path> stock, List<Path> offers) {
  public OwnLists {
    stock = List.copyOf(stock);
    offers = List.copyOf(offers);
  }
}
