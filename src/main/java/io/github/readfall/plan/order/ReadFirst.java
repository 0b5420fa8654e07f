package io.github.readfall.plan.order;

/**
 * Which of two elements is read first, and why.
 *
 * @param inOrder true if it is the one named first
 * @param why the reason
 * @param offset strength of the reason: the difference of their tops in heights of the smaller one;
 *     for {@link ReadingReason#COLUMN} the gap between the columns in gaps between the rows; 0 if
 *     neither decides
 */
public record ReadFirst(boolean inOrder, ReadingReason why, double offset) {}
