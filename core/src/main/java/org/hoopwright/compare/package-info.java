/** What differs between two layouts, their beds and routes, or two plans, in the trade's words. */
@NullMarked
package org.hoopwright.compare;

import org.jspecify.annotations.NullMarked;
