package org.hoopwright.route;

import java.util.function.BooleanSupplier;

/**
 * Counts the nodes of one search and ends it at its limit or when it is cancelled. Confined to one
 * thread.
 */
final class NodeBudget {

  /** Ends a search at its limit. Carries no stack trace: it is a way out, not a fault. */
  static final class Spent extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Spent() {
      super("search limit reached", null, false, false);
    }
  }

  private static final int ASK_EVERY = 1024;

  private final long limit;
  private final BooleanSupplier cancelled;
  private long nodes;

  NodeBudget(long limit, BooleanSupplier cancelled) {
    this.limit = limit;
    this.cancelled = cancelled;
  }

  void visit() {
    if (nodes >= limit
        || (nodes % ASK_EVERY == 0
            && (cancelled.getAsBoolean() || Thread.currentThread().isInterrupted()))) {
      throw new Spent();
    }
    nodes++;
  }

  long nodes() {
    return nodes;
  }
}
