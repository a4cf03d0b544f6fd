package org.hoopwright.judgement;

import org.hoopwright.replay.Interval;

/**
 * The most of something over a job.
 *
 * @param step the number of the step after which it is greatest, the first of several
 * @param newtons how much it is there, in newtons; estimated
 */
public record Peak(int step, Interval newtons) {}
