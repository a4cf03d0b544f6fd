import org.jspecify.annotations.NullMarked;

/** Works out how to string a racket frame: the frame, its bed, the routes and the bench plan. */
@NullMarked
module org.hoopwright {
  requires static transitive org.jspecify;
  requires com.google.common; // not transitive: Guava stays out of public signatures
}
