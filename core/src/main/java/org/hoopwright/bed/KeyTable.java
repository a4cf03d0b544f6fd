package org.hoopwright.bed;

/** Costs by key: open addressing. */
final class KeyTable {

  private static final int FIRST = 1 << 8;

  private long[] keys = new long[FIRST]; // key + 1; 0 for a free slot
  private long[] values = new long[FIRST];
  private int size;

  /** The value of this key, or -1. */
  long get(long key) {
    int i = slot(key);
    return keys[i] == 0 ? -1 : values[i];
  }

  /** Keeps a value, 0 or more, for a key, 0 or more, that has none. */
  void put(long key, long value) {
    if (2 * size >= keys.length) {
      grow();
    }
    int i = slot(key);
    keys[i] = key + 1;
    values[i] = value;
    size++;
  }

  private int slot(long key) {
    int mask = keys.length - 1;
    // Spreads the bits: 2 to the power of 64 by the golden ratio.
    int i = (int) ((key * 0x9E3779B97F4A7C15L) >>> 40) & mask;
    while (keys[i] != 0 && keys[i] != key + 1) {
      i = (i + 1) & mask;
    }
    return i;
  }

  private void grow() {
    long[] oldKeys = keys;
    long[] oldValues = values;
    keys = new long[2 * oldKeys.length];
    values = new long[keys.length];
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] != 0) {
        int to = slot(oldKeys[i] - 1);
        keys[to] = oldKeys[i];
        values[to] = oldValues[i];
      }
    }
  }
}
