package org.hoopwright.patterns.cli;

/**
 * What the commands of one call share.
 *
 * @param streams the call's streams
 * @param console gathers what the call says
 */
record Session(Streams streams, Console console) {}
