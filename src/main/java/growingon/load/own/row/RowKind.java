package growingon.load.own.row;

/** What a filled row of a list is. */
enum RowKind {
  TITLE,
  HEADING,
  HEADING_AGAIN,
  LOT,
  GROUP,
  TOTAL,
  NOTE,
  STRUCK,
  GONE,
  ASKED,
  NOT_READ
}
