import org.jspecify.annotations.NullMarked;

/** Works out how to string a racket frame: the frame, its bed, the routes and the bench plan. */
@NullMarked
module org.hoopwright {
  requires static transitive org.jspecify;
  requires com.google.common; // not transitive: Guava stays out of public signatures

  exports org.hoopwright;
  exports org.hoopwright.bed;
  exports org.hoopwright.bench;
  exports org.hoopwright.check;
  exports org.hoopwright.compare;
  exports org.hoopwright.finding;
  exports org.hoopwright.frame;
  exports org.hoopwright.geometry;
  exports org.hoopwright.judgement;
  exports org.hoopwright.material;
  exports org.hoopwright.replay;
  exports org.hoopwright.route;
  exports org.hoopwright.units;
  exports org.hoopwright.weave;
}
