/**
 * What the estimates of a plan mean at this bench: whether clamps hold, where the string is bitten
 * and marked, what squeezes the hoop and when, and which knots sit on the weaker string.
 */
@NullMarked
package org.hoopwright.judgement;

import org.jspecify.annotations.NullMarked;
