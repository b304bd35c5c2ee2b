package growingon.nursery.lot;

import java.util.Objects;

/**
 * Where a lot comes from.
 *
 * @param supplier supplier, may be empty
 * @param passport plant passport code, may be empty
 * @param origin country or region of origin, may be empty
 * @param fromLot the lot it was split from, may be empty
 * @param note free text, may be empty
 */
public record Papers(String supplier, String passport, String origin, String fromLot, String note) {
  /** Nothing known. */
  public static final Papers NONE = new Papers("", "", "", "", "");

  public Papers {
    Objects.requireNonNull(supplier);
    Objects.requireNonNull(passport);
    Objects.requireNonNull(origin);
    Objects.requireNonNull(fromLot);
    Objects.requireNonNull(note);
  }
}
