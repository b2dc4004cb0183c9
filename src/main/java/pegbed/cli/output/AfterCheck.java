package pegbed.cli.output;

import pegbed.visits.LevelAnswer;

/**
 * What was known after a check.
 *
 * @param understood how the typed reading was understood, in words
 * @param answer today's level with it and those before it
 */
public record AfterCheck(String understood, LevelAnswer answer) {}
