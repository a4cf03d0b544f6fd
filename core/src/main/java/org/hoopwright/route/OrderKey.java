package org.hoopwright.route;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What makes two orders of passes the same, whatever the labels: left passes, right passes, passes
 * of the second piece. Compared number by number; its arrays are never changed.
 */
final class OrderKey implements Comparable<OrderKey> {

  private final int[] left;
  private final int[] right;
  private final int[] second;
  private final int hash;

  OrderKey(int[] left, int[] right, int[] second) {
    this.left = left;
    this.right = right;
    this.second = second;
    this.hash =
        (Arrays.hashCode(left) * 31 + Arrays.hashCode(right)) * 31 + Arrays.hashCode(second);
  }

  @Override
  public int compareTo(OrderKey o) {
    int c = Arrays.compare(left, o.left);
    c = c != 0 ? c : Arrays.compare(right, o.right);
    return c != 0 ? c : Arrays.compare(second, o.second);
  }

  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof OrderKey k
        && hash == k.hash
        && Arrays.equals(left, k.left)
        && Arrays.equals(right, k.right)
        && Arrays.equals(second, k.second);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
