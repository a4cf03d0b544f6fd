package org.hoopwright.weave;

import java.util.Arrays;
import java.util.List;

/**
 * A smallest vertex cover of a bipartite graph, by augmenting paths and König's construction: what
 * alternating paths from the unmatched left reach on the right, and what they do not reach on the
 * left.
 *
 * <p>Cost: left vertices times edges.
 */
final class VertexCover {

  private static final int FREE = -1;

  private final List<List<Integer>> edges;
  private final int[] matchOfLeft;
  private final int[] matchOfRight;
  private final boolean[] reachedLeft;
  private final boolean[] reachedRight;

  private VertexCover(List<List<Integer>> edges, int right) {
    this.edges = edges;
    matchOfLeft = new int[edges.size()];
    matchOfRight = new int[right];
    reachedLeft = new boolean[edges.size()];
    reachedRight = new boolean[right];
    Arrays.fill(matchOfLeft, FREE);
    Arrays.fill(matchOfRight, FREE);
  }

  /** The cover of the graph in which the left vertex i is joined to the right ones in its list. */
  static VertexCover of(List<List<Integer>> edges, int right) {
    VertexCover cover = new VertexCover(edges, right);
    for (int l = 0; l < edges.size(); l++) {
      cover.augment(l, new boolean[right]);
    }
    for (int l = 0; l < edges.size(); l++) {
      if (cover.matchOfLeft[l] == FREE) {
        cover.reach(l);
      }
    }
    return cover;
  }

  boolean left(int l) {
    return !reachedLeft[l];
  }

  boolean right(int r) {
    return reachedRight[r];
  }

  private boolean augment(int l, boolean[] tried) {
    for (int r : edges.get(l)) {
      if (!tried[r]) {
        tried[r] = true;
        if (matchOfRight[r] == FREE || augment(matchOfRight[r], tried)) {
          matchOfRight[r] = l;
          matchOfLeft[l] = r;
          return true;
        }
      }
    }
    return false;
  }

  private void reach(int l) {
    if (reachedLeft[l]) {
      return;
    }
    reachedLeft[l] = true;
    for (int r : edges.get(l)) {
      if (!reachedRight[r]) {
        reachedRight[r] = true;
        if (matchOfRight[r] != FREE) {
          reach(matchOfRight[r]);
        }
      }
    }
  }
}
