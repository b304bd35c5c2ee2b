/** Cash flow, net present value, internal rate of return, payback, lot accounts. */
package growingon.money;
