package growingon.load;

import java.nio.file.Path;
import java.util.List;

/**
 * Lists that a nursery is planned from.
 *
 * @param stock of the grower's own
 * @param offers of suppliers
 */
record OwnLists(List<Path> stock, List<Path> offers) {
  OwnLists {
    stock = List.copyOf(stock);
    offers = List.copyOf(offers);
  }
}
