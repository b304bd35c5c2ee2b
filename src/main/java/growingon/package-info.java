/**
 * The growing-on planner. Data flows one way: read ({@code load}), check, project ({@code
 * project}), account ({@code money}), describe ({@code report}), write ({@code write}); {@code
 * command} runs it.
 */
package growingon;
