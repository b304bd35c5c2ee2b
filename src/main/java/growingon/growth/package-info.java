/** Growth laws as closed-form flow maps. Start at */
package growingon.growth;
