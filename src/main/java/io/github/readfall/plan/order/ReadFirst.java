package io.github.readfall.plan.order;

/**
 * Which of two things the eye meets first.
 *
 * @param inOrder whether it is the one named first
 * @param why the reason
 * @param offset how far the reason reaches: the difference of their tops in heights of the smaller
 *     one; for {@link ReadingReason#COLUMN} the gap between the columns in gaps between the rows; 0
 *     where neither decides
 */
public record ReadFirst(boolean inOrder, ReadingReason why, double offset) {}
