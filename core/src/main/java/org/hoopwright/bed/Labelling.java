package org.hoopwright.bed;

/**
 * One labelling of all holes with what it costs.
 *
 * @param labels what each hole carries
 * @param cost what it costs, by term
 */
public record Labelling(Labels labels, LabelCost cost) {}
