package growingon.load.list;

import growingon.load.own.lot.OwnLot;
import growingon.problem.Where;

/**
 * A row of a list.
 *
 * @param where its sheet
 * @param currency of its prices, empty if its list states none or several
 */
record Placed(OwnLot lot, Where where, String currency) {}
