package org.hoopwright.bed;

import com.google.common.collect.ImmutableListMultimap;
import java.util.Collection;
import java.util.List;
import org.hoopwright.frame.HoleId;

/**
 * The strung frame as a graph: holes are nodes, spans are edges. Runs along the frame's outside are
 * not kept, because {@link org.hoopwright.frame.Ring#runAllowed} tells of any two holes whether one
 * may join them. Guava carries it and stays inside this package.
 */
final class HoopGraph {

  private final ImmutableListMultimap<HoleId, SpanId> spans;

  /** The graph of these spans, which are in their own order. */
  HoopGraph(Collection<Span> ordered) {
    ImmutableListMultimap.Builder<HoleId, SpanId> b = ImmutableListMultimap.builder();
    for (Span span : ordered) {
      b.put(span.from(), span.id());
      b.put(span.to(), span.id());
    }
    spans = b.build();
  }

  /** The spans that run through a hole, in their own order. */
  List<SpanId> spansAt(HoleId hole) {
    return spans.get(hole);
  }
}
