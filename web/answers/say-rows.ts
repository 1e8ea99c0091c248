import type { StripGroup, StripRow } from "#web/strips/strip-row.ts";

/** What is said of a row in sentences: of a sign alone what it speaks for, and what sets it aside; else what follows of its years. */
function sentences(row: StripRow): readonly string[] {
  const ofSigns = row.signs.flatMap((sign) => [sign.says, ...sign.because]);
  return row.isSilent && ofSigns.length > 0 ? ofSigns : [row.says, ...ofSigns];
}

/** The sentences of some observations, in the order in which they are named. */
export const sayRows = (groups: readonly StripGroup[], observations: readonly string[]): readonly string[] =>
  observations.flatMap((observation) =>
    groups
      .flatMap((group) => group.rows)
      .filter((row) => row.observation === observation)
      .flatMap(sentences),
  );
