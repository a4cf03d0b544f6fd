package org.hoopwright.frame;

/**
 * Overall size of the racket, in the layout's unit of length.
 *
 * @param length overall length
 * @param width overall width
 */
public record FrameSize(double length, double width) {}
