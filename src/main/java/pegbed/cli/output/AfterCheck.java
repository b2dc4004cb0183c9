package pegbed.cli.output;

import pegbed.visits.LevelAnswer;

/** What was known after a check. */
public record AfterCheck(String echo, LevelAnswer answer) {}
