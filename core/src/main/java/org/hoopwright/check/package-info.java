/**
 * The rules that a layout is checked by, beyond what reading it and laying its strings must report
 * anyway.
 *
 * <p>{@link org.hoopwright.check.Checker} runs the checks of the layout itself, the assignment, the
 * search for routes and every {@link org.hoopwright.check.Rule}. A rule is one small class; {@link
 * org.hoopwright.check.Rules} lists them. {@link org.hoopwright.check.RuleBook} explains every
 * finding that there is, with an example. What counts as too much or too little is a named {@link
 * org.hoopwright.check.Threshold}.
 */
@NullMarked
package org.hoopwright.check;

import org.jspecify.annotations.NullMarked;
