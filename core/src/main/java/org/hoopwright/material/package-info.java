/** String: its gauge, what it is made of, and how much it stretches. */
@NullMarked
package org.hoopwright.material;

import org.jspecify.annotations.NullMarked;
