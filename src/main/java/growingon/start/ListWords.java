package growingon.start;

import java.util.List;

/** What a column of a list can be said to be. */
final class ListWords {
  static final List<String> OURS =
      List.of(
          "not read",
          "species",
          "quantity",
          "size",
          "pot",
          "trunk mm",
          "girth cm",
          "height cm",
          "place",
          "arrived",
          "unit cost",
          "selling price",
          "supplier",
          "lot",
          "genus",
          "cultivar",
          "common name",
          "potted",
          "kept",
          "least",
          "multiple",
          "reserved",
          "available",
          "opening",
          "sold",
          "lost",
          "form",
          "age",
          "note");

  private ListWords() {}
}
