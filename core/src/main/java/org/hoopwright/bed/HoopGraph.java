package org.hoopwright.bed;

import com.google.common.graph.ImmutableNetwork;
import com.google.common.graph.NetworkBuilder;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/**
 * The frame as a graph: holes are nodes; spans join two holes inside the hoop, stretches join
 * neighbours of a side's list along the frame's outside. A run is a path of stretches. Guava's
 * network carries it and stays inside this package.
 */
final class HoopGraph {

  /** An edge: a span of string, or a stretch of frame between neighbouring holes of a side. */
  sealed interface Edge {
    record SpanEdge(SpanId span) implements Edge {}

    record StretchEdge(Side side, int place) implements Edge {}
  }

  private final ImmutableNetwork<HoleId, Edge> network;

  HoopGraph(Ring ring, Collection<Span> spans) {
    ImmutableNetwork.Builder<HoleId, Edge> b =
        NetworkBuilder.undirected().allowsParallelEdges(true).immutable();
    for (Side side : Side.values()) {
      List<HoleId> list = ring.list(side);
      list.forEach(b::addNode);
      for (int i = 0; i + 1 < list.size(); i++) {
        b.addEdge(list.get(i), list.get(i + 1), new Edge.StretchEdge(side, i));
      }
    }
    for (Span span : spans) {
      b.addEdge(span.from(), span.to(), new Edge.SpanEdge(span.id()));
    }
    network = b.build();
  }

  /** The spans that run through a hole, in their own order. */
  List<SpanId> spansAt(HoleId hole) {
    return network.incidentEdges(hole).stream()
        .filter(Edge.SpanEdge.class::isInstance)
        .map(e -> ((Edge.SpanEdge) e).span())
        .sorted()
        .toList();
  }

  /** All holes. */
  Set<HoleId> holes() {
    return network.nodes().stream().collect(Collectors.toUnmodifiableSet());
  }
}
