/**
 * Findings: what is wrong, unusual or worth knowing about a layout, a route or a plan.
 *
 * <p>A fault in somebody's data is never an exception here: it is a {@link
 * org.hoopwright.finding.Finding} with a stable {@link org.hoopwright.finding.FindingCode}, a place
 * in the file when there is one, the holes and spans it is about, and what to do. All findings of
 * one input are collected; see {@link org.hoopwright.finding.Findings} for their order.
 *
 * <p>A fault of ours is a {@link org.hoopwright.finding.HoopwrightFault}, in every package.
 */
@NullMarked
package org.hoopwright.finding;

import org.jspecify.annotations.NullMarked;
