package org.hoopwright.patterns;

import org.hoopwright.bench.ClampOn;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.StrungEnd;
import org.hoopwright.bench.StrungPiece;
import org.hoopwright.route.Pass;

/**
 * Writes half-done jobs as files, format {@value StateReader#FORMAT}. Reading what was written
 * gives an equal state. The same state gives the same text on every JVM and in every locale.
 * Thread-safe.
 */
public final class StateWriter {

  private StateWriter() {}

  /** The state as the text of a file, ending with a line end. */
  public static String write(HalfDone state) {
    return JsonLines.object()
        .put("format", StateReader.FORMAT)
        .put("pieces", JsonLines.lines(state.pieces(), StateWriter::piece))
        .put("pulled", JsonLines.names(state.pulled()))
        .put("clamps", JsonLines.lines(state.clamps(), StateWriter::clamp))
        .put("misweaves", JsonLines.names(state.misweaves()))
        .end()
        .document();
  }

  private static JsonLines piece(StrungPiece piece) {
    JsonLines.Members m = JsonLines.object();
    if (piece.broken()) {
      m.put("broken", JsonLines.truth(true));
    }
    return m.put("ends", JsonLines.lines(piece.ends(), StateWriter::end)).end();
  }

  private static JsonLines end(StrungEnd end) {
    JsonLines.Members m = JsonLines.object().put("name", end.name().word());
    m.put("passes", JsonLines.lines(end.passes(), StateWriter::pass));
    end.knot()
        .ifPresent(
            k ->
                m.put(
                    "knot",
                    JsonLines.lineObject()
                        .put("kind", k.kind().word())
                        .put("hole", k.hole())
                        .put("anchor", k.anchor())
                        .end()));
    end.tailMm().ifPresent(mm -> m.put("tail", JsonLines.exact(mm)));
    return m.end();
  }

  private static JsonLines pass(Pass pass) {
    return JsonLines.lineObject()
        .put("span", pass.span())
        .put("from", pass.from())
        .put("to", pass.to())
        .end();
  }

  private static JsonLines clamp(ClampOn clamp) {
    return JsonLines.lineObject()
        .put("clamp", clamp.clamp())
        .put("span", clamp.span())
        .put("near", clamp.near())
        .put("distance", JsonLines.exact(clamp.distanceMm()))
        .put("side", clamp.side().word())
        .end();
  }
}
