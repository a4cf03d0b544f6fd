/**
 * The rules that a layout is checked by: whatever can be said by looking alone, at the layout, at
 * its bed or at its best route.
 *
 * <p>A rule is one small class, a {@link org.hoopwright.check.Rule}; {@link
 * org.hoopwright.check.Rules} lists them. {@link org.hoopwright.check.Checker} asks them, and has
 * the work done between: laying strings and searching routes, which report what they find by the
 * way. {@link org.hoopwright.check.RuleBook} explains every finding that there is, with an example.
 * What counts as too much or too little is a named {@link org.hoopwright.check.Threshold}.
 */
@NullMarked
package org.hoopwright.check;

import org.jspecify.annotations.NullMarked;
