package growingon.nursery.place;

/** What sort of place plants stand in. */
public enum PlaceKind {
  /** Bench. */
  BENCH("bench"),
  /** Tunnel. */
  TUNNEL("tunnel"),
  /** Standing ground. */
  STANDING_GROUND("standing ground"),
  /** Field bed. */
  FIELD_BED("field bed"),
  /** Quarantine. */
  QUARANTINE("quarantine");

  private final String word;

  PlaceKind(String word) {
    this.word = word;
  }

  /** The word used in files and reports. */
  @Override
  public String toString() {
    return word;
  }
}
