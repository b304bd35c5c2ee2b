/**
 * What a grower is asked of a list: the sheet to fill. Start at {@link
 * growingon.load.own.question.ToFill}.
 */
package growingon.load.own.question;
